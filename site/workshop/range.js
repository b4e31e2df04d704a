// Mass and deflection over a range of rises or panels, drawn, as a table, and to be saved.
import { chartOf } from './chart.js';
import { inMassUnit, massHeading, massOf, movementOf, number, share, showTable } from './tables.js';
import { numberIn } from './typed.js';
import { at } from '../element.js';
import { paper, pngOf } from '../png.js';
import { saveFile } from '../saving.js';

const points = 9;

// `asked(request)` asks the program about the truss at hand with what is wished for; `stop` ends what it is doing.
export function createRange(asked, stop) {
    let truss = null;
    let asks = 0; // an answer to any but the last is dropped
    let drawn = null; // { svg, points, across }
    const say = (words) => { at('ranging-says').textContent = words; };
    const acrossOf = (what) => (what === 'rise' ? `rise, ${truss.riseUnit}` : 'panels');

    function suggest() {
        const isRise = at('what').value === 'rise';
        at('from').value = isRise ? Number((0.6 * truss.rise).toPrecision(2)) : truss.fewestPanels;
        at('to').value = isRise ? Number((1.6 * truss.rise).toPrecision(2)) : Math.min(truss.mostPanels, 2 * truss.panels);
    }
    function show(what, all) {
        const across = acrossOf(what);
        const there = all.filter(({ mass }) => mass !== undefined);
        at('ranged').hidden = there.length === 0;
        if (there.length === 0) {
            say('No value of this range makes a truss.');
            return;
        }
        drawn = { svg: chartOf(all.map((point) => (point.mass === undefined ? point : { ...point, mass: inMassUnit(point.mass) })),
            { across, upwards: massHeading(), shown: truss[what] }), points: all, across };
        at('chart').innerHTML = drawn.svg; // made here of numbers
        showTable(at('range-table'), `Mass over ${across}`, [across, number('mass'), number('largest use'), number('deflection')],
            all.map(({ value, mass, use, deflection, enough }) => [Number(value.toPrecision(4)), number(massOf(mass)),
                number(share(use), use > 1), number(`${movementOf(deflection)}${mass !== undefined && !enough ? ', not enough' : ''}`)]));
        const skipped = what === 'panels' && truss.panelStep > 1 ? ' This form has an even number of panels: others are left out.' : '';
        const enough = there.filter((point) => point.enough);
        const best = enough.length > 0 ? enough.reduce((a, b) => (b.mass < a.mass ? b : a)) : null;
        say(best ? `The lightest of these has ${what === 'rise' ? `a rise of ${Number(best.value.toPrecision(4))} ${truss.riseUnit}`
            : `${best.value} panels`}: ${massOf(best.mass)}.${skipped}` : `None of these is enough with these profiles.${skipped}`);
    }
    at('what').addEventListener('change', suggest);
    at('range-form').addEventListener('submit', async (event) => {
        event.preventDefault();
        const what = at('what').value;
        say('Choosing profiles for each …');
        const mine = asks += 1;
        at('range-stop').hidden = false;
        try {
            const reply = await asked({ do: 'vary', what, from: numberIn('from'), to: numberIn('to'), count: points });
            if (mine === asks) {
                show(what, reply.points);
            }
        } catch (error) {
            if (mine === asks) {
                say(error.message);
            }
        } finally {
            at('range-stop').hidden = mine === asks || at('range-stop').hidden;
        }
    });
    at('range-stop').addEventListener('click', () => {
        at('range-form').querySelector('[type=submit]').focus();
        stop();
    });
    at('chart-svg').addEventListener('click', () => saveFile('mass.svg', drawn.svg, 'image/svg+xml'));
    at('chart-png').addEventListener('click', async () => {
        try {
            saveFile('mass.png', await pngOf(drawn.svg, { ground: paper }), 'image/png');
        } catch (error) {
            say(`The picture could not be made: ${error.message}.`);
        }
    });
    at('chart-csv').addEventListener('click', () => saveFile('mass.csv', [[drawn.across, 'mass kg', 'largest use', 'deflection m', 'enough'],
        ...drawn.points.map(({ value, mass = '', use = '', deflection = '', enough = '' }) => [value, mass, use, deflection, enough])]
        .map((cells) => cells.map((cell) => (/[",]/.test(cell) ? `"${cell}"` : cell)).join(',')).join('\n') + '\n', 'text/csv'));

    return {
        show(opened) {
            truss = opened;
            at('ranging').hidden = !truss.outline;
            if (truss.outline) {
                at('what').querySelector('[value=panels]').disabled = truss.fewestPanels === truss.mostPanels;
                suggest();
            }
        },
        clear() {
            if (!at('range-stop').hidden) { // it goes on about what is not asked any more
                asks += 1;
                at('range-stop').hidden = true;
                stop();
            }
            at('ranged').hidden = true;
            say('');
        },
    };
}
