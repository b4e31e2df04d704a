// The dialog of the photograph under the board: chooses it, and lays it by two marks on it whose distance is known.
import { element } from './element.js';
import { paleness } from './ground_draw.js';
import { pictureOf } from './ground_picture.js';
import { areApart, ways } from './ground_place.js';

const about = 'Take a photograph of a truss, or of a drawing of one. It lies pale under the board, and you draw the ' +
    'members over it. It stays on this device: it is not in the link, in the file or on paper.';
const howTo = 'Put the two marks at the ends of something whose length you know. Drag them, or move them with the ' +
    'arrow keys; with Shift they go further.';
const names = ['First mark', 'Second mark'];
const loupeSize = 112; // px
const loupeNearer = 2;
const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
const stride = 10; // px with Shift

function styled() {
    return new Promise((resolve, reject) => {
        const link = element('link', { rel: 'stylesheet', href: new URL('ground.css', import.meta.url).href });
        link.addEventListener('load', resolve);
        link.addEventListener('error', () => reject(new Error('its style did not come')));
        document.head.append(link);
    });
}

const option = (value, text) => element('option', { value, textContent: text });
const kept = (value, most) => Math.min(most, Math.max(0, value));

// As it was typed; with its unit if it had none of its own and the board has another one since.
const typedIn = (unit, wish) =>
    (unit === wish.unit || /[\p{L}'"′″]/u.test(wish.typed) ? wish.typed : `${wish.typed} ${wish.unit}`);

function selectOf(label, choices) {
    const select = element('select', {}, ...choices.map(([value, text]) => option(value, text)));
    return { select, row: element('label', {}, label, select) };
}

// The photograph with its two marks. `moved` is told where one is, in words.
function createMarks(moved) {
    const namespace = 'http://www.w3.org/2000/svg';
    const line = document.createElementNS(namespace, 'line');
    const svg = document.createElementNS(namespace, 'svg');
    svg.setAttribute('preserveAspectRatio', 'none');
    svg.setAttribute('aria-hidden', 'true');
    svg.append(line);
    const handles = names.map((name, i) =>
        element('button', { type: 'button', className: 'ground-mark', textContent: i + 1 }));
    const loupe = element('canvas', { className: 'ground-loupe', width: loupeSize, height: loupeSize, hidden: true });
    const frame = element('div', { className: 'ground-picture' });
    let picture = null;
    let marks = [];

    function refresh() {
        marks.forEach(({ x, y }, i) => {
            handles[i].style.left = `${100 * x / picture.width}%`;
            handles[i].style.top = `${100 * y / picture.height}%`;
            handles[i].setAttribute('aria-label', `${names[i]}, ${Math.round(x)} across and ${Math.round(y)} down`);
            line.setAttribute(`x${i + 1}`, x);
            line.setAttribute(`y${i + 1}`, y);
        });
    }

    const perPixel = () => picture.width / frame.clientWidth; // of the photograph in one of the screen

    function move(i, to) {
        marks[i] = { x: kept(to.x, picture.width), y: kept(to.y, picture.height) };
        refresh();
    }

    // What the finger covers, in the corner that it is not in.
    function magnify({ x, y }) {
        const across = loupeSize * perPixel() / loupeNearer;
        const paper = loupe.getContext('2d');
        paper.fillRect(0, 0, loupeSize, loupeSize);
        paper.drawImage(picture, x - across / 2, y - across / 2, across, across, 0, 0, loupeSize, loupeSize);
        const middle = loupeSize / 2;
        [['#fff', 3], ['#a0003c', 1]].forEach(([colour, width]) => {
            paper.strokeStyle = colour;
            paper.lineWidth = width;
            paper.strokeRect(middle, 0, 0, loupeSize);
            paper.strokeRect(0, middle, loupeSize, 0);
        });
        loupe.classList.toggle('at-right', x < picture.width / 2);
        loupe.hidden = false;
    }

    function drag(handle, i) {
        let from = null; // { x, y } of the pointer, and the mark then
        handle.addEventListener('pointerdown', (event) => {
            handle.setPointerCapture(event.pointerId);
            from = { x: event.clientX, y: event.clientY, mark: marks[i] };
        });
        handle.addEventListener('pointermove', (event) => {
            if (from !== null) {
                const scale = perPixel();
                move(i, { x: from.mark.x + scale * (event.clientX - from.x),
                    y: from.mark.y + scale * (event.clientY - from.y) });
                magnify(marks[i]);
            }
        });
        ['pointerup', 'pointercancel'].forEach((name) => handle.addEventListener(name, () => {
            from = null;
            loupe.hidden = true;
        }));
        handle.addEventListener('keydown', (event) => {
            if (event.key in arrows) {
                event.preventDefault(); // the dialog stays where it is
                const [dx, dy] = arrows[event.key];
                const step = perPixel() * (event.shiftKey ? stride : 1);
                move(i, { x: marks[i].x + step * dx, y: marks[i].y + step * dy });
                moved(handle.getAttribute('aria-label'));
            }
        });
    }
    handles.forEach(drag);

    return {
        frame,
        picture: () => picture,
        marks: () => ({ first: marks[0], second: marks[1] }),
        show(shown, { first, second }) {
            picture = shown;
            marks = [first, second];
            svg.setAttribute('viewBox', `0 0 ${picture.width} ${picture.height}`);
            frame.replaceChildren(picture, svg, ...handles, loupe);
            refresh();
        },
    };
}

function createDialog() {
    const button = (text, more = {}) => element('button', { type: 'button', textContent: text, ...more });
    const says = element('p', { className: 'ground-says' });
    says.setAttribute('role', 'alert');
    const heard = element('p', { className: 'ground-heard' });
    heard.setAttribute('aria-live', 'polite');
    const marks = createMarks((text) => { heard.textContent = text; });
    const chooser = element('input', { type: 'file', accept: 'image/*', hidden: true });
    chooser.setAttribute('aria-label', 'A photograph');
    const unit = element('span');
    const length = element('input', { type: 'text', inputMode: 'text', autocomplete: 'off', enterKeyHint: 'done' });
    const way = selectOf('The line is', Object.values(ways).map((name) => [name, name]));
    const at = selectOf('The first mark lies at', []);
    const pale = selectOf('How clear', paleness.map((name) => [name, name]));
    const shown = element('input', { type: 'checkbox', checked: true });
    const parts = {
        says, marks, chooser, unit, length, shown, way: way.select, at: at.select, pale: pale.select,
        choose: button('Choose a photograph …'), away: button('Take it away'), close: button('Close'),
        put: element('button', { textContent: 'Put it under the board', className: 'primary' }),
    };
    parts.laying = element('div', { hidden: true }, element('p', { textContent: howTo }), marks.frame, heard,
        element('div', { className: 'dialog-fields ground-fields' },
            element('label', {}, element('span', {}, 'Their distance', unit), length), way.row, at.row, pale.row,
            element('label', { className: 'tick' }, shown, 'Shown under the board')));
    const title = element('h2', { id: 'ground-title', textContent: 'A photograph to trace over' });
    const form = element('form', { noValidate: true }, title, element('p', { textContent: about }), parts.laying, says,
        chooser, element('div', { className: 'dialog-foot' }, parts.choose, parts.away, parts.close, parts.put));
    parts.form = form;
    parts.dialog = element('dialog', { id: 'ground-dialog', className: 'dialog' }, form);
    parts.dialog.setAttribute('aria-labelledby', 'ground-title');
    document.body.append(parts.dialog);
    return parts;
}

// `ask` answers as groundPlace (web/app/page/ground); `put` and `takeAway` as in ground.js.
export async function createPanel({ ask, put, takeAway }) {
    await styled();
    const { dialog, form, says, marks, chooser, unit, length, shown, way, at, pale, choose, away, close, laying,
        put: putButton } = createDialog();
    const say = (text) => { says.textContent = text; };
    const origin = { x: 0, y: 0 };
    let before = null; // where the first mark was put last

    function show(picture, wanted) {
        marks.show(picture, wanted);
        laying.hidden = putButton.hidden = false;
        choose.textContent = 'Choose another …';
    }

    async function take(file) {
        say('');
        try {
            const picture = await pictureOf(file);
            const height = 0.75 * picture.height;
            const [first, second] = [0.2, 0.8].map((part) => ({ x: part * picture.width, y: height }));
            show(picture, { first, second });
            length.focus();
        } catch (error) {
            say(error.message);
        }
    }

    // What is wrong, in a sentence, or what was chosen.
    function read() {
        const typed = length.value.trim();
        if (!areApart(marks.marks().first, marks.marks().second)) {
            return 'Both marks lie on one place. Put them at the two ends of something whose length you know.';
        }
        if (typed === '') {
            return 'Type the distance between the marks.';
        }
        const { metres, fault, x, y } = ask(typed);
        if (metres === undefined) {
            return /^\p{Lu}/u.test(fault) ? fault : `“${typed}”: ${fault}.`;
        }
        const place = { origin, before, joint: { x, y } }[at.value];
        return {
            picture: marks.picture(), marks: marks.marks(), pale: pale.value, isHidden: !shown.checked,
            wish: { typed, unit: unit.dataset.symbol, metres, way: way.value, at: place },
        };
    }

    // Where the first mark may lie: the joint that is picked comes first.
    function offerPlaces({ joint }) {
        const offers = [['origin', 'the origin']];
        if (before !== null && (before.x !== 0 || before.y !== 0)) {
            offers.unshift(['before', 'where it was']);
        }
        if (joint !== undefined) {
            offers.unshift(['joint', `joint ${joint}`]);
        }
        at.replaceChildren(...offers.map(([value, text]) => option(value, text)));
        at.value = before === null ? offers[0][0] : offers.find(([value]) => value !== 'joint')[0];
    }

    choose.addEventListener('click', () => chooser.click());
    chooser.addEventListener('change', () => {
        if (chooser.files.length > 0) {
            take(chooser.files[0]);
        }
        chooser.value = ''; // choosing the same file again is a change too
    });
    close.addEventListener('click', () => dialog.close());
    away.addEventListener('click', () => {
        takeAway();
        dialog.close();
    });
    form.addEventListener('submit', (event) => {
        event.preventDefault();
        const chosen = read();
        if (typeof chosen === 'string') {
            say(chosen);
            length.focus();
        } else {
            put(chosen);
            dialog.close();
        }
    });
    dialog.addEventListener('close', () => document.getElementById('board').focus());

    return {
        // `ground` as in ground.js, or null; with a photograph that takes its place, if there is one.
        open(ground, file) {
            say('');
            const now = ask('');
            unit.textContent = now.unit === '' ? '' : `, ${now.unit}`;
            unit.dataset.symbol = now.unit;
            before = ground === null ? null : ground.wish.at;
            offerPlaces(now);
            length.value = ground === null ? '' : typedIn(now.unit, ground.wish);
            way.value = ground?.wish.way ?? ways.level;
            pale.value = ground?.pale ?? 'pale';
            shown.checked = !ground?.isHidden;
            away.hidden = ground === null;
            laying.hidden = putButton.hidden = ground === null;
            choose.textContent = 'Choose a photograph …';
            if (ground !== null) {
                show(ground.picture, ground.marks);
            }
            dialog.showModal();
            (ground === null ? choose : length).focus();
            if (file) {
                take(file);
            }
        },
    };
}
