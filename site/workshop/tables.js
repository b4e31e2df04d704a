// Tables of this page.
import { element } from '../element.js';

const row = (cells, tag) => element('tr', {}, ...cells.map((cell, index) => {
    const { text = cell, isNumber = false, isPoor = false } = cell?.text === undefined ? {} : cell;
    const made = element(index === 0 || tag === 'th' ? 'th' : 'td', { textContent: String(text) });
    made.classList.toggle('number', isNumber);
    made.classList.toggle('poor', isPoor);
    if (made.tagName === 'TH') {
        made.scope = tag === 'th' ? 'col' : 'row';
    }
    return made;
}));

export const number = (text, isPoor = false) => ({ text, isNumber: true, isPoor });

export function showTable(place, caption, head, rows) {
    place.replaceChildren(element('table', {}, element('caption', { textContent: caption }), element('thead', {}, row(head, 'th')),
        element('tbody', {}, ...rows.map((cells) => row(cells, 'td')))));
}

export const share = (use) => (use === undefined ? '–' : use.toFixed(2));
const decimalsOf = (mass) => (mass < 100 ? 1 : 0);
const asPrinted = (mass) => Number(mass.toFixed(decimalsOf(mass)));
// How much heavier than another, as a reader of both finds it.
export function moreKilograms(mass, other) {
    const more = asPrinted(mass) - asPrinted(other);
    return `${more < 0 ? '−' : '+'}${Math.abs(more).toFixed(Math.min(decimalsOf(mass), decimalsOf(other)))}\u00A0kg`;
}
export const kilograms = (mass) => (mass === undefined ? '–' : `${mass.toFixed(decimalsOf(mass))}\u00A0kg`);
export const millimetres = (metres) => (metres === undefined ? '–' : `${(1000 * metres).toFixed(1)}\u00A0mm`);
