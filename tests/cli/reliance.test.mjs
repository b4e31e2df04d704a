// Where rounding spoils some figures of a truss, every answer says so and prints only the reliable ones.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { gusset } from './support.mjs';

//     C       two bars over 2 m, 1 m above the ground; C is 1e-9 m above the line of A and B. Forces are 0.5e9 times a
//  A --- B    load at C. 1 + 1e-9 as a double is off by up to 1.1e-16, 1.1e-7 of the rise: six figures are left.
const arch = {
    gusset: 1,
    joints: [{ id: 'A', x: -1, y: 1 }, { id: 'B', x: 1, y: 1 }, { id: 'C', x: 0, y: 1 + 1e-9 }],
    members: [{ a: 'A', b: 'C' }, { a: 'C', b: 'B' }],
    supports: [{ joint: 'A', kind: 'pin' }, { joint: 'B', kind: 'pin' }],
    loads: [{ joint: 'C', fy: -1, case: 'snow' }, { joint: 'C', fx: 1, case: 'wind' }],
};

const line = ['--path', 'A,C,B', '--of', 'member:A-C'];
const asked = {
    envelope: ['envelope', '-'],
    influence: ['influence', '-', ...line],
    'check --members': ['check', '-', '--members'],
    'check --members --worst': ['check', '-', '--members', '--worst'],
};
const close = /Close to a mechanism at joint C/;

function answerOf(words, model = arch) {
    const answer = gusset(words, JSON.stringify(model));
    assert.equal(answer.status, 0, answer.stderr);
    return answer;
}

// The most significant figures of any number, not counting zeros that only give its size.
function figuresOf(text) {
    const numbers = text.match(/\d+(\.\d+)?/g) ?? [];
    return Math.max(0, ...numbers.map((it) => it.replace('.', '').replace(/^0+|0+$/g, '').length));
}

for (const [name, words] of Object.entries(asked)) {
    test(`${name} of an arch as flat as a line says so in text, CSV and JSON`, () => {
        const isTable = name === 'envelope' || name === 'influence';
        const text = answerOf(isTable ? [...words, '--text'] : words).stdout;
        assert.match(text, close);
        assert.match(text, /Rounding leaves 6 figures/);
        const csv = answerOf(isTable ? words : [...words, '--csv']);
        assert.match(csv.stdout, /\nfigures,6,/);
        assert.match(csv.stderr, close);
        const json = JSON.parse(answerOf([...words, '--json']).stdout);
        assert.equal(json.figures, 6);
        assert.ok(json.error > 1e-8 && json.condition > 1e7);
        assert.match(json.warnings.join(), close);
        const numbers = (json.members ?? json.ordinates).map((it) => [it.tension, it.compression, it.force, it.value]);
        assert.ok(figuresOf(csv.stdout.split('figures,')[0].split('caution')[0]) <= 6, csv.stdout);
        assert.ok(figuresOf(numbers.flat().join(' ')) <= 6, numbers);
    });
}

test('the same as HTML, as a drawing and as a working by hand', () => {
    assert.match(answerOf([...asked['check --members'], '--html']).stdout, close);
    assert.match(answerOf([...asked.influence, '--svg']).stderr, close);
    assert.match(answerOf(['working', '-', '--influence', 'member:A-C', '--path', 'A,C,B']).stdout, close);
    assert.match(answerOf(['check', '-', '--member', 'A-C']).stdout, close);
});

test('of an ordinary truss nothing is said, and every figure is kept', () => {
    const roof = structuredClone(arch);
    roof.joints[2].y = 1.75;
    for (const words of Object.values(asked)) {
        const { stdout, stderr } = answerOf([...words, '--json'], roof);
        assert.equal(stderr, '');
        assert.equal(JSON.parse(stdout).figures, undefined);
        assert.equal(JSON.parse(stdout).warnings, undefined);
    }
    // F = 1/(2·sin) with a rise of 0.75 in a bar of 1.25: 5/6.
    const { members } = JSON.parse(answerOf(['envelope', '-', '--json'], roof).stdout);
    assert.equal(members[0].compression, -0.833333333333);
});

test('a refused influence line or envelope names the member whose stiffness stands out', () => {
    const square = {
        gusset: 1,
        joints: [{ id: 'A', x: 0, y: 0 }, { id: 'B', x: 4, y: 0 }, { id: 'C', x: 4, y: 3 }, { id: 'D', x: 0, y: 3 }],
        members: ['AB', 'BC', 'CD', 'DA', 'AC', 'BD'].map((it) => ({ a: it[0], b: it[1], section: it === 'CD' ? 'wrong' : 'bar' })),
        materials: [{ id: 'steel', E: 210000 }],
        sections: [{ id: 'bar', material: 'steel', A: 1 }, { id: 'wrong', material: 'steel', A: 1e29 }],
        supports: [{ joint: 'A', kind: 'pin' }, { joint: 'B', kind: 'pin' }],
        loads: [{ joint: 'C', fx: 5, fy: -5 }],
    };
    for (const words of [['envelope', '-'], ['influence', '-', '--path', 'A,B', '--of', 'member:A-C']]) {
        const { status, stderr } = gusset(words, JSON.stringify(square));
        assert.equal(status, 1, stderr);
        assert.match(stderr, /that of member CD most: are its E and A in the right units/);
    }
});

test('one pinned joint is counted as one', () => {
    const model = { gusset: 1, joints: [{ id: 'A', x: 0, y: 0 }], members: [], supports: [{ joint: 'A', kind: 'pin' }] };
    assert.match(gusset(['solve', '-'], JSON.stringify(model)).stdout, /0 members \+ 2 reactions = 2 × 1 joint\./);
});
