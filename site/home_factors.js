// Factors of combinations on the start page: those that EN 1990 recommends, or a national annex's as typed.
import { inputOf } from './cards.js';

const at = (id) => document.getElementById(id);
const psis = ['ψ0', 'ψ1', 'ψ2'];

function fieldOf(name, usual, data) {
    const label = document.createElement('label');
    const input = inputOf(name, '', 'size');
    input.placeholder = String(usual);
    Object.assign(input.dataset, data);
    input.removeAttribute('aria-label');
    label.append(`${name} `, input);
    return label;
}

// `there`: what the program offers (starterForms); what is typed stays while it is offered.
export function createFactors() {
    let typed = {}; // word of a factor → text
    let typedPsi = {}; // kind of a case → three texts
    let kinds = []; // those that are shown

    const keep = () => {
        at('form-factors').querySelectorAll('input').forEach(({ dataset, value }) => { typed[dataset.word] = value.trim(); });
        at('form-psi').querySelectorAll('input').forEach(({ dataset, value }) => {
            (typedPsi[dataset.kind] ??= ['', '', ''])[dataset.index] = value.trim();
        });
    };

    // What is typed, into the fields that are shown.
    function write() {
        at('form-factors').querySelectorAll('input').forEach((input) => { input.value = typed[input.dataset.word] ?? ''; });
        at('form-psi').querySelectorAll('input').forEach((input) => {
            input.value = typedPsi[input.dataset.kind]?.[input.dataset.index] ?? '';
        });
    }

    function showFactors(there, words) {
        if (at('form-factors').dataset.words !== words.join()) {
            at('form-factors').dataset.words = words.join();
            at('form-factors').replaceChildren(...words.map((word) => {
                const { name, usual } = there.factors.find((each) => each.word === word);
                return fieldOf(name, usual, { word });
            }));
        }
    }

    function showPsi() {
        const words = kinds.map(({ word }) => word).join();
        if (at('form-psi').dataset.words !== words) {
            at('form-psi').dataset.words = words;
            at('form-psi').replaceChildren(...kinds.map(({ word, name, psi }) => {
                const set = document.createElement('fieldset');
                const legend = document.createElement('legend');
                legend.textContent = name;
                const fields = document.createElement('div');
                fields.className = 'fields thirds';
                fields.append(...psis.map((sign, index) => fieldOf(sign, psi[index], { kind: word, index })));
                set.append(legend, fields);
                return set;
            }));
        }
    }

    return {
        // For this rule and these kinds of load cases.
        show(there, rule, words) {
            keep();
            const factors = there.rules.find(({ word }) => word === rule)?.factors ?? [];
            at('form-national').hidden = factors.length === 0;
            kinds = factors.length === 0 ? [] : there.kinds.filter(({ word, psi }) => psi && words.includes(word));
            showFactors(there, factors);
            showPsi();
            write();
        },
        // The rule of an outline: its name alone if nothing is typed.
        wish(by) {
            keep();
            const own = [...at('form-factors').querySelectorAll('input')].map(({ dataset, value }) => [dataset.word, value.trim()])
                .filter(([, value]) => value !== '');
            const national = kinds.filter(({ word }) => typedPsi[word]?.some((text) => text !== ''))
                .map(({ word, psi }) => [word, typedPsi[word].map((text, index) => (text === '' ? psi[index] : text))]);
            if (own.length === 0 && national.length === 0) {
                return by;
            }
            return { by, ...Object.fromEntries(own), ...(national.length > 0 ? { national: Object.fromEntries(national) } : {}) };
        },
        // As an outline has them.
        fill({ by, national = {}, ...own }) {
            const texts = (all) => Object.fromEntries(Object.entries(all).map(([word, value]) => [word, String(value)]));
            typed = by ? texts(own) : {};
            typedPsi = Object.fromEntries(Object.entries(national).map(([word, psi]) => [word, psi.map(String)]));
            write();
        },
    };
}
