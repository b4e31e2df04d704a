// The start page: what this is, the board to go on with, and every way to another one. It is HTML over the board,
// loaded when it is wanted first, and can be read while the program is still on its way.
import { card, itemOf, paletteNow } from './cards.js';
import { fetched } from './fetched.js';
import { createBoardAccess } from './home_board.js';
import { createForm } from './home_form.js';
import { createRecent } from './recent.js';

const home = document.getElementById('home');
const at = (id) => document.getElementById(id);

function styled() {
    return new Promise((resolve, reject) => {
        const link = document.createElement('link');
        link.rel = 'stylesheet';
        link.href = new URL('home.css', import.meta.url);
        link.addEventListener('load', resolve);
        link.addEventListener('error', () => reject(new Error('its style did not come')));
        document.head.append(link);
    });
}

async function fill(needs) {
    const board = createBoardAccess(needs);
    const [text] = await Promise.all([fetched('home.html').then((response) => response.text()), styled()]);
    home.innerHTML = text;
    const say = (words) => { at('home-says').textContent = words; };

    at('home-usual').open = !matchMedia('(max-width: 40rem)').matches; // else it would hide all below it
    const form = createForm(board.forms, (model) => board.put(model));
    const recent = createRecent({ ...board.recent, say });
    const tells = (error) => say(`That could not be fetched (${error.message}).`);

    at('home-new').addEventListener('click', board.begin);
    at('home-photograph').addEventListener('click', board.trace);
    at('home-file').addEventListener('click', board.chooseFile);
    at('home-link').addEventListener('submit', (event) => {
        event.preventDefault();
        board.openLink(at('home-link-text').value);
    });
    home.addEventListener('keydown', (event) => {
        if (event.key === 'Escape') {
            board.goOn();
        }
    });

    async function showExamples() {
        const { name } = paletteNow();
        const [{ examples }, pictures] = await Promise.all(['examples/index.json', `examples/pictures-${name}.json`]
            .map((file) => fetched(file).then((response) => response.json())));
        at('home-examples').replaceChildren(...examples.map(({ file, title, says }) =>
            itemOf(card({ svg: pictures[file], title, under: says }, () => board.openExample(file)))));
    }

    async function showGoOn() {
        const now = await board.now();
        at('home-go').hidden = now === null;
        if (now !== null) {
            const title = now.title || 'Without a title';
            const svg = now.drawing(paletteNow().index);
            at('home-go-card').replaceChildren(card({ svg, title, under: 'Back to the board' }, board.goOn));
        }
    }

    let looks = ''; // the theme that the pictures have
    async function showPictures() {
        looks = paletteNow().name;
        await Promise.all([showExamples().catch(tells), showGoOn(), form.show(), recent.show()]);
    }
    new MutationObserver(() => {
        if (!home.hidden && paletteNow().name !== looks) {
            showPictures();
        }
    }).observe(document.documentElement, { attributeFilter: ['data-theme'] });

    return {
        say,
        show() {
            say('');
            at('home-link-text').value = '';
            home.hidden = false;
            home.scrollTo(0, 0);
            at('home-title').focus({ preventScroll: true });
            showPictures();
        },
    };
}

let filled = null; // a promise

// `needs` as in home_board.js.
export function openHome(needs) {
    filled ??= fill(needs);
    filled.catch(() => { filled = null; }); // it is tried again when it is wanted again
    return filled;
}
