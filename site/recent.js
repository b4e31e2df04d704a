// The list of boards that this browser keeps: a dialog of the page, read and operated like any other.
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

// The title describes it, so the picture has no text of its own.
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

const palettes = ['paper', 'dark', 'sun']; // web/ui/palette.hpp

// `goTo` stores the board that is shown, then calls its argument; `newReader` gives access to the program's reading
// of what is stored (reader.js) while the list is made.
export function createRecent({ tell, goTo, newReader }) {
    let shown = 0; // a counter, since a list may arrive when the next one is wanted
    async function open(name) {
        dialog.close();
        if (await goTo(() => goToPlace(name))) {
            location.replace(location.pathname + location.search);
        } else {
            tell('That board is open in another tab.', true);
        }
    }

    async function entries() {
        const reader = newReader();
        const palette = palettes.indexOf(document.documentElement.dataset.theme);
        const made = [];
        for (const board of await recentBoards(reader.reads)) {
            const svg = board.text === '' ? '' : await reader.drawing(board.text, palette);
            made.push(entry(board, svg, () => open(board.name)));
        }
        return made;
    }

    async function show() {
        const time = ++shown;
        const none = document.getElementById('recent-none');
        none.hidden = true;
        list.replaceChildren();
        dialog.showModal();
        const made = await entries();
        if (time === shown) {
            list.replaceChildren(...made);
            none.hidden = made.length > 0;
        }
    }

    return { show };
}
