// From what profiles are chosen, and how far the truss may move.
import { numberIn } from './typed.js';
import { at, element } from '../element.js';
import { onFiles } from '../taken_files.js';

const usualGrade = 'S355';
const usualKinds = ['shs-hot'];
const usualDeflection = '250';

// `changed` is called when something else is wished for.
export function createWish(changed) {
    let isFilled = false;

    function fill({ grades, kinds }) {
        at('grade').replaceChildren(...grades.map((name) => element('option', { textContent: name })));
        at('grade').value = usualGrade;
        at('deflection').value = usualDeflection;
        at('kinds').replaceChildren(...kinds.map(({ key, name, count }) => element('label', { className: 'tick' },
            element('input', { type: 'checkbox', value: key, checked: usualKinds.includes(key) }), `${name} (${count})`)));
        at('sources').replaceChildren(...kinds.map(({ name, source }) => element('li', { textContent: `${name}: ${source}` })));
    }

    function sayKinds() {
        const names = [...at('kinds').querySelectorAll('input:checked')].map(({ parentElement }) => parentElement.textContent);
        at('kinds-says').textContent = names.length === 0 ? 'Kinds of profiles: none' : `Kinds of profiles: ${names.join(', ')}`;
    }

    at('wish-form').addEventListener('change', () => {
        sayKinds();
        changed();
    });
    onFiles(at('own-file'), at('own'), ({ text }) => {
        at('own').value = text;
        changed();
    });

    return {
        // Once: what was chosen stays for the next truss.
        show(choices) {
            if (!isFilled) {
                fill(choices);
                sayKinds();
                isFilled = true;
            }
        },
        wish: () => ({
            grade: at('grade').value,
            deflection: numberIn('deflection'),
            kinds: [...at('kinds').querySelectorAll('input:checked')].map(({ value }) => value),
            own: at('own').value.trim(),
        }),
    };
}
