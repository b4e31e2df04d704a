// Registers the service worker, and offers a newer version of the page when there is one: offered, never
// forced, and the board is saved before the page is loaded again.
export function workOffline(saveWork) {
    if (!('serviceWorker' in navigator)) {
        return;
    }
    const bar = document.getElementById('update');
    let waiting = null;
    let taken = false;

    function offer(worker) {
        waiting = worker;
        bar.hidden = false;
    }

    function loadAgain() {
        saveWork();
        location.reload();
    }

    document.getElementById('update-now').addEventListener('click', () => {
        if (waiting.state !== 'installed') { // another tab has said so before, or a still newer one came
            loadAgain();
            return;
        }
        taken = true;
        waiting.postMessage('take over');
    });
    document.getElementById('update-later').addEventListener('click', () => { bar.hidden = true; });
    navigator.serviceWorker.addEventListener('controllerchange', () => {
        if (taken) { // and not on the first visit, when the worker comes into its own
            taken = false;
            loadAgain();
        }
    });

    navigator.serviceWorker.register('sw.js', { updateViaCache: 'none' }).then((registration) => {
        const watch = (worker) => worker?.addEventListener('statechange', () => {
            if (worker.state === 'installed' && navigator.serviceWorker.controller) {
                offer(worker);
            }
        });
        if (registration.waiting && navigator.serviceWorker.controller) {
            offer(registration.waiting);
        }
        watch(registration.installing);
        registration.addEventListener('updatefound', () => watch(registration.installing));
    }).catch(() => {}); // no secure context, or storage switched off: the page works with the network
}
