// The same results as real HTML: visually hidden while the board is used, always available to a screen reader, and
// a page of its own to read, search and print.
import { editTables } from './page_tables.js';

// `goTo` shows another view of the page (views.js).
export function createPageText({ wantWorking, drawNow, fieldDone, goTo, printSheet }) {
    const canvas = document.getElementById('board');
    const section = document.getElementById('tables');
    const content = document.getElementById('tables-content');
    const announcer = document.getElementById('announcer');

    function show() {
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
    }

    document.getElementById('skip').addEventListener('click', (event) => {
        event.preventDefault(); // the fragment belongs to the model
        goTo('tables');
    });
    document.getElementById('close-tables').addEventListener('click', () => goTo('board'));
    document.getElementById('print-tables').addEventListener('click', printSheet);
    section.addEventListener('keydown', (event) => {
        if (event.key === 'Escape') {
            goTo('board');
        }
    });
    const tables = editTables(content, (key, text) => {
        fieldDone(key, text);
        drawNow();
    });

    return {
        show,
        close,
        set(html, summary) {
            tables.replace(html); // everything a user typed has been escaped by the program
            canvas.setAttribute('aria-label', summary);
        },
        announce: (text) => { announcer.textContent = text; },
    };
}
