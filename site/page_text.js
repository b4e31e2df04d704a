// The same results as real HTML: visually hidden while the board is used, always available to a screen reader, and
// a page of its own to read, search, work on and print.
// `goTo` shows another view of the page (views.js).
export function createPageText({ wantWorking, drawNow, fieldDone, goTo, printSheet }) {
    const canvas = document.getElementById('board');
    const section = document.getElementById('tables');
    const content = document.getElementById('tables-content');
    const announcer = document.getElementById('announcer');
    let tables = null; // for typing in them
    let loading = null;

    function editWith({ editTables }) {
        tables = editTables(content, (key, text) => {
            fieldDone(key, text);
            drawNow();
        });
    }

    // Not needed for the first picture. A failure is not the end: the next call tries again.
    function load() {
        loading ??= import('./page_tables.js').then(editWith).catch(() => { loading = null; });
        return loading;
    }

    function show() {
        load();
        wantWorking(true);
        document.body.classList.add('reading');
        drawNow();
        section.focus();
        scrollTo(0, 0);
    }

    function close() {
        document.body.classList.remove('reading');
        wantWorking(false);
        canvas.focus();
        drawNow();
    }

    document.getElementById('skip').addEventListener('click', (event) => {
        event.preventDefault(); // the fragment belongs to the model
        goTo('tables');
    });
    document.getElementById('close-tables').addEventListener('click', () => goTo('board'));
    document.getElementById('print-tables').addEventListener('click', printSheet);

    const historyKeys = { z: 'page.undo', Z: 'page.redo', y: 'page.redo' };
    section.addEventListener('keydown', (event) => {
        const step = (event.ctrlKey || event.metaKey) && historyKeys[event.key];
        if (event.key === 'Escape') {
            goTo('board');
        } else if (step && !event.target.matches('input')) { // which has an undo of its own
            event.preventDefault();
            tables?.press(step);
        }
    });

    const isRead = () => ['reading', 'no-board'].some((name) => document.body.classList.contains(name));

    return {
        show,
        close,
        load,
        isRead,
        keep: () => tables?.keep(),
        set(html, summary) {
            if (tables && isRead()) {
                tables.replace(html); // everything a user typed has been escaped by the program
            } else {
                content.innerHTML = html;
            }
            canvas.setAttribute('aria-label', summary);
        },
        announce: (text) => { announcer.textContent = text; },
    };
}
