// From a truss to the lightest profiles that pass: groups, lists, what if the rise were another, mass over a range, and
// trusses compared. Nothing leaves the device.
import { createComparing } from './comparing.js';
import { createGroups } from './groups.js';
import { createJoints } from './joints.js';
import { createRange } from './range.js';
import { massOf, moreMass, movementOf, number, share, showTable, tellIn } from './tables.js';
import { numberIn } from './typed.js';
import { createWish } from './wish.js';
import { at, element } from '../element.js';
import { programIn } from '../in_worker.js';
import { saveFile } from '../saving.js';
import { onFiles } from '../taken_files.js';

const program = programIn(new URL('worker.js', import.meta.url));
let truss = null; // what the program said of it when it was opened
let chosen = null; // its profiles, once they are
let asOpened = ''; // the model, before anything was dragged
let asks = 0; // for profiles; an answer to any but the last is dropped

const titleOf = () => truss.title || 'A truss without a title';
const useOf = (groups) => Math.max(...groups.map(({ use }) => use));
const shapeOf = () => (truss.outline ? `rise ${Number(truss.rise.toPrecision(4))} ${truss.riseUnit}, ${truss.panels} panels` : '');
const asked = (request) => program.ask({ ...wish.wish(), ...groups.wish(), model: truss.model, ...request });

const wish = createWish(() => drop('The wishes have changed.'));
const groups = createGroups(() => drop('The groups have changed.'));
const range = createRange(asked, () => program.cancel());
const comparing = createComparing(program, () => chosen?.model ?? truss.model);
const joints = createJoints((joint, [x, y]) => follow({ do: 'move', joint, x, y }), () => showMoved());

// What was chosen does not hold any more.
function drop(why) {
    asks += 1;
    at('stop').hidden = true;
    at('chosen').inert = false;
    if (chosen) {
        chosen = null;
        at('chosen').hidden = true;
        at('choosing-says').textContent = `${why} Choose the profiles again.`;
    }
    range.clear();
    comparing.clear();
}

// The members are the first lines of a figure, in the order of the list: each gets a wide line over it to tap on.
function showFigure() {
    at('figure').innerHTML = truss.figure; // made by the program, everything escaped
    const svg = at('figure').querySelector('svg');
    at('shown').textContent = svg ? `Drawn with ${truss.shown}.` : '';
    at('figure-says').textContent = svg ? '' : truss.members.length === 0 ? 'There is no member yet: draw the truss on the board.'
        : 'This truss is too large to be drawn here.';
    [...svg?.querySelectorAll('path[class^=line]') ?? []].slice(0, truss.members.length).forEach((line, index) => {
        const over = line.cloneNode();
        over.setAttribute('class', 'member');
        over.dataset.index = index;
        over.addEventListener('click', () => groups.toggle(index));
        svg.append(over);
    });
    joints.show(truss);
}

// So that a reload finds it again.
function keepInAddress() {
    if (truss.link !== '') {
        history.replaceState(null, '', `#${truss.link}`);
    }
}

function showShape() {
    at('shape').hidden = !truss.outline;
    if (!truss.outline) {
        return;
    }
    const { rise } = truss;
    if (!(rise >= Number(at('rise').min) && rise <= Number(at('rise').max)) || at('rise').min === '') {
        const step = 10 ** Math.floor(Math.log10(rise) - 1);
        Object.assign(at('rise'), { step, min: Math.max(step, Number((0.3 * rise).toPrecision(1))), max: Number((2 * rise).toPrecision(2)) });
    }
    Object.assign(at('panels'), { min: truss.fewestPanels, max: truss.mostPanels, step: truss.panelStep });
    at('rise').value = rise;
    at('panels').value = truss.panels;
    at('panels-row').hidden = truss.fewestPanels === truss.mostPanels;
    sayShape();
}
function sayShape() {
    at('rise-says').textContent = `${Number(Number(at('rise').value).toPrecision(4))} ${truss.riseUnit}`;
    at('panels-says').textContent = at('panels').value;
    at('rise').setAttribute('aria-valuetext', at('rise-says').textContent);
}

// With their clauses and factors; those that give no member its greatest force are covered by others.
function showCombinations() {
    const all = truss.combinations;
    const covered = all.filter(({ governs }) => governs === false).length;
    at('combinations').hidden = all.length === 0;
    at('combinations-says').textContent = `${all.length} combinations${covered > 0 ? `, ${covered} of them covered by others` : ''}`;
    showTable(at('combinations-table'), 'Combinations', ['Combination', 'By', 'Factors of the cases', 'Gives a member its greatest force'],
        all.map(({ name, by, factors, governs }) => [name, by, factors.map((each) => `${Number(each.factor.toPrecision(6))} · ${each.case}`).join(' + '),
            { true: 'yes', false: 'no' }[governs] ?? '']));
}

function show(opened) {
    truss = opened;
    tellIn(truss.measures);
    at('title').textContent = `Profiles for ${titleOf()}`;
    document.title = `Gusset: profiles for ${titleOf()}`;
    at('beginning').hidden = true;
    at('truss-part').hidden = false;
    at('caution').textContent = truss.caution.join(' ');
    at('notes').hidden = truss.notes.length === 0;
    at('notes').replaceChildren(...truss.notes.map((note) => element('li', { textContent: note })));
    at('as-opened').hidden = truss.link === '';
    at('as-opened').href = `../#${truss.link}`;
    showCombinations();
    wish.show(truss);
    comparing.show();
    showFigure();
    groups.show(truss);
    range.show(truss);
    showShape();
}

function showChosen(reply) {
    chosen = reply;
    at('chosen').inert = false;
    at('keep').disabled = false;
    at('chosen').hidden = false;
    at('choosing-says').textContent = reply.enough ? `${massOf(reply.mass)} of profiles, the largest use ${share(useOf(reply.groups))}.`
        : 'These profiles are not enough: see which group, and why.';
    showTable(at('chosen-table'), 'The profile of each group',
        ['Group', 'Profile', number('Used'), number('Mass'), 'Used most'],
        reply.groups.map(({ name, profile, use, mass, worst, enough }) => [name, enough ? profile : { text: `${profile}, not enough`, isPoor: true },
            number(share(use), use > 1), number(massOf(mass)), worst]));
    const left = reply.leftOut > 0 ? [`${reply.leftOut} profiles were left out: ${at('grade').value} is not made so thick, or not for them.`] : [];
    at('chosen-lines').replaceChildren(...[...reply.lines, ...left, ...reply.notes].map((line) => element('li', { textContent: line })));
    at('chosen-path').replaceChildren(...reply.path.map((line) => element('li', { textContent: line })));
    at('to-board').hidden = reply.link === '';
    at('to-board').href = `../#${reply.link}`;
}

async function choose() {
    const mine = asks += 1;
    at('choosing-says').textContent = 'Choosing …';
    at('chosen').inert = true; // what it shows does not hold any more
    at('stop').hidden = false;
    try {
        const reply = await asked({ do: 'size' });
        if (mine === asks) {
            showChosen(reply);
        }
    } catch (error) {
        if (mine === asks) {
            drop('');
            at('choosing-says').textContent = error.message;
        }
    } finally {
        if (mine === asks) {
            at('stop').hidden = true;
        }
    }
}

// While something is dragged, only the last place counts. The drawing waits until a joint is let go, as it would move
// away under the hand.
let wanted = null;
let following = false;
let isStopped = false;
async function follow(request) {
    wanted = request;
    if (following) {
        return;
    }
    following = true;
    isStopped = false;
    while (wanted && !isStopped) {
        const now = wanted;
        wanted = null;
        await followOne(now);
    }
    wanted = null;
    following = false;
}
async function followOne(request) {
    const before = chosen;
    range.clear();
    comparing.clear();
    try {
        truss = { ...truss, ...await program.ask({ ...request, model: truss.model }) };
    } catch (error) {
        at('figure-says').textContent = error.message;
        showMoved(); // as it was
        return;
    }
    keepInAddress();
    at('as-it-was').hidden = truss.model === asOpened;
    showMoved();
    await choose();
    sayFollowed(before, request);
}
function showMoved() {
    if (joints.isDragging()) {
        return;
    }
    const says = at('figure-says').textContent;
    showFigure();
    groups.show(truss);
    if (wanted === null) { // else the sliders are further than the truss
        showShape();
    }
    at('figure-says').textContent = at('figure').querySelector('svg') ? says : at('figure-says').textContent;
}
function sayFollowed(before, { joint, x, y }) {
    const where = joint === undefined ? '' : `${joint} at (${x}, ${y}) ${truss.placeUnit}: `;
    if (!chosen) {
        at('figure-says').textContent = `${where}${at('choosing-says').textContent}`;
        return;
    }
    at('figure-says').textContent = `${where}${massOf(chosen.mass)}` +
        `${before ? ` (${moreMass(chosen.mass, before.mass)})` : ''}, ` +
        `used ${share(useOf(chosen.groups))}${chosen.enough ? '' : ', not enough'}, moves ${movementOf(chosen.deflection)}`;
}
function reshape() {
    sayShape();
    follow({ do: 'reshape', rise: Number(at('rise').value), panels: Number(at('panels').value) });
}

function keep() {
    at('keep').disabled = true; // once is enough
    const profiles = chosen.groups.map(({ name, profile }) => `${name} ${profile}`).join(', ');
    comparing.keep({ name: titleOf(), shape: shapeOf(), mass: chosen.mass, use: useOf(chosen.groups), deflection: chosen.deflection,
        enough: chosen.enough, profiles, model: chosen.model });
}

// `request` is one that answers with a truss.
const opening = async (request, takesFocus = true) => {
    at('beginning-says').textContent = '';
    try {
        const opened = await program.ask(request);
        drop('');
        at('choosing-says').textContent = '';
        at('rise').min = '';
        asOpened = opened.model;
        at('as-it-was').hidden = true;
        show(opened);
        keepInAddress();
        if (takesFocus) {
            at('choosing-title').focus();
        }
    } catch (error) {
        at('beginning-says').textContent = error.message;
    }
};

at('open-form').addEventListener('submit', (event) => {
    event.preventDefault();
    opening({ do: 'open', model: at('opened').value.trim() });
});
onFiles(at('opened-file'), at('open-form'), ({ text }) => opening({ do: 'open', model: text }));
onFiles(at('drawing-file'), at('drawing-part'), ({ text }) => opening({ do: 'trace', drawing: text, unit: at('drawing-unit').value,
    width: numberIn('drawing-width') }));
at('lines-save').addEventListener('click', async () => {
    const { text } = await program.ask({ do: 'lines', model: truss.model, as: 'dxf' });
    saveFile('truss.dxf', text, 'image/vnd.dxf');
});
at('another').addEventListener('click', () => {
    at('beginning').hidden = false;
    at('opened-back').hidden = false;
    at('truss-part').hidden = true;
    at('beginning-title').focus();
});
at('opened-back').addEventListener('click', () => {
    at('beginning').hidden = true;
    at('truss-part').hidden = false;
    at('choosing-title').focus();
});
at('wish-form').addEventListener('submit', (event) => {
    event.preventDefault();
    choose();
});
at('stop').addEventListener('click', () => {
    isStopped = true;
    at('wish-form').querySelector('.primary').focus();
    program.cancel();
});
at('chosen-save').addEventListener('click', () => saveFile('truss.json', chosen.model, 'application/json'));
at('keep').addEventListener('click', keep);
at('as-it-was').addEventListener('click', () => {
    at('joint').focus();
    opening({ do: 'open', model: asOpened }, false);
});
['rise', 'panels'].forEach((id) => at(id).addEventListener('input', reshape));

async function start() {
    at('workshop').hidden = false;
    at('says').textContent = '';
    if (location.hash.length > 1) {
        await opening({ do: 'open', model: location.hash }, false);
    }
    document.documentElement.dataset.ready = '';
}

addEventListener('hashchange', () => location.reload());
start().catch((error) => { at('says').textContent = `The page can’t be shown: ${error.message} Reload it to try again.`; });
