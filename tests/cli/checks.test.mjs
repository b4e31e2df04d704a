// Checks of members on the command line, in every output format.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { answered, gusset, gussetInNode } from './support.mjs';

const bridge = 'site/examples/farm_bridge.json';
const caution = /Local codes and a licensed engineer decide\./;

// A column of 3 m under 100 kN: A = 2000 mm², r = 30 mm, 235 MPa; λ = 100.
const column = (checks) => JSON.stringify({
    gusset: 1,
    joints: [{ id: 'A', x: 0, y: 0 }, { id: 'B', x: 0, y: 3 }],
    materials: [{ id: 'steel', E: 210000, strength: 235 }],
    sections: [{ id: 'tube', material: 'steel', A: 2000, r: 30 }],
    members: [{ a: 'A', b: 'B', section: 'tube' }],
    supports: [{ joint: 'A', kind: 'pin' }, { joint: 'B', kind: 'roller', reaction: 0 }],
    loads: [{ joint: 'B', fy: -100 }],
    checks,
});

// The bridge has moving loads; standard error says that checks do not include them.
function ofBridge(...words) {
    const { status, stdout, stderr } = gusset(['check', bridge, ...words]);
    assert.equal(status, 0);
    assert.match(stderr, /^site\/examples\/farm_bridge\.json: moving: /);
    return stdout;
}

function checked(checks, ...words) {
    const { status, stdout } = gusset(['check', '-', '--members', ...words], column(checks));
    assert.equal(status, 0);
    return stdout;
}

// its π²·E/λ², N/mm²
const elastic = (Math.PI ** 2 * 210000) / 100 ** 2;

function near(found, wanted) {
    assert.ok(Math.abs(found / wanted - 1) < 1e-9, `${found}, where ${wanted} is right`);
}

test('by Euler: the critical force over the factor chosen', () => {
    const { members, caution: words } = JSON.parse(checked({ eulerFactor: 3 }, '--json'));
    near(members[0].allowed, (elastic * 2000) / 3 / 1000);
    near(members[0].use, 100 / members[0].allowed);
    near(members[0].slenderness, 100);
    assert.equal(members[0].check, 'buckling');
    assert.match(words.join(' '), caution);
});

test('by EN 1993-1-1, 6.3.1: the reduction of the curve chosen', () => {
    const { members } = JSON.parse(checked({ formula: 'EN 1993-1-1', curve: 'b', gammaM1: 1.1 }, '--json'));
    const relative = Math.sqrt(235 / elastic);
    const phi = (1 + 0.34 * (relative - 0.2) + relative ** 2) / 2;
    const chi = 1 / (phi + Math.sqrt(phi ** 2 - relative ** 2));
    near(members[0].allowed, (chi * 2000 * 235) / 1.1 / 1000);
});

test('by AISC 360-16, E3: φ or Ω', () => {
    const stress = 0.658 ** (235 / elastic) * 235;
    const formula = 'AISC 360-16';
    near(JSON.parse(checked({ formula }, '--json')).members[0].allowed, (0.9 * stress * 2000) / 1000);
    near(
        JSON.parse(checked({ formula, safety: 'omega' }, '--json')).members[0].allowed,
        (stress * 2000) / 1.67 / 1000,
    );
});

test('every form carries the caution', () => {
    for (const form of ['--text', '--json', '--csv', '--html']) {
        assert.match(checked({}, form), caution, form);
    }
    for (const form of ['--text', '--html']) {
        assert.match(ofBridge('--member', 'A-B', form), caution, form);
    }
});

test('the worst over the combinations names the one that gives it', () => {
    const { members, worst } = JSON.parse(ofBridge('--members', '--worst', '--json'));
    assert.ok(members.length === 21 && worst.use > 0);
    assert.ok(members.every((it) => it.force === 0 || it.combination === 'strength'));
    const alone = JSON.parse(
        ofBridge('--members', '--combination', 'strength', '--json'),
    );
    alone.members.forEach((it, i) => near(1 + it.use, 1 + members[i].use));
});

test('what the model does not tell is said, and the exit is 0', () => {
    const text = answered(['check', 'site/examples/footbridge.json', '--members']);
    assert.match(text, /Not checked, as there is no area and strength: /);
});

test('a mechanism has no checks: exit status 1', () => {
    const { status, stdout } = gusset(['check', 'site/examples/missing_diagonal.json', '--members']);
    assert.equal(status, 1);
    assert.match(stdout, /once the truss is stable/);
    assert.match(stdout, caution);
});

test('checks that make no sense are refused with their place: exit status 2', () => {
    const { status, stderr } = gusset(['check', '-', '--members'], column({ K: -1 }));
    assert.equal(status, 2);
    assert.match(stderr, /^checks\.K: the factor of the buckling length must be from 0\.1 to 10\n/);
});

test('a member that is not there is named: exit status 2', () => {
    const { status, stderr } = gusset(['check', '-', '--member', 'A-Q'], column({}));
    assert.equal(status, 2);
    assert.match(stderr, /Q/);
});

const misuses = {
    'loads without members': ['--case', 'deck'],
    'a form without members': ['--json'],
    'a working as CSV': ['--member', 'A-B', '--csv'],
    'members and one of them': ['--members', '--member', 'A-B'],
    'a case and the worst': ['--members', '--case', 'deck', '--worst'],
};
for (const [name, words] of Object.entries(misuses)) {
    test(`${name}: wrong use, exit status 3`, () => {
        const { status, stdout, stderr } = gusset(['check', bridge, ...words]);
        assert.equal(status, 3);
        assert.equal(stdout, '');
        assert.notEqual(stderr, '');
    });
}

test('without options it says what is wrong with a model, as ever', () => {
    assert.doesNotMatch(answered(['check', bridge]), caution);
});

test('WebAssembly prints the same digits', () => {
    for (const checks of [{}, { formula: 'EN 1993-1-1' }, { formula: 'AISC 360-16' }]) {
        const model = JSON.parse(answered(['open', bridge]));
        const text = JSON.stringify({ ...model, checks });
        for (const form of ['--json', '--csv', '--text']) {
            const words = ['check', '-', '--members', '--worst', form];
            assert.deepEqual(gussetInNode(words, text), gusset(words, text));
        }
        const one = ['check', '-', '--member', 'A-B'];
        assert.deepEqual(gussetInNode(one, text), gusset(one, text));
    }
});
