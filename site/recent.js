// The list of boards that this browser keeps: a dialog of the page, read and pressed like any other.
import { goToPlace, recentBoards } from './storage.js';

const dialog = document.getElementById('recent-dialog');
const list = document.getElementById('recent-list');

function timeText(time) {
    return time.toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' });
}

function entry(board, press) {
    const item = document.createElement('li');
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = board.title;
    const time = document.createElement('span');
    time.textContent = timeText(board.time);
    button.append(time);
    button.addEventListener('click', press);
    item.append(button);
    return item;
}

// `goTo` stores the board that is shown, and calls what it is given.
export function createRecent({ tell, goTo }) {
    async function open(name) {
        dialog.close();
        if (await goTo(() => goToPlace(name))) {
            location.replace(location.pathname + location.search);
        } else {
            tell('That board is open in another tab.', true);
        }
    }

    function show() {
        const boards = recentBoards();
        list.replaceChildren(...boards.map((board) => entry(board, () => open(board.name))));
        document.getElementById('recent-none').hidden = boards.length > 0;
        dialog.showModal();
    }

    return { show };
}
