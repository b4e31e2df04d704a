// A usual form of truss to begin with, by its sizes and loads, with a picture that follows what is typed.
import { buttonOf, paletteNow, showPicture } from './cards.js';

const at = (id) => document.getElementById(id);
const usualCases = ['dead', 'snow', 'wind'];
const usualForm = 2; // Pratt
const usualPanels = 4;
const usualLoad = '10';

function inputOf(name, value, isNumber) {
    const input = document.createElement('input');
    input.type = 'text';
    input.value = value;
    input.autocomplete = 'off';
    input.setAttribute('aria-label', name);
    input.enterKeyHint = 'done';
    if (isNumber) {
        input.inputMode = 'decimal';
        input.className = 'load';
    }
    return input;
}

function optionOf(text, value) {
    const option = document.createElement('option');
    option.textContent = text;
    option.value = value;
    return option;
}

// `program`: forms() resolves to what there is to choose from; make(wish) returns a model as JSON, or the sentence
// that says why there is none; drawing(model) returns its picture. `put(model)` opens it.
export function createForm(program, put) {
    const cases = at('form-cases');
    let forms = [];
    let model = '';

    const loads = () => [...cases.children].map((row) => {
        const [name, load] = [row.querySelector('.case'), row.querySelector('.load')];
        return `${cases.children.length > 1 ? name.value.trim() : ''}\t${load.value}`;
    });

    function update() {
        const made = program.make({
            form: Number(at('form-form').value),
            panels: Number(at('form-panels').value),
            span: at('form-span').value,
            rise: at('form-rise').value,
            cases: loads().join('\n'),
        });
        model = made.startsWith('{') ? made : '';
        at('form-fault').textContent = model === '' ? made : '';
        at('form-put').disabled = model === '';
        if (model !== '') {
            showPicture(at('form-picture'), program.drawing(model, paletteNow().index));
        }
    }

    function offerPanels() {
        const form = forms[Number(at('form-form').value)];
        const list = at('form-panels');
        const before = Number(list.value) || usualPanels;
        list.replaceChildren();
        for (let count = form.fewest; count <= form.most; count += form.step) {
            list.append(optionOf(count, count));
        }
        list.value = Math.min(Math.max(before - (before % form.step), form.fewest), form.most);
        at('form-panels-label').hidden = form.fewest === form.most;
    }

    // With one case its name says nothing, so it is not asked for.
    function nameCases() {
        const several = cases.children.length > 1;
        cases.classList.toggle('several', several);
        [...cases.children].forEach((row) => {
            row.querySelector('.case').hidden = !several;
            row.querySelector('.remove').hidden = !several;
        });
        update();
    }

    function addCase() {
        const row = document.createElement('div');
        const name = inputOf('Name of the load case', usualCases[cases.children.length] ?? '', false);
        name.className = 'case';
        const remove = buttonOf('Remove', () => {
            row.remove();
            nameCases();
            at('form-add').focus();
        });
        remove.className = 'remove';
        row.append(name, inputOf('Load on each joint', usualLoad, true), remove);
        cases.append(row);
        return row;
    }

    at('form-add').addEventListener('click', () => {
        const row = addCase();
        nameCases();
        row.querySelector('.load').select();
    });
    at('home-form').addEventListener('input', () => {
        if (forms.length > 0) { // else the program is not there yet
            offerPanels();
            update();
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
            const { length, force, forms: all } = await program.forms();
            forms = all;
            const list = at('form-form');
            const chosen = list.value === '' ? usualForm : list.value;
            list.replaceChildren(...forms.map(({ name }, index) => optionOf(name, index)));
            list.value = chosen;
            at('home-form').querySelectorAll('.length').forEach((unit) => { unit.textContent = length; });
            at('home-form').querySelectorAll('.force').forEach((unit) => { unit.textContent = force; });
            if (cases.children.length === 0) {
                addCase();
            }
            offerPanels();
            nameCases();
            at('home-form').removeAttribute('aria-busy');
        },
    };
}
