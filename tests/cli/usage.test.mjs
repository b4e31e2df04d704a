// Wrong use of the command line.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { gusset, gussetInNode } from './support.mjs';

test('without a command it says so on standard error and exits with 3', () => {
    const { status, stdout, stderr } = gusset([]);
    assert.equal(status, 3);
    assert.equal(stdout, '');
    assert.match(stderr, /^gusset: /);
});

test('in node it answers as it does natively', () => {
    assert.deepEqual(gussetInNode([]), gusset([]));
});
