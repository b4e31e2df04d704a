// What the page does if it does not start because a script is missing, damaged or of a different version from the
// rest. It says so, deletes what the browser keeps of the page, fetches all of it again and restarts: once; after
// that it only says so. It is a separate script and not a module, so that it runs whatever happened to the others.
(() => {
    // The link of an exercise shows the question and never the board; answers to one are marked.
    const leaveForExercise = () => {
        const page = { '#x=': 'exercise', '#a=': 'course' }[location.hash.slice(0, 3)];
        if (page) {
            location.replace(`${page}/${location.hash}`);
        }
        return Boolean(page);
    };
    addEventListener('hashchange', leaveForExercise);
    if (leaveForExercise()) {
        return;
    }
    const mark = 'gusset.afresh'; // in session storage, from the first failure to the next successful start
    const slow = 20000; // ms: then a notice says that the page is still loading
    const patience = 60000; // ms, for fetching all of it again
    let isOver = false;
    let hasStarted = false; // whatever went wrong before it was not the page's fault

    async function say(text, offersAgain) {
        if (document.readyState === 'loading') {
            await new Promise((resolve) => addEventListener('DOMContentLoaded', resolve));
        }
        if (hasStarted) {
            return;
        }
        const status = document.getElementById('status');
        status.textContent = text;
        status.hidden = false;
        if (offersAgain) {
            const button = document.createElement('button');
            button.textContent = 'Try again';
            button.addEventListener('click', () => location.reload());
            status.append(document.createElement('br'), button);
        }
    }

    function isFirstTime() {
        try {
            const isFirst = sessionStorage.getItem(mark) === null;
            sessionStorage.setItem(mark, '1');
            return isFirst && sessionStorage.getItem(mark) === '1';
        } catch {
            return false; // nothing would distinguish the second attempt from the first
        }
    }

    // Read to the end, so that the browser's own cache has it. An HTML page in place of a script or a picture is
    // not from our server: a network that asks for a password first answers every request with one.
    async function isFetched(name) {
        const response = await fetch(name, { cache: 'reload' });
        await response.arrayBuffer();
        const isPage = /^text\/html/.test(response.headers.get('content-type'));
        return response.ok && (name === location.href || !isPage);
    }

    // False if the server does not have all of it now: then what is kept here is left alone.
    async function fetchAfresh() {
        const files = performance.getEntriesByType('resource').map(({ name }) => name)
            .filter((name) => name.startsWith(location.origin) && !name.endsWith('/'));
        const fetched = Promise.all([location.href, ...files].map(isFetched));
        const late = new Promise((resolve) => setTimeout(() => resolve([false]), patience));
        if (!(await Promise.race([fetched, late])).every((isGood) => isGood) || hasStarted) {
            return false;
        }
        // A private window may refuse either: then nothing is kept.
        const registrations = await navigator.serviceWorker?.getRegistrations().catch(() => []) ?? [];
        const names = await globalThis.caches?.keys().catch(() => []) ?? [];
        const folder = new URL('./', location.href); // as the service worker names its caches (site/sw.js.in)
        const prefix = `gusset ${folder.pathname} `;
        await Promise.all([
            ...registrations.filter(({ scope }) => scope === folder.href).map((one) => one.unregister()),
            ...names.filter((name) => name.startsWith(prefix)).map((name) => caches.delete(name)),
        ]);
        return true;
    }

    async function failed(reason) {
        if (isOver) {
            return;
        }
        isOver = true;
        const isFirst = isFirstTime();
        const what = `Gusset did not start (${reason}).`;
        await say(`${what} It is being fetched afresh …`, false);
        const isFresh = await fetchAfresh().catch(() => false);
        if (hasStarted) {
            return;
        }
        if (isFresh && isFirst) {
            location.reload();
        } else {
            say(`${what} ${isFresh ? 'It was fetched afresh, and that did not help: the server may be in the ' +
                'middle of an update.' : 'It could not be fetched afresh: the server lacks a part of it, or there ' +
                'is no network.'} Your boards are still in this browser. Try again in a while.`, true);
        }
    }

    setTimeout(() => {
        if (!isOver) {
            say('Loading is taking a while: the network is slow or not answering. It goes on by itself.', true);
        }
    }, slow);
    addEventListener('error', ({ message }) => failed(message ?? 'one of its files is missing or damaged'), true);
    addEventListener('unhandledrejection', ({ reason }) => failed(reason?.message ?? reason));

    globalThis.gussetStart = {
        failed,
        succeeded() {
            hasStarted = true;
            isOver = true;
            try {
                sessionStorage.removeItem(mark);
            } catch {
                // then it was never there
            }
        },
    };
})();
