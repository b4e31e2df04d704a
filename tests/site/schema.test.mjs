// The published JSON Schema and the reader of the command line agree on what a model is.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { test } from 'node:test';
import { gusset, root } from '../cli/support.mjs';

function validity(models, schema = 'model') {
    const { status, stdout, stderr } = spawnSync('python3', [path.join(root, 'tests/site/validate_models.py'), schema], {
        input: models.map((model) => JSON.stringify(model) + '\n').join(''),
        encoding: 'utf8',
    });
    assert.equal(status, 0, stderr);
    return stdout.trimEnd().split('\n');
}

function modelsIn(folder) {
    return readdirSync(path.join(root, folder))
        .filter((name) => name.endsWith('.json') && name !== 'index.json')
        .map((name) => JSON.parse(readFileSync(path.join(root, folder, name), 'utf8')));
}

const base = () => JSON.parse(readFileSync(path.join(root, 'site/examples/farm_bridge.json'), 'utf8'));

// Changes that the reader refuses for a reason that a schema can express.
const changes = {
    'no version': (m) => delete m.gusset,
    'a later version': (m) => (m.gusset = 2),
    'no members': (m) => delete m.members,
    'a joint without x': (m) => delete m.joints[0].x,
    'a label that is a number': (m) => (m.joints[0].id = 1),
    'an empty label': (m) => (m.joints[0].id = ''),
    'a long label': (m) => (m.joints[0].id = 'x'.repeat(41)),
    'a label with a line break': (m) => (m.joints[0].id = 'a\nb'),
    'a number too large': (m) => (m.joints[0].x = 1e101),
    'a member without end': (m) => delete m.members[0].b,
    'a support of no kind': (m) => (m.supports[0].kind = 'glue'),
    'a roller without direction': (m) => delete m.supports[1].reaction,
    'a settlement of the wrong form': (m) => (m.supports[0].settle = 5),
    'a unit that is none': (m) => (m.units.length = 'yd'),
    'a load of no kind': (m) => (m.loads[0] = { case: 'deck' }),
    'a load of two kinds': (m) => (m.loads[0].fy = -1),
    'self-weight that is not': (m) => (m.loads[1].selfWeight = false),
    'a chord of one joint': (m) => (m.loads[0].chord = ['A']),
    'a path through a joint twice': (m) => (m.moving[0].path = ['A', 'B', 'A']),
    'no stiffness': (m) => (m.materials[0].E = 0),
    'a shape without its thickness': (m) => delete m.sections[1].t,
    'a shape that is none': (m) => (m.sections[1].shape = 'girder'),
    'a factor that is text': (m) => (m.combinations[0].factors.dead = '1.35'),
    'an axle without place': (m) => delete m.moving[0].axles[0].at,
    'a moving load without a load': (m) => (m.moving[0].axles = []),
    'a load on a member without place': (m) => (m.loads[0] = { member: ['A', 'B'], fy: -1 }),
    'a load on three joints': (m) => (m.loads[0] = { member: ['A', 'B', 'D'], at: 1, fy: -1 }),
    'a load on a joint and a member': (m) =>
        (m.loads[0] = { joint: 'A', member: ['A', 'B'], at: 1, fy: -1, size: 1 }),
    'a uniform load of no length': (m) => (m.moving[0].uniform = { perLength: -4, length: 0 }),
    'half a digit': (m) => (m.class = { numbers: { digits: 2.5 } }),
    'moments of no sense': (m) => (m.class = { moments: 'left' }),
    'a formula that is none': (m) => (m.checks = { formula: 'Rankine' }),
    'a buckling length of nothing': (m) => (m.checks = { K: 0 }),
    'a factor that adds strength': (m) => (m.checks = { gammaM1: 0.9 }),
    'a slenderness below nothing': (m) => (m.checks = { tensionLimit: -1 }),
    'an exercise that is a list': (m) => (m.exercise = []),
    'a lesson that is a list': (m) => (m.lesson = []),
};

test('every example and every model of the link corpus is valid by the schema', () => {
    const models = [...modelsIn('site/examples'), ...modelsIn('tests/data/formats/links')];
    assert.ok(models.length >= 15);
    assert.deepEqual(validity(models), models.map(() => 'valid'));
});

test('what the reader refuses by its form, the schema refuses', () => {
    const models = Object.entries(changes).map(([name, change]) => {
        const model = base();
        change(model);
        assert.equal(gusset(['check', '-'], JSON.stringify(model)).status, 2, name);
        return model;
    });
    validity(models).forEach((line, i) => assert.match(line, /^invalid/, Object.keys(changes)[i]));
});

test('checks of members are allowed, and 0 is no limit', () => {
    const model = base();
    model.checks = { formula: 'AISC 360-16', safety: 'omega', K: 0.85, tensionLimit: 0, compressionLimit: 180 };
    assert.deepEqual(validity([model]), ['valid']);
    assert.equal(gusset(['check', '-'], JSON.stringify(model)).status, 0);
});

// Files of earlier versions may have such names, and open; nothing writes them any more.
test('names that show nothing, or hold what can not be seen, are no names to the schema', () => {
    const hidden = ['\u200b', ' ', 'A\u00ad', '\u202eA', 'A\uffff', '\u0301'];
    const named = (label) => ({ gusset: 1, joints: [{ id: label, x: 0, y: 0 }], members: [] });
    const titled = (title) => ({ gusset: 1, title, joints: [], members: [] });
    const bad = [...hidden.map(named), titled('roof\u202e'), titled('a\nb')];
    assert.deepEqual(validity(bad).filter((line) => !line.startsWith('invalid')), []);
    const good = [...['A', 'A 1', '桁', 'é', 'می\u200cخواهم'].map(named), titled(''), titled('Dachbinder 1')];
    assert.deepEqual(validity(good), good.map(() => 'valid'));
    for (const model of hidden.map(named)) {
        const { stdout } = gusset(['open', '-'], JSON.stringify(model));
        assert.deepEqual(validity([JSON.parse(stdout)]), ['valid']);
    }
});

test('unknown keys are allowed everywhere', () => {
    const model = base();
    model.checks = {};
    for (const thing of [model, model.units, model.checks, model.joints[0], model.members[0], model.supports[0],
        model.loads[0], model.materials[0], model.sections[0], model.moving[0].axles[0]]) {
        thing.remark = 'kept';
    }
    assert.deepEqual(validity([model]), ['valid']);
    assert.equal(gusset(['check', '-'], JSON.stringify(model)).status, 0);
});

// Changes to answers that gusset mark refuses for a reason that a schema can express.
const answerChanges = {
    'no version': (a) => delete a.gussetAnswers,
    'no exercise': (a) => delete a.exercise,
    'a size below nothing': (a) => (a.reactions[1].size = -36),
    'a sign that is none': (a) => (a.reactions[1].sign = 'up'),
    'a sense that is none': (a) => (a.forces[0].sense = 'tension'),
    'a force of nothing': (a) => delete a.forces[0].of,
    'an equation that is text': (a) => (a.equations[0] = 'ΣF = 0'),
    'a sum that is none': (a) => (a.equations[0].sum = 'z'),
    'moments about nothing': (a) => delete a.equations[1].about,
    'a cut without a part': (a) => delete a.equations[1].part,
    'a term with two signs': (a) => (a.equations[0].terms[0].sign = '+-'),
    'a term times a tangent': (a) => (a.equations[0].terms[1].by = 'tangent'),
    'an arm below nothing': (a) => (a.equations[1].terms[0].arm = -8),
};

test('answers with equations are what their schema says, and what it refuses is not marked', () => {
    const answers = () => JSON.parse(readFileSync(path.join(root, 'tests/data/classroom/answers.json'), 'utf8'));
    const key = gusset(['exercise', 'site/examples/footbridge.json', '--ask', 'reactions,forces']).stdout;
    const folder = mkdtempSync(path.join(tmpdir(), 'gusset-'));
    const marked = (sheet) => {
        const file = path.join(folder, 'answers.json');
        writeFileSync(file, JSON.stringify(sheet));
        return gusset(['mark', '-', file], key);
    };
    assert.deepEqual(validity([answers()], 'answers'), ['valid']);
    assert.match(marked(answers()).stdout, /^7HQ2M,/m);
    const changed = Object.values(answerChanges).map((change) => {
        const sheet = answers();
        change(sheet);
        return sheet;
    });
    validity(changed, 'answers').forEach((line, i) => assert.match(line, /^invalid/, Object.keys(answerChanges)[i]));
    changed.forEach((sheet, i) => {
        const { status, stdout, stderr } = marked(sheet);
        assert.doesNotMatch(stdout, /^7HQ2M,/m, Object.keys(answerChanges)[i]);
        assert.ok(status === 2 && stderr !== '', Object.keys(answerChanges)[i]);
    });
    rmSync(folder, { recursive: true });
});
