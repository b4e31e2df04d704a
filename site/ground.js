// The photograph under the board, to be traced over. It is no part of the truss: not in its history, links, files or
// prints. It belongs to the board that it was put under, which is known by its name in the browser's history (views.js)
// and, once it is kept, by its place (storage.js), under which the photograph is kept too.
import { createDrawing } from './ground_draw.js';
import { forget, forgetAllBut, keep, keptUnder } from './ground_keeper.js';
import { fileOf, pictureOf } from './ground_picture.js';
import { boxOf, placeOf } from './ground_place.js';
import { boardPlace, places } from './storage.js';

const notKept = 'The photograph could not be kept: this browser’s storage is full or switched off. It stays under ' +
    'the board until the page is closed.';

// Of a photograph: picture, a canvas; file, the same to be kept; marks, wish (what was chosen in the dialog: typed,
// metres, way, at), pale, isHidden; and `place` (ground_place.js), which follows from these.
const withPlace = (ground) => ({ ...ground, place: placeOf({ ...ground.marks, ...ground.wish }) });

// `running` returns the program and its page; `say` is for problems.
export function createGround({ canvas, running, wake, say }) {
    const drawing = createDrawing(canvas);
    let ground = null;
    let last = { program: null, board: null, place: null }; // what the photograph was looked up for
    let serial = 0; // of what is shown

    const boardNow = () => history.state?.board;

    function show(box = [0, 0, 0, 0]) {
        const { program, page } = running();
        const isShown = ground !== null && !ground.isHidden;
        program._gussetGround(page, isShown ? ++serial : 0, ...box);
        if (!isShown) {
            drawing.forget();
        }
        wake();
    }

    async function store(place) {
        if (place !== null) {
            const { file, marks, wish, pale, isHidden } = ground;
            await keep(place, { file, marks, wish, pale, isHidden }).catch(() => say(notKept));
        }
    }

    async function lookUp(place) {
        const kept = await keptUnder(place).catch(() => undefined); // no storage
        return kept && withPlace({ ...kept, picture: await pictureOf(kept.file) });
    }

    // Another board, or this one has got a place. What its place has counts: an undo may have led back to it.
    async function settle(now) {
        const isOther = now.board !== last.board;
        const isRestarted = now.program !== last.program;
        const isMoved = now.place !== last.place;
        last = now;
        if (isOther && ground !== null) {
            ground = null;
            show();
        }
        if (now.place !== null && (isOther || isMoved)) {
            const found = await lookUp(now.place).catch(() => undefined);
            if (last !== now) {
                return;
            }
            if (found) {
                ground = found;
                show();
            } else if (ground !== null) {
                await store(now.place);
            }
        } else if (isRestarted && ground !== null) {
            show();
        }
    }

    function follow() {
        const now = { program: running().program, board: boardNow(), place: boardPlace() };
        // On the start page a board of another place may be on its way.
        const isAway = document.body.classList.contains('at-start');
        if (!isAway && Object.keys(now).some((name) => now[name] !== last[name])) {
            settle(now);
        }
    }

    async function put(chosen) {
        const isNew = chosen.picture !== ground?.picture;
        const file = isNew ? await fileOf(chosen.picture) : ground.file;
        ground = withPlace({ ...chosen, file });
        show(isNew ? boxOf(ground.place, ground.picture) : undefined);
        await store(boardPlace());
    }

    function takeAway() {
        ground = null;
        show();
        const place = boardPlace();
        if (place !== null) {
            forget(place).catch(() => {}); // then nothing was kept
        }
    }

    function ask(typed) {
        const { program, page } = running();
        return JSON.parse(program.withTexts([typed], (address) =>
            program.UTF8ToString(program._gussetGroundPlace(page, address))));
    }

    let dialog = null; // a promise
    async function open(file) {
        dialog ??= import('./ground_panel.js').then(({ createPanel }) => createPanel({ ask, put, takeAway }));
        dialog.catch(() => { dialog = null; });
        try {
            (await dialog).open(ground, file);
        } catch (error) {
            say(`The dialog could not be fetched (${error.message}).`);
        }
    }

    forgetAllBut(places()).catch(() => {});
    follow();
    return {
        open,
        follow,
        draw(x, y, metre, height, lensX, lensY, radius, dark) {
            if (ground !== null && boardNow() === last.board) {
                drawing.draw(ground, { x, y, metre, height, lensX, lensY, radius, dark });
            }
        },
    };
}
