// Input that makes no sense in statics: every command that it affects reports it in a line that names the place and
// the cure; none silently uses a default.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { gusset } from './support.mjs';

const gable = {
    gusset: 1,
    joints: [
        { id: 'A', x: 0, y: 0 },
        { id: 'B', x: 4, y: 0 },
        { id: 'C', x: 2, y: 1.5 },
    ],
    materials: [{ id: 'steel', E: 210000, alpha: 1.2e-5 }],
    sections: [{ id: 'tube', material: 'steel', A: 1000 }],
    members: [
        { a: 'A', b: 'B', section: 'tube' },
        { a: 'B', b: 'C', section: 'tube' },
        { a: 'A', b: 'C', section: 'tube' },
    ],
    supports: [
        { joint: 'A', kind: 'pin' },
        { joint: 'B', kind: 'roller', reaction: 90 },
    ],
    loads: [{ joint: 'C', fy: -10 }],
};

const check = ['check', '-'];
const solve = ['solve', '-'];
const working = ['working', '-'];
const envelope = ['envelope', '-'];
const influence = ['influence', '-', '--path', 'A,B', '--of', 'member:A-C'];

function run(words, change) {
    const model = structuredClone(gable);
    change(model);
    return gusset(words, JSON.stringify(model));
}

const faults = [
    ['E is zero', (m) => (m.materials[0].E = 0), [check, solve, working, influence, envelope],
        'materials[0].E: must be greater than 0'],
    ['E is negative', (m) => (m.materials[0].E = -210000), [check, solve, working, influence, envelope],
        'materials[0].E: must be greater than 0'],
    ['A is zero', (m) => (m.sections[0].A = 0), [check, solve, working, influence, envelope],
        'sections[0].A: must be greater than 0'],
    ['A is negative', (m) => (m.sections[0].A = -1), [check, solve, working, influence, envelope],
        'sections[0].A: must be greater than 0'],
    ['a dimension is negative', (m) => (m.sections[0] = { id: 'tube', shape: 'chs', D: -60, t: 3 }),
        [check, solve, working, influence, envelope], 'sections[0]: its D must be greater than 0'],
    ['a roller has no direction', (m) => delete m.supports[1].reaction, [check, solve, working, influence, envelope],
        'supports[1].reaction: is missing: a roller needs the direction of its reaction in degrees, 90 when it rolls ' +
            'on a level floor'],
    ['a pin and a roller at one joint settle by different amounts',
        (m) => {
            m.supports[0].settle = { x: 0, y: -5 };
            m.supports.push({ joint: 'A', kind: 'roller', reaction: 90, settle: -3 });
        },
        [check, solve, working],
        'supports[2].settle: the settlements of the supports at joint A contradict each other; give them one movement'],
    ['two rollers at one joint settle by different amounts',
        (m) => {
            m.supports[1].settle = -5;
            m.supports.push({ joint: 'B', kind: 'roller', reaction: 90, settle: -3 });
        },
        [check, solve, working],
        'supports[2].settle: the settlements of the supports at joint B contradict each other; give them one movement'],
    ['two axles stand at one place',
        (m) => (m.moving = [{ id: 'cart', path: ['A', 'B'], axles: [{ at: 1, force: -1 }, { at: 1, force: -2 }] }]),
        [check, solve, working, influence, envelope],
        'moving[0].axles[1].at: another axle is at the same place: combine the two'],
    ['a warmed member has a material without alpha',
        (m) => {
            m.members[0].dT = 20;
            delete m.materials[0].alpha;
        },
        [check, solve, working],
        'members[0].dT: member AB has a temperature change, but no alpha: give it a section whose material has alpha'],
    ['a warmed member has no section',
        (m) => {
            m.members[2].dT = 20;
            delete m.members[2].section;
        },
        [check, solve, working],
        'members[2].dT: member AC has a temperature change, but no alpha: give it a section whose material has alpha'],
];

for (const [name, change, commands, line] of faults) {
    test(`where ${name}, ${commands.map(([it]) => it).join(', ')} name the place and the cure`, () => {
        for (const words of commands) {
            const { status, stderr } = run(words, change);
            assert.equal(status, 2, words[0]);
            assert.equal(stderr, `${line}\n`, words[0]);
        }
    });
}

// An influence line depends only on its own load, and an envelope over cases only on the loads: neither includes
// settlement or temperature, so faults of these are not reported.
test('settlement and warmth that can not be computed hinder no influence line', () => {
    const change = (m) => {
        m.members[0].dT = 20;
        delete m.materials[0].alpha;
        m.supports.push({ joint: 'A', kind: 'roller', reaction: 90, settle: -3 });
    };
    assert.equal(run(influence, change).status, 0);
    assert.equal(run(envelope, change).status, 0);
    assert.equal(run(solve, change).status, 2);
});

// A combination includes settlements and temperature changes, which belong to no case.
test('a warmed member without alpha hinders an envelope over combinations', () => {
    const { status, stderr } = run(envelope, (m) => {
        m.members[0].dT = 20;
        delete m.materials[0].alpha;
        m.combinations = [{ id: 'all', factors: { loads: 1 } }];
    });
    assert.equal(status, 2);
    assert.match(stderr, /^members\[0\]\.dT: member AB has a temperature change, but no alpha/);
});

test('a missing alpha is not told as a lack of accuracy', () => {
    const { stdout } = run(check, (m) => {
        m.members[0].dT = 20;
        delete m.materials[0].alpha;
    });
    assert.doesNotMatch(stdout, /accuracy|unstable/);
});

test('a case or combination that is not there is named, by every command that takes one', () => {
    for (const words of [solve, working]) {
        const { status, stderr } = run([...words, '--case', 'wynd'], () => {});
        assert.equal(status, 2);
        assert.equal(stderr, 'loads: no load is in case "wynd"; name an existing one\n');
        const other = run([...words, '--combination', 'k'], () => {});
        assert.equal(other.status, 2);
        assert.equal(other.stderr, 'combinations: there is no combination "k"; name an existing one\n');
    }
});

// Accepted, since a combination may be written before the loads of its cases; but reported, since a case contributes
// nothing.
test('a combination with a factor for a case without loads is told in all results', () => {
    const change = (m) => (m.combinations = [{ id: 'k', factors: { loads: 1.35, wynd: 1.5 } }]);
    const line = 'combinations[0].factors.wynd: no load is in case "wynd": give it one, or take its factor out';
    assert.ok(run(check, change).stdout.includes(`${line}\n`));
    assert.match(run([...solve, '--combination', 'k'], change).stdout, /no load is in case "wynd"/);
    const { notes } = JSON.parse(run([...solve, '--combination', 'k', '--json'], change).stdout);
    assert.ok(notes.some(({ at, says }) => `${at}: ${says}` === line));
    for (const form of ['--csv', '--json', '--text']) {
        const { status, stderr } = run([...envelope, form], change);
        assert.equal(status, 0);
        assert.equal(stderr, `${line}\n`);
    }
    assert.equal(run(envelope, (m) => (m.combinations = [{ id: 'k', factors: { loads: 1.35 } }])).stderr, '');
});

// Two more panels, and a hanger CD.
const longer = (m) => {
    m.joints.push({ id: 'D', x: 2, y: -1 }, { id: 'E', x: 8, y: 0 });
    for (const [a, b] of [['C', 'D'], ['A', 'D'], ['B', 'E'], ['C', 'E']]) {
        m.members.push({ a, b, section: 'tube' });
    }
};
const along = (path) => ['influence', '-', '--path', path, '--of', 'reaction:A:y'];

// A load moves in one direction along existing members, and distances are measured horizontally: so a path may rise
// and fall, but must not turn back, go straight up, or skip a gap.
test('a path whose joints are not joined, or that does not lead on, is refused where it breaks', () => {
    const refused = {
        'A,E': 'path[1]: no member joins A and E: name the joints that the load passes, one after the other',
        'A,B,E,C': 'path[3]: the path turns back or upright between E and C: let it lead on to one side',
        'A,D,C': 'path[2]: the path turns back or upright between D and C: let it lead on to one side',
        A: 'path: a path needs at least two joints',
        'A,Q': 'Q: is no joint: name it by its label',
    };
    for (const [path, line] of Object.entries(refused)) {
        const { status, stderr } = run(along(path), longer);
        assert.equal(status, 2, path);
        assert.equal(stderr, `${line}\n`);
    }
    for (const path of ['A,B,E', 'A,C,E', 'E,B,A']) {
        assert.equal(run(along(path), longer).status, 0, path);
    }
});

test('the path of a moving load that can not be travelled is noted with its place', () => {
    const { status, stdout } = run(check, (m) => {
        longer(m);
        m.moving = [{ id: 'cart', path: ['A', 'E'], axles: [{ at: 0, force: -1 }] }];
    });
    assert.equal(status, 0);
    assert.match(stdout, /\nmoving\[0\]\.path\[1\]: no member joins A and E: name the joints that the load passes/);
});
