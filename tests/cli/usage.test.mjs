// Wrong use of the command line: exit status 3, what is wrong in the first line, and the usage.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { gusset, gussetInNode } from './support.mjs';

const footbridge = 'site/examples/footbridge.json';

const misuses = {
    'no command': [],
    'an unknown command': ['solv', footbridge],
    'no file': ['solve'],
    'two files': ['solve', footbridge, footbridge],
    'an unknown option': ['solve', footbridge, '--fast'],
    'an option of another command': ['link', footbridge, '--json'],
    'two forms at once': ['solve', footbridge, '--json', '--csv'],
    'an option twice': ['solve', footbridge, '--json', '--json'],
    'a case and a combination': ['solve', footbridge, '--case', 'a', '--combination', 'b'],
    'an option without its value': ['solve', footbridge, '--case'],
    'a value where none belongs': ['solve', footbridge, '--json=yes'],
};

for (const [name, words] of Object.entries(misuses)) {
    test(`${name}: said on standard error, exit status 3`, () => {
        const { status, stdout, stderr } = gusset(words);
        assert.equal(status, 3);
        assert.equal(stdout, '');
        assert.match(stderr, /^gusset: .+\.\nUsage:\n/);
    });
}

test('--help shows the usage', () => {
    const { status, stdout, stderr } = gusset(['--help']);
    assert.equal(status, 0);
    assert.equal(stderr, '');
    assert.match(stdout, /gusset solve FILE/);
});

test('in node it answers as it does natively', () => {
    assert.deepEqual(gussetInNode([]), gusset([]));
});
