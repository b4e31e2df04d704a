// Mass over rise or panels, as a drawing: a mark for each truss, joined where neighbours are enough; those that are not
// enough are crosses. The deflection stands in the table beside it.
const wide = 640;
const high = 320;
const edge = { left: 64, right: 16, top: 16, bottom: 44 };

const escaped = (text) => text.replace(/[&<>"]/g, (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign]);

// About five round numbers over a range.
function ticks(from, to) {
    const rough = (to - from) / 5 || 1;
    const power = 10 ** Math.floor(Math.log10(rough));
    const step = [1, 2, 5, 10].find((each) => each * power >= rough) * power;
    const first = Math.ceil(from / step - 1e-9);
    return Array.from({ length: Math.floor(to / step + 1e-9) - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}

// `points`: { value, mass, enough }; those without a mass are no truss. `across` and `upwards` say what is measured;
// `shown`: the value of the truss at hand.
export function chartOf(points, { across, upwards, shown }) {
    const there = points.filter(({ mass }) => mass !== undefined);
    const [from, to] = [points[0].value, points.at(-1).value];
    const most = Math.max(...there.map(({ mass }) => mass)) * 1.08;
    const x = (value) => edge.left + (wide - edge.left - edge.right) * (to === from ? 0.5 : (value - from) / (to - from));
    const y = (mass) => high - edge.bottom - (high - edge.top - edge.bottom) * mass / most;
    const text = (at, words, anchor) => `<text x="${at[0].toFixed(1)}" y="${at[1].toFixed(1)}" text-anchor="${anchor}">${escaped(words)}</text>`;
    const line = (a, b, ink) => `<path d="M${a.map((n) => n.toFixed(1))}L${b.map((n) => n.toFixed(1))}" stroke="${ink}"/>`;

    const grid = ticks(0, most).map((mass) => line([edge.left, y(mass)], [wide - edge.right, y(mass)], '#ddd4c2') +
        text([edge.left - 8, y(mass) + 4], String(mass), 'end'));
    const below = ticks(from, to).map((value) => line([x(value), high - edge.bottom], [x(value), high - edge.bottom + 5], '#2a2927') +
        text([x(value), high - edge.bottom + 20], String(value), 'middle'));
    const joined = points.slice(1).map((point, i) => (point.enough && points[i].enough
        ? line([x(points[i].value), y(points[i].mass)], [x(point.value), y(point.mass)], '#0e5a61') : ''));
    const marks = there.map(({ value, mass, enough }) => (enough
        ? `<circle cx="${x(value).toFixed(1)}" cy="${y(mass).toFixed(1)}" r="4" fill="#0e5a61"/>`
        : line([x(value) - 5, y(mass) - 5], [x(value) + 5, y(mass) + 5], '#2a2927') +
            line([x(value) - 5, y(mass) + 5], [x(value) + 5, y(mass) - 5], '#2a2927')));
    const now = shown >= from && shown <= to
        ? `<path d="M${x(shown).toFixed(1)},${edge.top}V${high - edge.bottom}" stroke="#2a2927" stroke-dasharray="4 4"/>` : '';
    return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${wide} ${high}" width="${wide}" height="${high}" role="img" ` +
        `aria-label="${escaped(`Mass over ${across}; the same numbers are in the table`)}" font-size="13" fill="#2a2927" stroke-width="1.5">` +
        `<g fill="none">${line([edge.left, edge.top], [edge.left, high - edge.bottom], '#2a2927')}` +
        `${line([edge.left, high - edge.bottom], [wide - edge.right, high - edge.bottom], '#2a2927')}</g>` +
        `${grid.join('')}${below.join('')}${now}${joined.join('')}${marks.join('')}` +
        `${text([edge.left + 8, edge.top + 6], upwards, 'start')}${text([wide - edge.right, high - 8], across, 'end')}</svg>`;
}
