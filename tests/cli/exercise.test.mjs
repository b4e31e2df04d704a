// Questions for students, made on the command line.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { gusset } from './support.mjs';

const bridge = 'site/examples/footbridge.json';

test('a question is put into the model, which is otherwise the same', () => {
    const { status, stdout } = gusset(['exercise', bridge, '--ask', 'reactions,forces', '--members', 'A-C,C-E',
        '--within', '2', '--hints', 'bodies', '--says', 'Find them.']);
    assert.equal(status, 0);
    const model = JSON.parse(stdout);
    assert.deepEqual(model.exercise, { text: 'Find them.',
        ask: [{ what: 'reactions' }, { what: 'forces', members: [['A', 'C'], ['C', 'E']] }],
        tolerance: { percent: 2, floor: 0.1 }, hints: 'bodies', checks: 'at-once' });
    delete model.exercise;
    const plain = JSON.parse(gusset(['open', bridge]).stdout);
    assert.deepEqual(model, plain);
});

test('a link for students leads to the page of exercises', () => {
    const { stdout } = gusset(['exercise', bridge, '--address', 'https://example.org/']);
    assert.match(stdout, /^https:\/\/example\.org\/exercise\/#x=1\.\S+\n$/);
    const opened = JSON.parse(gusset(['open', stdout.trim()]).stdout);
    assert.deepEqual(opened.exercise.ask, [{ what: 'reactions' }, { what: 'forces' }]);
});

test('what can’t be asked is refused with its cure', () => {
    for (const [words, says] of [
        [['--ask', 'weight'], 'takes some of reactions'],
        [['--ask', 'displacement:C:y'], 'E and A'],
        [['--ask', 'displacement:Q:y'], 'is no displacement'],
        [['--members', 'A-Q'], 'is no member'],
        [['--hints', 'all'], 'is one of none'],
        [['--within', 'much'], 'takes a number'],
        [['--ask', 'forces,forces'], 'asked twice'],
        [['--case', 'snow'], '"snow"'],
    ]) {
        const { status, stdout, stderr } = gusset(['exercise', bridge, ...words]);
        assert.equal(status, 2, words.join(' '));
        assert.equal(stdout, '');
        assert.ok(stderr.includes(says), stderr);
    }
});
