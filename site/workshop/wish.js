// From what profiles are chosen, and how far the truss may move.
import { numberIn } from './typed.js';
import { at, element } from '../element.js';
import { onFiles } from '../taken_files.js';

const usualGrade = 'S355';
const usualKinds = ['shs-hot'];
const usualDeflection = '250';
const notCounted = '\n'; // no name of a case

// With factored loads goes the standard that they are factored by; curve c, which suits most sections.
function standardOf(combinations) {
    const by = combinations.map((each) => each.by).find((rule) => rule !== '') ?? '';
    return by.startsWith('EN') ? 'en-c' : by.includes('2.4.1') ? 'aisc-asd' : by.startsWith('ASCE') ? 'aisc-lrfd' : '';
}

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

    // Counted where a load case stands for what is permanent.
    function offerWeight({ weighs, weightCases, combinations }) {
        at('weight-row').hidden = weighs || weightCases.length === 0;
        at('weight').replaceChildren(element('option', { value: notCounted, textContent: 'not counted' }),
            ...weightCases.map((name) => element('option', { value: name, textContent: name === '' ? 'counted' : `in the case ${name}` })));
        at('weight').value = combinations.length > 0 && weightCases.length > 0 ? weightCases[0] : notCounted;
    }

    function sayKinds() {
        const names = [...at('kinds').querySelectorAll('input:checked')].map(({ parentElement }) => parentElement.textContent);
        at('kinds-says').textContent = names.length === 0 ? 'Kinds of profiles: none' : `Kinds of profiles: ${names.join(', ')}`;
    }

    at('wish-form').addEventListener('change', sayKinds);
    at('wish-form').addEventListener('input', ({ target }) => {
        if (target.id !== 'picked' && target.id !== 'into') {
            changed();
        }
    });
    onFiles(at('own-file'), at('own'), ({ text }) => {
        at('own').value = text;
        changed();
    });

    return {
        // Once: what was chosen stays for the next truss.
        show(choices) {
            at('standard').value = standardOf(choices.combinations);
            offerWeight(choices);
            if (!isFilled) {
                fill(choices);
                sayKinds();
                isFilled = true;
            }
        },
        wish: () => ({
            grade: at('grade').value,
            standard: at('standard').value,
            ...(at('weight-row').hidden || at('weight').value === notCounted ? {} : { weight: at('weight').value }),
            deflection: numberIn('deflection'),
            kinds: [...at('kinds').querySelectorAll('input:checked')].map(({ value }) => value),
            own: at('own').value.trim(),
        }),
    };
}
