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
// In pounds and inches where the truss is in feet or inches.
const pound = 0.45359237; // kg
const inch = 25.4; // mm
let massUnit = 'kg';
export const tellIn = (unit) => { massUnit = unit; };
const isMetric = () => massUnit === 'kg';
export const inMassUnit = (kg) => (isMetric() ? kg : kg / pound);
export const massHeading = () => `mass, ${massUnit}`;

const decimalsOf = (mass) => (mass < 100 ? 1 : 0);
const asPrinted = (mass) => Number(mass.toFixed(decimalsOf(mass)));
// How much heavier than another, as a reader of both finds it.
export function moreMass(kg, otherKg) {
    const [mass, other] = [inMassUnit(kg), inMassUnit(otherKg)];
    const more = asPrinted(mass) - asPrinted(other);
    return `${more < 0 ? '−' : '+'}${Math.abs(more).toFixed(Math.min(decimalsOf(mass), decimalsOf(other)))}\u00A0${massUnit}`;
}
export const massOf = (kg) => (kg === undefined ? '–' : `${inMassUnit(kg).toFixed(decimalsOf(inMassUnit(kg)))}\u00A0${massUnit}`);
export const movementOf = (metres) => (metres === undefined ? '–'
    : isMetric() ? `${(1000 * metres).toFixed(1)}\u00A0mm` : `${(1000 * metres / inch).toFixed(2)}\u00A0in`);
