// The core prints the same to the last digit natively and as WebAssembly.
import assert from 'node:assert/strict';
import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { gusset, gussetInNode, root } from './support.mjs';

function modelsIn(folder) {
    const whole = path.join(root, folder);
    const names = existsSync(whole) ? readdirSync(whole) : [];
    return names.filter((name) => name.endsWith('.json')).map((name) => path.join(folder, name));
}

const models = [...modelsIn('site/examples').filter((name) => !name.endsWith('index.json')), ...modelsIn('tests/published/cases')];

test('there are models to compare', () => {
    assert.ok(models.length >= 30, `${models.length} models`);
});

for (const model of models) {
    test(`${model} has the same results and the same link in both`, () => {
        const solve = ['solve', model, '--json'];
        const native = gusset(solve);
        assert.notEqual(native.stdout, '');
        assert.deepEqual(gussetInNode(solve), native);
        assert.deepEqual(gussetInNode(['link', model]), gusset(['link', model]));
    });
}
