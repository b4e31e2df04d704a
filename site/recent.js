// The list of boards that this browser keeps: a dialog of the page, read and pressed like any other.
import { goToPlace, recentBoards } from './storage.js';

const dialog = document.getElementById('recent-dialog');
const list = document.getElementById('recent-list');

function timeText(time) {
    return time?.toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' }) ?? 'time not known';
}

function spanOf(text) {
    const span = document.createElement('span');
    span.textContent = text;
    return span;
}

// The title says what it is, so the picture itself says nothing.
function pictureOf(svg) {
    const image = document.createElement('img');
    image.alt = '';
    if (svg !== '') {
        image.src = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
        image.addEventListener('load', () => URL.revokeObjectURL(image.src));
    }
    return image;
}

function entry(board, svg, press) {
    const item = document.createElement('li');
    const button = document.createElement('button');
    button.type = 'button';
    button.append(pictureOf(svg), spanOf(board.title), spanOf(timeText(board.time)));
    button.addEventListener('click', press);
    item.append(button);
    return item;
}

// `goTo` stores the board that is shown, and calls what it is given; `reads` and `drawing` are the program's
// word on a stored text.
export function createRecent({ tell, goTo, reads, drawing }) {
    async function open(name) {
        dialog.close();
        if (await goTo(() => goToPlace(name))) {
            location.replace(location.pathname + location.search);
        } else {
            tell('That board is open in another tab.', true);
        }
    }

    function show() {
        const boards = recentBoards(reads);
        list.replaceChildren(...boards.map((board) =>
            entry(board, board.text === '' ? '' : drawing(board.text), () => open(board.name))));
        document.getElementById('recent-none').hidden = boards.length > 0;
        dialog.showModal();
    }

    return { show };
}
