// A joint that is dragged in the drawing, or put where two numbers say.
import { coordinateIn } from './typed.js';
import { at, element } from '../element.js';

const reach = 22; // CSS px around a joint within which a press takes it
const fewest = 3; // CSS px of a step
const svg = (name, attributes) => {
    const made = document.createElementNS('http://www.w3.org/2000/svg', name);
    Object.entries(attributes).forEach(([key, value]) => made.setAttribute(key, value));
    return made;
};
const spread = (values) => Math.max(...values) - Math.min(...values);
const middle = (values) => (Math.max(...values) + Math.min(...values)) / 2;

// From places of joints to px of the drawing: the members are its first lines, in order.
function mapOf(truss, lines) {
    const ends = lines.map((line) => line.getAttribute('d').match(/-?[\d.]+(?:e-?\d+)?/g).map(Number));
    const across = ends.flatMap(([x, , toX]) => [x, toX]);
    const down = ends.flatMap(([, y, , toY]) => [y, toY]);
    const ofMembers = truss.members.flatMap(({ ends: names }) => names).map((name) => truss.places[truss.joints.indexOf(name)]);
    const xs = ofMembers.map(([x]) => x);
    const ys = ofMembers.map(([, y]) => y);
    const scale = Math.max(spread(across), spread(down)) / Math.max(spread(xs), spread(ys));
    return {
        scale,
        toDrawing: ([x, y]) => ({ x: middle(across) + scale * (x - middle(xs)), y: middle(down) - scale * (y - middle(ys)) }),
        toTruss: ({ x, y }) => [middle(xs) + (x - middle(across)) / scale, middle(ys) - (y - middle(down)) / scale],
    };
}

// 1, 2 or 5 times a power of ten, no less than `least`.
function stepOver(least) {
    const power = 10 ** Math.floor(Math.log10(least));
    return [1, 2, 5, 10].map((times) => times * power).find((step) => step >= least * 0.999);
}
const snapped = (value, step) => Number((Math.round(value / step) * step).toPrecision(12));

// `moved(joint, [x, y])` is called while it moves, and `rested()` when it is let go.
export function createJoints(moved, rested) {
    let truss = null;
    let dragged = null; // { name, pointer, map, step, marks, to }

    function fill() {
        const index = truss.joints.indexOf(at('joint').value);
        at('joint-x').value = truss.places[index]?.[0] ?? '';
        at('joint-y').value = truss.places[index]?.[1] ?? '';
    }

    const placeOf = (event, picture) => {
        const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(picture.getScreenCTM().inverse());
        return { x: point.x, y: point.y };
    };

    // The members of the joint as they would lie, and where it is.
    function showGhost() {
        const { name, map, to, marks, picture } = dragged;
        const here = map.toDrawing(to);
        const others = truss.members.filter(({ ends }) => ends.includes(name))
            .map(({ ends: [a, b] }) => map.toDrawing(truss.places[truss.joints.indexOf(a === name ? b : a)]));
        marks.replaceChildren(...others.map(({ x, y }) => svg('path', { class: 'ghost', d: `M${here.x} ${here.y}L${x} ${y}` })),
            svg('circle', { class: 'ghost', cx: here.x, cy: here.y, r: 5 }));
        picture.append(marks);
        at('figure-says').textContent = `${name}: (${to[0]}, ${to[1]}) ${truss.placeUnit}`;
    }

    at('figure').addEventListener('pointermove', (event) => {
        if (dragged?.pointer !== event.pointerId) {
            return;
        }
        const to = dragged.map.toTruss(placeOf(event, dragged.picture)).map((value) => snapped(value, dragged.step));
        if (to.join() !== dragged.to.join()) {
            dragged.to = to;
            showGhost();
            moved(dragged.name, to);
        }
    });
    const letGo = (event) => {
        if (dragged?.pointer === event.pointerId) {
            dragged.marks.remove();
            dragged = null;
            rested();
        }
    };
    at('figure').addEventListener('pointerup', letGo);
    at('figure').addEventListener('pointercancel', letGo);
    at('joint').addEventListener('change', fill);
    at('joint-form').addEventListener('submit', (event) => {
        event.preventDefault();
        moved(at('joint').value, [coordinateIn('joint-x'), coordinateIn('joint-y')]);
        rested();
    });

    return {
        isDragging: () => dragged !== null,
        // After the drawing was made.
        show(opened) {
            truss = opened;
            const before = at('joint').value;
            at('joint').replaceChildren(...truss.joints.map((name) => element('option', { textContent: name })));
            at('joint').value = truss.joints.includes(before) ? before : truss.joints[0] ?? '';
            at('joint-unit').textContent = truss.placeUnit;
            at('joint-part').hidden = truss.joints.length === 0;
            if (![at('joint-x'), at('joint-y')].includes(document.activeElement)) { // somebody types
                fill();
            }
            const picture = at('figure').querySelector('svg');
            if (!picture || truss.members.length === 0) {
                return;
            }
            const map = mapOf(truss, [...picture.querySelectorAll('path[class^=line]')].slice(0, truss.members.length));
            const shown = picture.getScreenCTM()?.a || 1; // CSS px of a px
            truss.joints.forEach((name, index) => {
                const { x, y } = map.toDrawing(truss.places[index]);
                const grip = svg('circle', { class: 'grip', cx: x, cy: y, r: reach / shown });
                grip.dataset.joint = name;
                grip.addEventListener('pointerdown', (event) => {
                    if (dragged || event.button > 0) {
                        return;
                    }
                    event.preventDefault();
                    at('figure').setPointerCapture(event.pointerId);
                    at('joint').value = name;
                    document.activeElement.blur();
                    dragged = { name, pointer: event.pointerId, map, picture, marks: svg('g', {}), to: truss.places[index],
                        step: stepOver(fewest / (shown * map.scale)) };
                });
                // Within a drawing touch-action is not heeded: the page would scroll.
                grip.addEventListener('touchstart', (event) => event.preventDefault(), { passive: false });
                picture.append(grip);
            });
        },
    };
}
