// What fills the window is a view: the start page, the board or the tables. Each is an entry of the browser's
// history, so that Back leads from the tables to the board, and from the board to the start page. The state of an
// entry (beside what address.js keeps there):
//   view   which of them it is
//   from   the view of the entry before it, if that is ours: to go there is to go back, so that entries don't pile up
//   board  a name for the board that it shows, as long as the page knows it
import { pushEntry, stampEntry } from './address.js';

const newName = () => Math.random().toString(36).slice(2, 10);
const plainAddress = () => location.pathname + location.search;

// `show(view, left)` shows a view in place of the one left, null at first; `leaving()` is called before the entry of
// a board is left, whose address may be behind it, and `arrived()` on an entry of the board that the page shows.
export function createViews({ show, leaving, arrived }) {
    let shown = null;
    let board = history.state?.board ?? newName(); // a reload shows the same

    function enter(view) {
        if (view !== shown) {
            const left = shown;
            shown = view;
            show(view, left);
        }
    }

    function push(view) {
        pushEntry({ view, from: shown, board }, view === 'tables' ? location.href : plainAddress());
        enter(view);
    }

    // The address is of the board that the page shows, or of the start page.
    const isOfBoard = () => history.state?.view === 'start' || history.state?.board === board;

    addEventListener('popstate', () => {
        enter(history.state?.view ?? 'board'); // no state: a link put in the address
        if (isOfBoard()) {
            arrived();
        }
    });

    function goTo(view) {
        if (view === shown) {
            return;
        }
        if (shown !== 'start') {
            leaving();
        }
        if (history.state?.from === view) {
            enter(view); // at once: the browser goes back a moment later
            history.back();
        } else {
            push(view);
            arrived();
        }
    }

    document.getElementById('skip-start').addEventListener('click', (event) => {
        event.preventDefault(); // the page need not be loaded again
        goTo('start');
    });

    return {
        shown: () => shown,
        begin(view) {
            stampEntry({ view, board });
            enter(view);
        },
        goTo,
        // Another board is shown from now on. The start page stays in the history, to go back to.
        boardCame() {
            board = newName();
            if (shown === 'start') {
                push('board');
            } else {
                stampEntry({ view: shown, board });
            }
        },
        // For a board that only a reload brings.
        pushBoard: () => pushEntry({ view: 'board', from: shown, board: newName() }, plainAddress()),
        isOfBoard,
        stamp: () => stampEntry({ view: shown, board }),
    };
}
