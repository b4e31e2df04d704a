// Registers the service worker, and offers a newer version of the page when there is one: it is never forced, and
// the board is saved before the page is reloaded.
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
        if (waiting.state !== 'installed') { // another tab has accepted it already, or a still newer one came
            loadAgain();
            return;
        }
        taken = true;
        waiting.postMessage('take over');
    });
    document.getElementById('update-later').addEventListener('click', () => { bar.hidden = true; });
    navigator.serviceWorker.addEventListener('controllerchange', () => {
        if (taken) { // not on the first visit, when the worker takes control
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
