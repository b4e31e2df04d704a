// The boards that this browser keeps, on the start page: each can be opened, named anew and removed.
import { buttonOf, card, itemOf, paletteNow, spanOf } from './cards.js';
import { forgetBoard, recentBoards, rewriteBoard } from './storage.js';

const openElsewhere = 'That board is open in another tab.';

function timeText(time) {
    return time?.toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' }) ?? 'time not known';
}

// `open` resolves to whether it went to a board; `retitled` gives a stored text another title, or nothing if it can't
// be read; `newReader` gives access to the program's reading of what is stored (reader.js) while the list is made.
export function createRecent({ say, open, retitled, newReader }) {
    const list = document.getElementById('recent-list');
    const [some, none] = ['some', 'none'].map((which) => document.getElementById(`recent-${which}`));
    let shown = 0; // a counter, since a list may arrive when the next one is wanted

    async function choose(name) {
        if (!await open(name)) {
            say(openElsewhere);
        }
    }

    async function remove(board, item) {
        const bringBack = await forgetBoard(board.name);
        if (!bringBack) {
            say(openElsewhere);
            return;
        }
        const back = buttonOf('Bring it back', () => {
            bringBack();
            item.replaceChildren(...parts(board, item));
            item.querySelector('button').focus();
        });
        item.replaceChildren(spanOf(`${board.title}: removed`, 'removed'), back);
        back.focus();
    }

    async function rename(board, item, title) {
        const text = retitled(board.text, title);
        if (text === '' || !await rewriteBoard(board.name, text)) {
            say(text === '' ? 'That title could not be given.' : openElsewhere);
        } else {
            Object.assign(board, { title, text });
        }
        item.replaceChildren(...parts(board, item));
        item.querySelector('.rename').focus();
    }

    function askTitle(board, item) {
        const form = document.createElement('form');
        const input = document.createElement('input');
        input.type = 'text';
        input.value = board.title;
        input.maxLength = 200;
        input.required = true;
        input.setAttribute('aria-label', 'Title');
        const save = document.createElement('button');
        save.textContent = 'Rename';
        form.append(input, save);
        const giveUp = () => {
            item.replaceChildren(...parts(board, item));
            item.querySelector('.rename').focus();
        };
        form.addEventListener('submit', (event) => {
            event.preventDefault();
            rename(board, item, input.value.trim());
        });
        form.addEventListener('keydown', (event) => {
            if (event.key === 'Escape') {
                event.stopPropagation(); // the start page stays
                giveUp();
            }
        });
        item.replaceChildren(form);
        input.select();
    }

    function parts(board, item) {
        const name = (button, does) => {
            button.setAttribute('aria-label', `${does} ${board.title}`);
            button.className = does.toLowerCase();
            return button;
        };
        const renames = name(buttonOf('Rename', () => askTitle(board, item)), 'Rename');
        const removes = name(buttonOf('Remove', () => remove(board, item)), 'Remove');
        const { svg, title } = board;
        const opens = card({ svg, title, under: timeText(board.time) }, () => choose(board.name));
        return board.text === '' ? [opens, removes] : [opens, renames, removes];
    }

    async function entries() {
        const reader = newReader();
        const made = [];
        for (const board of await recentBoards(reader.reads)) {
            const svg = board.text === '' ? '' : await reader.drawing(board.text, paletteNow().index);
            const item = itemOf();
            item.append(...parts({ ...board, svg }, item));
            made.push(item);
        }
        return made;
    }

    return {
        async show() {
            const time = ++shown;
            some.hidden = none.hidden = true;
            list.replaceChildren();
            const made = await entries();
            if (time === shown) {
                list.replaceChildren(...made);
                some.hidden = made.length === 0;
                none.hidden = !some.hidden;
            }
        },
    };
}
