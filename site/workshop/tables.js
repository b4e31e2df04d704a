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
let measures = null; // the program's for the truss at hand
export const tellIn = (those) => { measures = those; };
export const inMassUnit = (kg) => kg * measures.perKilogram;
export const massHeading = () => `mass, ${measures.mass}`;

const decimalsOf = (mass) => (mass < 100 ? 1 : 0);
const asPrinted = (mass) => Number(mass.toFixed(decimalsOf(mass)));
// How much heavier than another, as a reader of both finds it.
export function moreMass(kg, otherKg) {
    const [mass, other] = [inMassUnit(kg), inMassUnit(otherKg)];
    const more = asPrinted(mass) - asPrinted(other);
    return `${more < 0 ? '−' : '+'}${Math.abs(more).toFixed(Math.min(decimalsOf(mass), decimalsOf(other)))}\u00A0${measures.mass}`;
}
export const massOf = (kg) => (kg === undefined ? '–' : `${inMassUnit(kg).toFixed(decimalsOf(inMassUnit(kg)))}\u00A0${measures.mass}`);
export const movementOf = (metres) => (metres === undefined ? '–'
    : `${(metres * measures.movementPerMetre).toFixed(measures.movementDecimals)}\u00A0${measures.movement}`);
