// A drawing of the program's in which people point at things: each has a number, and marks with that number
// (engine/report/sketch, data-thing). A press takes the thing nearest to it, since a stroke is thinner than a thumb;
// by keyboard, arrows lead from one thing to the next.

const drawn = (name, attributes = {}) => {
    const made = document.createElementNS('http://www.w3.org/2000/svg', name);
    Object.entries(attributes).forEach(([key, value]) => made.setAttribute(key, value));
    return made;
};
const reach = 26; // CSS px from a stroke within which a press means it
const smallest = 12; // CSS px, of what is written at a thing
const largest = 16; // px of the drawing

const shares = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8]; // of a stroke, where words may stand

const numbersIn = (path) => path.match(/-?[\d.]+/g).map(Number);

// The strokes and words of a thing as segments { from, to }, px of the drawing.
function segmentsOf(marks) {
    return marks.flatMap((mark) => {
        if (mark.tagName === 'path') {
            const [x, y, toX, toY] = numbersIn(mark.getAttribute('d'));
            return [{ from: { x, y }, to: { x: toX, y: toY } }];
        }
        if (mark.tagName === 'polygon') {
            const [x, y] = numbersIn(mark.getAttribute('points'));
            return [{ from: { x, y }, to: { x, y } }];
        }
        const box = mark.getBBox();
        const middle = box.y + box.height / 2;
        return [{ from: { x: box.x, y: middle }, to: { x: box.x + box.width, y: middle } }];
    });
}

function distance({ from, to }, { x, y }) {
    const along = { x: to.x - from.x, y: to.y - from.y };
    const size = along.x ** 2 + along.y ** 2;
    const share = size === 0 ? 0 : Math.max(0, Math.min(1, ((x - from.x) * along.x + (y - from.y) * along.y) / size));
    return Math.hypot(from.x + share * along.x - x, from.y + share * along.y - y);
}

// `nameOf(thing)`: for screen readers; '' for what can't be pressed. `press(thing)` is called for a tap, Enter and Space.
export function createPicture(figure, { nameOf, press }) {
    let svg = null;
    let things = new Map(); // of each number: its group and its segments
    let texts = new Map();
    let lit = new Set();

    const scale = () => svg.getBoundingClientRect().width / svg.viewBox.baseVal.width || 1;

    function nearest({ clientX, clientY }) {
        const at = new DOMPoint(clientX, clientY).matrixTransform(svg.getScreenCTM().inverse());
        const found = [...things].map(([thing, { segments }]) =>
            [Math.min(...segments.map((segment) => distance(segment, at))), thing]).sort(([a], [b]) => a - b)[0];
        return found && found[0] * scale() <= reach ? found[1] : null;
    }

    function lead(thing) {
        things.forEach(({ group }, one) => group.setAttribute('tabindex', one === thing ? '0' : '-1'));
    }

    function onKey(event, thing) {
        const numbers = [...things.keys()];
        const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
        if (event.key === 'Enter' || event.key === ' ') {
            event.preventDefault();
            press(thing);
        } else if (step) {
            event.preventDefault();
            const next = numbers[(numbers.indexOf(thing) + step + numbers.length) % numbers.length];
            lead(next);
            things.get(next).group.focus();
        }
    }

    function gather(thing, marks) {
        const group = drawn('g', { class: 'thing', role: 'button', tabindex: '-1', 'aria-label': nameOf(thing) });
        marks[0].before(group);
        const segments = segmentsOf(marks);
        marks.filter(({ tagName }) => tagName === 'path').forEach((mark) =>
            group.append(drawn('path', { class: 'glow', d: mark.getAttribute('d') })));
        group.append(...marks);
        group.addEventListener('keydown', (event) => onKey(event, thing));
        things.set(thing, { group, segments });
    }

    function showLit() {
        things.forEach(({ group }, thing) => group.classList.toggle('lit', lit.has(thing)));
    }

    // Within the drawing, where text with its middle at x would reach over its edges.
    function within(x, width) {
        return Math.max(width / 2, Math.min(svg.viewBox.baseVal.width - width / 2, x));
    }

    function placeBelow(text, { segments }, size) {
        const ends = segments.flatMap(({ from, to }) => [from, to]);
        const xs = ends.map(({ x }) => x);
        text.setAttribute('x', within((Math.min(...xs) + Math.max(...xs)) / 2, text.getBBox().width));
        text.setAttribute('y', Math.max(...ends.map(({ y }) => y)) + 1.1 * size);
    }

    // Beside the first stroke, as near to its middle as it is clear of other words, above it or to its left first.
    function placeBeside(text, { segments: [{ from, to }] }, size) {
        const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
        const across = { x: (to.y - from.y) / length, y: -(to.x - from.x) / length };
        const side = across.y > 0.01 || (Math.abs(across.y) <= 0.01 && across.x > 0) ? -1 : 1;
        const { width } = text.getBBox();
        const off = 3 + Math.abs(across.x) * width / 2 + Math.abs(across.y) * size / 2;
        const places = shares.flatMap((share) => [side, -side].map((way) => ({
            x: within(from.x + share * (to.x - from.x) + way * off * across.x, width),
            y: from.y + share * (to.y - from.y) + way * off * across.y,
        })));
        const others = [...svg.querySelectorAll('text')].filter((other) => other !== text).map((other) => other.getBBox());
        const isClear = ({ x, y }) => others.every((box) => box.width === 0 || x + width / 2 <= box.x
            || x - width / 2 >= box.x + box.width || y + size / 2 <= box.y || y - size / 2 >= box.y + box.height);
        const { x, y } = places.find(isClear) ?? places[0];
        text.setAttribute('x', x);
        text.setAttribute('y', y + 0.35 * size);
    }

    function place({ text, isBelow }, thing) {
        const size = Math.min(largest, Math.max(13, smallest / scale()));
        text.setAttribute('font-size', size);
        (isBelow ? placeBelow : placeBeside)(text, things.get(thing), size);
    }

    figure.addEventListener('click', (event) => {
        const thing = svg && nearest(event);
        if (thing !== null && things.has(thing)) {
            press(thing);
        }
    });
    addEventListener('resize', () => texts.forEach(place));

    return {
        show(svgText) {
            const focused = [...things].find(([, { group }]) => group === document.activeElement)?.[0];
            figure.innerHTML = svgText; // made by the program, everything escaped
            svg = figure.querySelector('svg');
            things = new Map();
            texts = new Map();
            const marks = new Map();
            figure.querySelectorAll('[data-thing]').forEach((mark) => {
                const thing = Number(mark.dataset.thing);
                marks.set(thing, [...marks.get(thing) ?? [], mark]);
            });
            [...marks].filter(([thing]) => nameOf(thing) !== '').sort(([a], [b]) => a - b).forEach(([thing, all]) =>
                gather(thing, all));
            svg?.setAttribute('role', 'group');
            lead(things.has(focused) ? focused : things.keys().next().value);
            things.get(focused)?.group.focus();
            showLit();
        },
        light(...which) {
            lit = new Set(which);
            showLit();
        },
        focus(thing) {
            lead(thing);
            things.get(thing)?.group.focus();
        },
        // What stands at a thing, or below it, and what it is called with it; no runs take it away. A run is
        // { text, isLow }, low for a subscript.
        write(thing, runs, isBelow = false) {
            const found = things.get(thing);
            if (!found) {
                return;
            }
            const words = runs.map(({ text }) => text).join('');
            found.group.setAttribute('aria-label', `${nameOf(thing)}${words && `: ${words}`}`);
            const text = texts.get(thing)?.text ?? svg.appendChild(drawn('text', { class: 'typed', 'text-anchor': 'middle' }));
            text.setAttribute('aria-hidden', 'true');
            text.replaceChildren(...runs.map((run, index) => {
                const drop = 0.25 * ((run.isLow ? 1 : 0) - (runs[index - 1]?.isLow ? 1 : 0));
                const part = drawn('tspan', { dy: `${drop}em`, class: run.isLow ? 'low' : '' });
                part.textContent = run.text;
                return part;
            }));
            texts.set(thing, { text, isBelow });
            place(texts.get(thing), thing);
        },
    };
}
