// A usual form of truss to begin with, by its sizes and its loads as they come, with a picture that follows what is
// typed.
import { buttonOf, inputOf, paletteNow, showPicture } from './cards.js';
import { createFactors } from './home_factors.js';

const at = (id) => document.getElementById(id);
const usualCases = [['dead', 'permanent'], ['snow', 'snow'], ['wind', 'wind']];
const usualForm = 'pratt';
const usualPanels = 4;
const usualLoad = '10';
const onJoints = 'joint';

function optionOf(text, value) {
    const option = document.createElement('option');
    option.textContent = text;
    option.value = value;
    return option;
}

function selectOf(name, className, options) {
    const select = document.createElement('select');
    select.className = className;
    select.setAttribute('aria-label', name);
    select.append(...options);
    return select;
}

const wordOptions = (things) => things.map(({ word, name }) => optionOf(name, word));

// `program`: forms() resolves to what there is to choose from; make(typed) returns a model as JSON, or the sentence
// that says why there is none; shares(typed) returns tables of what the joints get, as HTML; outline() returns the
// outline of the board, or nothing; drawing(model) returns its picture. `put(model)` opens it.
export function createForm(program, put) {
    const cases = at('form-cases');
    let there = null; // what there is to choose from
    let model = '';
    const factors = createFactors();

    const formNow = () => there.forms.find(({ word }) => word === at('form-form').value);
    const spreadOf = (row) => there.spreads.find(({ word }) => word === row.querySelector('.as').value);

    function loadOf(row) {
        const value = (name) => row.querySelector(name).value;
        const isNamed = !row.querySelector('.case').hidden;
        const load = { case: isNamed ? value('.case').trim() : '', kind: isNamed ? value('.kind') : '', as: value('.as') };
        const sizes = spreadOf(row).sides ? { left: value('.load'), right: value('.right') } : { size: value('.load') };
        return { ...load, ...sizes, on: load.as === onJoints ? formNow().loaded : value('.on') };
    }

    function typed() {
        const wish = {
            kind: at('form-form').value,
            span: at('form-span').value,
            rise: at('form-rise').value,
            panels: Number(at('form-panels').value),
        };
        at('form-sizes').querySelectorAll('input').forEach((input) => { wish[input.name] = input.value; });
        wish.spacing = at('form-spacing').value;
        wish.loads = [...cases.children].map(loadOf);
        if (at('form-rule').value !== '') {
            wish.rule = factors.wish(at('form-rule').value);
        }
        return wish;
    }

    function showShares() {
        if (at('form-shares').open) {
            at('form-shared').innerHTML = program.shares(typed()); // made by the program, everything escaped
        }
    }

    function update() {
        const made = program.make(typed());
        model = made.startsWith('{') ? made : '';
        at('form-fault').textContent = model === '' ? made : '';
        at('form-put').disabled = model === '';
        at('form-shares').hidden = model === '';
        if (model !== '') {
            showPicture(at('form-picture'), program.drawing(model, paletteNow().index));
            showShares();
        }
    }

    function offerPanels() {
        const form = formNow();
        const list = at('form-panels');
        const before = Number(list.value) || usualPanels;
        list.replaceChildren();
        for (let count = form.fewest; count <= form.most; count += form.step) {
            list.append(optionOf(count, count));
        }
        list.value = Math.min(Math.max(before - (before % form.step), form.fewest), form.most);
        at('form-panels-label').hidden = form.fewest === form.most;
        at('form-pitch').hidden = !form.pitched;
    }

    // The sizes that this form takes beyond span and rise; what is typed stays while it is offered.
    function offerSizes() {
        const { sizes } = formNow();
        const list = at('form-sizes');
        if (list.dataset.sizes === sizes.join()) {
            return;
        }
        list.dataset.sizes = sizes.join();
        list.replaceChildren(...sizes.map((word) => {
            const label = document.createElement('label');
            const { name } = there.sizes.find((each) => each.word === word);
            const input = inputOf(name, '', 'size');
            input.removeAttribute('aria-label');
            input.name = word;
            label.append(`${name}, ${there.length} `, input);
            return label;
        }));
    }

    // What a row does not need is not asked for: with one case, loaded joint by joint, its name says nothing.
    function showRow(row) {
        const several = cases.children.length > 1;
        const spread = spreadOf(row);
        const isPlain = spread.word === onJoints;
        row.querySelector('.case').hidden = !several && isPlain;
        row.querySelector('.kind').hidden = !several && isPlain;
        row.querySelector('.on').hidden = isPlain;
        row.querySelector('.right').hidden = !spread.sides;
        row.querySelector('.remove').hidden = !several;
        row.querySelector('.unit').textContent = spread.unit;
    }

    function showRows() {
        const rows = [...cases.children];
        rows.forEach(showRow);
        at('form-spacing-label').hidden = !rows.some((row) => row.querySelector('.as').value.startsWith('area'));
        at('form-rule-label').hidden = !rows.some((row) => loadOf(row).kind !== '');
        if (at('form-rule-label').hidden) {
            at('form-rule').value = '';
        }
        factors.show(there, at('form-rule').value, rows.map((row) => loadOf(row).kind));
    }

    function follow() {
        offerPanels();
        offerSizes();
        showRows();
        update();
    }

    function addCase() {
        const row = document.createElement('div');
        const [name, kind] = usualCases[cases.children.length] ?? ['', ''];
        const remove = buttonOf('Remove', () => {
            row.remove();
            follow();
            at('form-add').focus();
        });
        remove.className = 'remove';
        const unit = document.createElement('span');
        unit.className = 'unit';
        const kinds = selectOf('What the load case stands for', 'kind', [optionOf('of no kind', ''), ...wordOptions(there.kinds)]);
        const spreads = selectOf('How the load comes', 'as', wordOptions(there.spreads));
        kinds.value = kind;
        spreads.value = onJoints;
        row.append(inputOf('Name of the load case', name, 'case'), kinds, spreads, inputOf('Load', usualLoad, 'load'),
            inputOf('Load on the right slope', '', 'right'), unit,
            selectOf('Which chord carries the load', 'on', [optionOf('upper chord', 'upper'), optionOf('lower chord', 'lower')]),
            remove);
        cases.append(row);
        return row;
    }

    // The outline of the board, to be changed.
    function fill(outline) {
        at('form-form').value = outline.kind;
        offerPanels();
        offerSizes();
        const put = (id, value) => { at(id).value = value ?? ''; };
        put('form-panels', outline.panels);
        put('form-span', outline.span);
        put('form-rise', outline.rise);
        put('form-spacing', outline.spacing);
        put('form-rule', outline.rule?.by);
        factors.fill(outline.rule ?? {});
        at('form-sizes').querySelectorAll('input').forEach((input) => { input.value = outline[input.name] ?? ''; });
        cases.replaceChildren();
        (outline.loads ?? []).forEach((load) => {
            const row = addCase();
            const set = (name, value) => { row.querySelector(name).value = value ?? ''; };
            set('.case', load.case);
            set('.kind', load.kind);
            set('.load', load.size ?? load.left);
            set('.right', load.right);
            set('.as', load.as);
            set('.on', load.on ?? 'upper');
        });
        follow();
    }

    at('form-add').addEventListener('click', () => {
        const row = addCase();
        follow();
        row.querySelector('.load').select();
    });
    at('form-shares').addEventListener('toggle', showShares);
    at('form-again').addEventListener('click', () => {
        at('home-usual').open = true;
        fill(JSON.parse(program.outline()));
        at('form-span').focus();
    });
    at('home-form').addEventListener('input', () => {
        if (there) { // else the program is not there yet
            follow();
        }
    });
    // What is typed replaces what stands there.
    at('home-form').addEventListener('focusin', ({ target }) => target.select?.());
    at('home-form').addEventListener('submit', (event) => {
        event.preventDefault();
        if (model !== '') {
            put(model);
        }
    });

    return {
        // Each time the start page is shown: the units may be others, and the theme.
        async show() {
            there = await program.forms();
            const list = at('form-form');
            const chosen = list.value === '' ? usualForm : list.value;
            list.replaceChildren(...wordOptions(there.forms));
            list.value = chosen;
            const rule = at('form-rule').value;
            at('form-rule').replaceChildren(optionOf('none', ''), ...wordOptions(there.rules));
            at('form-rule').value = rule;
            at('home-form').querySelectorAll('.length').forEach((unit) => { unit.textContent = there.length; });
            if (cases.children.length === 0) {
                addCase();
            }
            follow();
            at('form-again').hidden = program.outline() === '';
            at('home-form').removeAttribute('aria-busy');
        },
    };
}
