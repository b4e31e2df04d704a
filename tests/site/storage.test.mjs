// What the page stores of a board, tested without a browser.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { modelOf } from '../../site/storage.js';

test('the model of a kept board is found, however many settings stand before it', () => {
    for (const count of [0, 1, 59, 60, 61, 500]) {
        const settings = Array.from({ length: count }, (_, i) => `order.${i} 0`);
        const text = ['gusset-session 1 40 0', ...settings, 'model 15 ', '{"title":"Shed"}', 'past 2 x', '{}', ''];
        assert.equal(JSON.parse(modelOf(text.join('\n'))).title, 'Shed', `${count} settings`);
    }
});

test('a text that holds no model has none', () => {
    assert.equal(modelOf(''), '');
    assert.throws(() => JSON.parse(modelOf('gusset-session 1 0 0\nsnap 1\n')));
});
