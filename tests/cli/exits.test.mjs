// The exit status of every command on every kind of model: 0 if it answered, 1 if there are no forces because the truss
// moves under these loads, 2 if the input is bad. All commands must judge a model alike.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { gusset } from './support.mjs';

//      C        on a pin at A and a roller at B, 10 kN down at C
//     / \
//    A---B
const gable = () => ({
    gusset: 1,
    joints: [{ id: 'A', x: 0, y: 0 }, { id: 'B', x: 4, y: 0 }, { id: 'C', x: 2, y: 1.5 }],
    members: [{ a: 'A', b: 'B' }, { a: 'B', b: 'C' }, { a: 'A', b: 'C' }],
    supports: [{ joint: 'A', kind: 'pin' }, { joint: 'B', kind: 'roller', reaction: 90 }],
    loads: [{ joint: 'C', fy: -10 }],
});

function changed(change) {
    const model = gable();
    change(model);
    return model;
}

const slide = (m) => (m.supports[0] = { joint: 'A', kind: 'roller', reaction: 90 });
const addLoose = (m) => m.joints.push({ id: 'D', x: 9, y: 9 });

const models = {
    sound: gable(),
    'without loads': changed((m) => (m.loads = [])),
    // One redundant reaction. E and A are not given: none are needed while all members are alike.
    indeterminate: changed((m) => (m.supports[1] = { joint: 'B', kind: 'pin' })),
    'with a loose joint': changed(addLoose),
    'with a loose joint that is held': changed((m) => {
        addLoose(m);
        m.supports.push({ joint: 'D', kind: 'pin' });
    }),
    'with a loose joint that is loaded': changed((m) => {
        addLoose(m);
        m.loads.push({ joint: 'D', fy: -1 });
    }),
    // Two rollers on level ground carry any vertical load.
    'a mechanism at rest': changed(slide),
    'a mechanism without loads': changed((m) => {
        slide(m);
        m.loads = [];
    }),
    'a mechanism': changed((m) => {
        slide(m);
        m.loads.push({ joint: 'C', fx: 3 });
    }),
    'settled and without E and A': changed((m) => (m.supports[1] = { joint: 'B', kind: 'pin', settle: { x: 1, y: 0 } })),
    'one joint': { gusset: 1, joints: [{ id: 'A', x: 0, y: 0 }], members: [] },
    invalid: changed((m) => (m.members[0].b = 'K')),
};

const line = ['--path', 'A,B', '--of', 'member:A-C'];
const commands = {
    solve: ['solve', '-'],
    'solve --json': ['solve', '-', '--json'],
    'solve --csv': ['solve', '-', '--csv'],
    'solve --exact': ['solve', '-', '--exact'],
    check: ['check', '-'],
    'check --members': ['check', '-', '--members'],
    'check --members --worst': ['check', '-', '--members', '--worst'],
    'check --members --worst --json': ['check', '-', '--members', '--worst', '--json'],
    working: ['working', '-'],
    'working --html': ['working', '-', '--html'],
    'working --polygon': ['working', '-', '--polygon'],
    'working --force-method': ['working', '-', '--force-method'],
    envelope: ['envelope', '-'],
    'envelope --json': ['envelope', '-', '--json'],
    'envelope --text': ['envelope', '-', '--text'],
    influence: ['influence', '-', ...line],
    'influence --json': ['influence', '-', ...line, '--json'],
    'influence --svg': ['influence', '-', ...line, '--svg'],
    'influence --text': ['influence', '-', ...line, '--text'],
    'working --influence': ['working', '-', '--influence', 'member:A-C', '--path', 'A,B'],
    lesson: ['lesson', '-'],
    'lesson --vtt': ['lesson', '-', '--vtt'],
    'lesson --animate': ['lesson', '-', '--animate', '1'],
    'lesson --polygon': ['lesson', '-', '--polygon'],
    report: ['report', '-'],
    'report --csv': ['report', '-', '--csv'],
    'lines --dxf': ['lines', '-', '--dxf'],
    'lines --csv': ['lines', '-', '--csv'],
    link: ['link', '-'],
    open: ['open', '-'],
};

// The exit status of all commands, and the exceptions: an influence line has its own load and needs a stable truss; an
// envelope over cases leaves out settlements; a link holds any model.
const exits = {
    sound: { all: 0 },
    'without loads': { all: 0 },
    indeterminate: { all: 0 },
    'with a loose joint': { all: 0 },
    'with a loose joint that is held': { all: 0 },
    'with a loose joint that is loaded': { all: 1, influence: 0, 'working --influence': 0, lines: 0, link: 0, open: 0 },
    'a mechanism at rest': { all: 0, influence: 1, 'working --influence': 1 },
    'a mechanism without loads': { all: 1, lines: 0, link: 0, open: 0 },
    'a mechanism': { all: 1, lines: 0, link: 0, open: 0 },
    'settled and without E and A': {
        all: 2, influence: 0, envelope: 0, 'check --members --worst': 0, lines: 0, link: 0, open: 0,
    },
    'one joint': { all: 1, influence: 2, 'working --influence': 2, lines: 0, link: 0, open: 0 },
    invalid: { all: 2 },
};

function exitOf(kind, command) {
    const given = exits[kind];
    const words = Object.keys(given).filter((it) => it === command || command.startsWith(`${it} `));
    return given[words.at(-1) ?? 'all'];
}

for (const [kind, model] of Object.entries(models)) {
    test(`${kind}: every command ends with the same exit status`, () => {
        for (const [command, words] of Object.entries(commands)) {
            const { status, stderr } = gusset(words, JSON.stringify(model));
            assert.equal(status, exitOf(kind, command), `${command}: ${stderr}`);
        }
    });
}

test('a mechanism is never answered in silence: in words, as JSON, or in a line on standard error', () => {
    for (const kind of ['a mechanism', 'a mechanism at rest', 'with a loose joint']) {
        for (const [command, words] of Object.entries(commands)) {
            if (!/^(lines|link|open)/.test(command)) {
                const { stdout, stderr } = gusset(words, JSON.stringify(models[kind]));
                assert.match(stdout + stderr, /mechanism|Unstable|can move|No member ties/, `${kind}, ${command}`);
            }
        }
    }
});

test('what is asked for as JSON is answered as JSON, whatever the model is', () => {
    for (const [kind, model] of Object.entries(models)) {
        for (const [command, words] of Object.entries(commands)) {
            if (words.includes('--json')) {
                const { stdout } = gusset(words, JSON.stringify(model));
                assert.doesNotThrow(() => JSON.parse(stdout), `${kind}, ${command}`);
            }
        }
    }
    const { stdout } = gusset(commands['envelope --json'], JSON.stringify(models['a mechanism']));
    assert.equal(JSON.parse(stdout).status, 'mechanism');
    assert.match(JSON.parse(stdout).mechanisms[0].says, /can slide horizontally/);
});

// Each roller carries 5 kN, so the tie has 5 · 2 / 1.5 = 6.67 kN.
test('an envelope of a mechanism at rest holds the forces that solve gives', () => {
    const { stdout } = gusset(['envelope', '-', '--json'], JSON.stringify(models['a mechanism at rest']));
    const { members, notes } = JSON.parse(stdout);
    assert.ok(Math.abs(members[0].tension - (5 * 2) / 1.5) < 1e-9);
    assert.match(notes[0].says, /happen to be in balance/);
});

test('the missing diagonal is a mechanism to every command', () => {
    const file = 'site/examples/missing_diagonal.json';
    const words = [
        ['solve', file], ['check', file], ['working', file], ['envelope', file],
        ['influence', file, '--path', 'A,B,D,F', '--of', 'member:A-B'], ['check', file, '--members', '--worst'],
    ];
    for (const each of words) {
        assert.equal(gusset(each).status, 1, each.join(' '));
    }
});
