// A slip: the free body on which it was made, with the forces of a sum as the student wrote them, and that sum.
import { element } from '../element.js';

const svgSpace = 'http://www.w3.org/2000/svg';
const arm = 70; // px, from the joint to the end of an arrow

function drawn(tag, properties, text = '') {
    const made = document.createElementNS(svgSpace, tag);
    Object.entries(properties).forEach(([key, value]) => made.setAttribute(key, value));
    made.textContent = text;
    return made;
}

// On which side of the joint a force is drawn: loads, which have no name, come in. y is down on the screen.
const sideOf = ({ of, x, y }) => (of === undefined ? [-x, y] : [x, -y]);

// A force as it acts with its value: away from the joint, or towards it.
function arrowOf(term) {
    const { of, x, y, value } = term;
    const sense = value < 0 ? -1 : 1;
    const isLoad = of === undefined;
    const [dx, dy] = [sense * x, -sense * y];
    const side = sideOf(term);
    const tip = isLoad ? [8 * side[0], 8 * side[1]] : sense > 0 ? [arm * x, -arm * y] : [8 * x, -8 * y];
    const tail = isLoad || sense < 0 ? [arm * side[0], arm * side[1]] : [8 * x, -8 * y];
    const head = [-1, 1].map((turn) => [tip[0] - 9 * dx + turn * 4 * dy, tip[1] - 9 * dy - turn * 4 * dx]);
    const anchor = side[0] > 0.3 ? 'start' : side[0] < -0.3 ? 'end' : 'middle';
    const size = Number(Math.abs(value).toPrecision(5));
    return [
        drawn('path', { d: `M${tail}L${tip}`, stroke: 'currentColor', 'stroke-width': 1.5, fill: 'none' }),
        drawn('path', { d: `M${tip}L${head[0]}L${head[1]}Z`, fill: 'currentColor' }),
        drawn('text', { x: (arm + 8) * side[0], y: (arm + 12) * side[1] + 4, 'text-anchor': anchor, 'font-size': 13 },
            of === undefined ? `${size}` : `${of}: ${size}`),
    ];
}

// Every force of the sums on a lone joint, each once.
function bodyOf(joint, equations) {
    const terms = new Map(equations.flatMap((equation) => equation.terms)
        .map((term) => [`${term.of ?? 'load'} ${term.x} ${term.y}`, term]));
    const forces = [...terms.values()].filter(({ value }) => value !== 0);
    const sides = forces.map(sideOf);
    const top = Math.min(-24, ...sides.map(([, y]) => y * (arm + 28)));
    const bottom = Math.max(24, ...sides.map(([, y]) => y * (arm + 28)));
    const svg = drawn('svg', { viewBox: `-160 ${top} 320 ${bottom - top}`, width: 320, height: bottom - top, role: 'img' });
    // The joint's name stands away from its forces.
    const [x, y] = [0, 1].map((axis) => sides.reduce((sum, side) => sum - side[axis], 0));
    const far = 16 / (Math.hypot(x, y) || 1);
    svg.append(drawn('title', {}, `Joint ${joint} with the student’s own values`),
        ...forces.flatMap(arrowOf),
        drawn('circle', { r: 3.5, fill: 'currentColor' }),
        drawn('text', { x: x * far, y: y * far + 5, 'text-anchor': 'middle', 'font-size': 14, 'font-weight': 'bold' }, joint));
    return svg;
}

export function slipPart({ kind, body = [], answers = [], equations }) {
    const part = element('section', { className: 'slip' },
        element('h4', { textContent: `${answers.join(', ')}: ${kind}` }));
    if (body.length === 1 && equations.length > 0) {
        part.append(bodyOf(body[0], equations));
    }
    equations.forEach(({ says }) => {
        const line = element('p');
        line.innerHTML = says; // made by the program, everything escaped
        part.append(line);
    });
    return part;
}
