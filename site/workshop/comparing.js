// Trusses with profiles that are kept, and two trusses beside each other: drawn to one scale, in figures, and in words
// where they differ.
import { massOf, moreMass, movementOf, number, share, showTable } from './tables.js';
import { at, element } from '../element.js';
import { onFiles } from '../taken_files.js';

const store = 'gusset.kept-profiles'; // of this tab, so that a reload finds them
const another = '\n'; // no number of a kept one

function keptBefore() {
    try {
        const all = JSON.parse(sessionStorage.getItem(store));
        return Array.isArray(all) ? all.filter((each) => typeof each?.model === 'string' && typeof each.mass === 'number') : [];
    } catch {
        return []; // not kept, or not readable
    }
}

// `program` answers requests; `first()` is the model at hand, with the profiles that are chosen.
export function createComparing(program, first) {
    const kept = keptBefore(); // { name, shape, mass, use, deflection, enough, profiles, model }
    let asks = 0;
    const say = (words) => { at('comparing-says').textContent = words; };
    const nameOf = ({ name, shape }) => (shape === '' ? name : `${name}, ${shape}`);

    function keepThem() {
        try {
            sessionStorage.setItem(store, JSON.stringify(kept));
        } catch {
            say('This browser has no room to keep them over a reload.');
        }
    }

    // `chosen`: the one to compare with, if it is there.
    function list(chosen = at('compare-with').value) {
        at('compare-with').replaceChildren(
            ...kept.map((each, index) => element('option', { value: index, textContent: `${index + 1}: ${nameOf(each)}` })),
            element('option', { value: another, textContent: 'one of a link or a file' }));
        at('compare-with').value = [...at('compare-with').options].some(({ value }) => value === chosen) ? chosen : at('compare-with').options[0].value;
        at('compare-other').hidden = at('compare-with').value !== another;
        at('compare-table').hidden = kept.length === 0;
        const [one] = kept;
        showTable(at('compare-table'), 'Trusses kept, compared with the first of them',
            ['Truss', number('Mass'), number('Against 1'), number('Used'), number('Moves'), 'Profiles', 'Keep'],
            kept.map((each, index) => [`${index + 1}: ${nameOf(each)}`, number(massOf(each.mass)),
                number(each === one ? '–' : moreMass(each.mass, one.mass)),
                number(`${share(each.use)}${each.enough ? '' : ', not enough'}`, !each.enough), number(movementOf(each.deflection)), each.profiles, '']));
        at('compare-table').querySelectorAll('tbody tr').forEach((row, index) => {
            const remove = element('button', { type: 'button', textContent: 'Remove' });
            remove.setAttribute('aria-label', `Remove ${index + 1}: ${nameOf(kept[index])}`);
            remove.addEventListener('click', () => {
                const [gone] = kept.splice(index, 1);
                at('compared').hidden = true;
                list();
                keepThem();
                say(`${nameOf(gone)} is kept no more.`);
                at('comparing-title').focus();
            });
            row.lastElementChild.append(remove);
        });
    }

    // The members are the first lines of a figure.
    function showFigure(id, figure, marked) {
        at(id).innerHTML = figure; // made by the program, everything escaped
        const lines = [...at(id).querySelectorAll('path[class^=line]')];
        marked.forEach((index) => {
            const over = lines[index]?.cloneNode();
            over?.removeAttribute('stroke-width');
            over?.setAttribute('class', 'differs');
            lines[index]?.before(over);
        });
        if (figure === '') {
            at(id).textContent = 'This truss is too large to be drawn here.';
        }
    }

    // To one scale, the wider as wide as there is room.
    function scaleFigures(scales) {
        const drawn = ['first', 'second'].map((which) => at(`${which}-figure`).querySelector('svg'));
        if (drawn.every((svg) => svg)) {
            const widths = drawn.map((svg, index) => svg.viewBox.baseVal.width / scales[index]); // in the trusses' unit
            drawn.forEach((svg, index) => { svg.style.width = `${(100 * widths[index]) / Math.max(...widths)}%`; });
        }
    }

    function show({ titles, figures, scales, marked, rows, lines, remarks, link }) {
        at('compared').hidden = false;
        ['first', 'second'].forEach((which, index) => {
            at(`${which}-title`).textContent = titles[index] || 'without a title';
            showFigure(`${which}-figure`, figures[index], marked[index]);
        });
        scaleFigures(scales);
        at('marked-says').textContent = marked.flat().length === 0 ? '' : 'Dotted beside: members that the other has not, or has of another section.';
        at('compared-lines').replaceChildren(...lines.map((line) => element('li', { textContent: line })));
        at('compared-remarks').replaceChildren(...remarks.map((line) => element('li', { textContent: line })));
        showTable(at('compared-table'), 'Both in figures', ['What', number('First'), number('Second'), number('Second against first')],
            rows.map(({ name, first: one, second, more }) => [name, number(one), number(second), number(more)]));
        at('open-second').hidden = link === '';
        at('open-second').href = `../#${link}`;
    }

    async function compare(other) {
        const mine = asks += 1;
        say('Comparing …');
        at('compared').hidden = true;
        try {
            const reply = await program.ask({ do: 'compare', model: first(), other });
            if (mine === asks) {
                show(reply);
                say('');
            }
        } catch (error) {
            if (mine === asks) {
                say(`The other truss: ${error.message}`);
            }
        }
    }

    at('compare-with').addEventListener('change', () => { at('compare-other').hidden = at('compare-with').value !== another; });
    at('compare-form').addEventListener('submit', (event) => {
        event.preventDefault();
        const chosen = kept[Number(at('compare-with').value)];
        const typed = at('compare-link').value.trim();
        if (at('compare-with').value === another && typed === '') {
            say('Paste the link of the other truss, or take a file.');
            return;
        }
        compare(at('compare-with').value === another ? typed : chosen.model);
    });
    onFiles(at('compare-file'), at('compare-form'), ({ text }) => compare(text));

    return {
        // What is kept, with another truss at hand.
        show() {
            list();
        },
        keep(one) {
            kept.push(one);
            say('');
            keepThem();
            list(String(kept.length - 1));
        },
        // What is shown is of another truss than the one at hand.
        clear() {
            asks += 1;
            at('compared').hidden = true;
            say('');
        },
    };
}
