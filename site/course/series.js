// Variants: what may vary, how many, for whom; each with its picture, its link and its code.
import { at, element } from '../element.js';
import { onFiles } from '../taken_files.js';
import { saveFile } from '../saving.js';

const varies = [
    ['lengths', 'lengths', true],
    ['rise', 'rise', true],
    ['loads', 'sizes of loads', true],
    ['directions', 'directions of loads', false],
    ['places', 'places of loads', false],
    ['supports', 'supports', false],
];

// `use` is told the variants: { link, mark, variant, student, figure }; null if there are none any more.
export function createSeries(program, exercise, exercisePage, use) {
    let reply = null;
    const say = (words) => { at('series-says').textContent = words; };

    at('varies').append(...varies.map(([value, words, isUsual]) => element('label', {},
        element('input', { type: 'checkbox', value, checked: isUsual }), element('span', { textContent: words }))));

    function variantItem({ number, student, code, link, figure, steps }) {
        const picture = element('div', { className: 'picture' });
        picture.innerHTML = figure; // made by the program, everything escaped
        const words = `Variant ${number}${student ? `, ${student}` : ''}, code ${code}, ${steps} steps`;
        return element('li', {}, element('a', { href: `${exercisePage}#${link}`, target: '_blank', textContent: words }), picture);
    }

    function clear() {
        reply = null;
        at('series-made').hidden = true;
        at('variants').replaceChildren();
        say('');
    }

    function work(isWorking) {
        at('series-cancel').hidden = !isWorking;
        at('series-progress').hidden = !isWorking;
        at('series-progress').removeAttribute('value');
        at('series-form').querySelector('[type=submit]').disabled = isWorking;
    }

    function stepIn(id) {
        const text = at(id).value.trim().replace(',', '.');
        const step = Number(text);
        if (!(step >= 0)) {
            throw new Error(`A step must be a number such as 0.5, or nothing: “${at(id).value}” is none.`);
        }
        return step;
    }

    async function make() {
        const { model } = await exercise();
        const students = at('students').value;
        const request = { do: 'variants', model, address: exercisePage, students,
            vary: [...at('varies').querySelectorAll('input:checked')].map(({ value }) => value),
            lengthStep: stepIn('length-step'), loadStep: stepIn('load-step'), decimals: Number(at('decimals').value), count: Number(at('count').value.trim() || NaN),
            seed: at('seed').value.trim() };
        reply = await program.ask(request, ({ done, all }) => {
            at('series-progress').max = all;
            at('series-progress').value = done;
            say(`${done} of ${all} variants found …`);
        });
        at('variants').replaceChildren(...reply.variants.map(variantItem));
        at('series-made').hidden = false;
        say(`${reply.variants.length} variants are made; the code tells sheets apart, and a link holds no name.`);
        use(reply.variants.map(({ number, student, code, link, mark, figure }) =>
            ({ variant: number, student, code, link, mark, figure })));
    }

    at('series-form').addEventListener('submit', async (event) => {
        event.preventDefault();
        clear();
        use(null);
        work(true);
        try {
            await make();
        } catch (error) {
            say(error.message);
        }
        work(false);
    });
    at('series-cancel').addEventListener('click', () => program.cancel());
    at('series-drop').addEventListener('click', () => {
        clear();
        use(null);
        say('The one exercise is handed out, without variants.');
    });
    at('students').addEventListener('input', () => { at('count').disabled = at('students').value.trim() !== ''; });
    onFiles(at('students-file'), at('students'), ({ text }) => {
        at('students').value = text;
        at('students').dispatchEvent(new Event('input'));
    });
    at('links-save').addEventListener('click', () => saveFile('links.csv', reply.links, 'text/csv'));
    at('key-save').addEventListener('click', () => saveFile('key.csv', reply.key, 'text/csv'));
    return {
        clear,
        show({ coordinateUnit, forceUnit }) {
            at('length-unit').textContent = coordinateUnit;
            at('load-unit').textContent = forceUnit;
        },
    };
}
