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
        segments.forEach(({ from, to }) => group.append(drawn('path',
            { class: 'glow', d: `M${from.x} ${from.y}L${to.x} ${to.y}` })));
        group.append(...marks);
        group.addEventListener('keydown', (event) => onKey(event, thing));
        things.set(thing, { group, segments });
    }

    function showLit() {
        things.forEach(({ group }, thing) => group.classList.toggle('lit', lit.has(thing)));
    }

    // Beside the middle of the first stroke, above it or to its left, and within the drawing.
    function place(text, thing) {
        const { from, to } = things.get(thing).segments[0];
        const size = Math.min(largest, Math.max(13, smallest / scale()));
        const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
        const across = { x: (to.y - from.y) / length, y: -(to.x - from.x) / length };
        const side = across.y > 0.01 || (Math.abs(across.y) <= 0.01 && across.x > 0) ? -1 : 1;
        text.setAttribute('font-size', size);
        const box = text.getBBox();
        const off = side * (3 + Math.abs(across.x) * box.width / 2 + Math.abs(across.y) * size / 2);
        const wide = svg.viewBox.baseVal.width - box.width / 2;
        text.setAttribute('x', Math.max(box.width / 2, Math.min(wide, (from.x + to.x) / 2 + off * across.x)));
        text.setAttribute('y', (from.y + to.y) / 2 + off * across.y + 0.35 * size);
    }

    figure.addEventListener('click', (event) => {
        const thing = svg && nearest(event);
        if (thing !== null && things.has(thing)) {
            press(thing);
        }
    });
    addEventListener('resize', () => texts.forEach((text, thing) => place(text, thing)));

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
        // What stands at a thing, and what it is called with it; '' takes it away.
        write(thing, words) {
            const found = things.get(thing);
            if (!found) {
                return;
            }
            found.group.setAttribute('aria-label', `${nameOf(thing)}${words && `: ${words}`}`);
            const text = texts.get(thing) ?? svg.appendChild(drawn('text', { class: 'typed', 'text-anchor': 'middle' }));
            text.setAttribute('aria-hidden', 'true');
            text.textContent = words;
            texts.set(thing, text);
            place(text, thing);
        },
    };
}
