// The golden files and links of tests/data/formats cover the format: adding to them is part of changing it.
import assert from 'node:assert/strict';
import fs from 'node:fs';
import path from 'node:path';
import test from 'node:test';

const root = path.resolve(import.meta.dirname ?? path.dirname(new URL(import.meta.url).pathname), '../..');
const folder = path.join(root, 'tests/data/formats');
const read = (...name) => fs.readFileSync(path.join(...name), 'utf8');
const forms = read(folder, 'list.txt').trim().split('\n');

// Every key that the schema describes, with its place: "loads[].fx", "class.numbers.sign".
function keysOf(schema) {
    const found = new Set();
    const visit = (node, at) => {
        if (node === null || typeof node !== 'object') {
            return;
        }
        if (Array.isArray(node)) {
            node.forEach((item) => visit(item, at));
            return;
        }
        if (node.$ref) {
            visit(schema.$defs[node.$ref.replace('#/$defs/', '')], at);
        }
        for (const [key, value] of Object.entries(node.properties ?? {})) {
            if (value !== false) {
                found.add(at + key);
                visit(value, at + key + '.');
            }
        }
        visit(node.items, at.replace(/\.$/, '[].'));
        for (const several of ['oneOf', 'anyOf', 'allOf', 'then']) {
            visit(node[several], at);
        }
    };
    visit(schema, '');
    return found;
}

function keysIn(value, at, found) {
    if (Array.isArray(value)) {
        value.forEach((item) => keysIn(item, at.replace(/\.$/, '[].'), found));
    } else if (value !== null && typeof value === 'object') {
        for (const [key, item] of Object.entries(value)) {
            found.add(at + key);
            keysIn(item, at + key + '.', found);
        }
    }
    return found;
}

test('every key of the schema stands in a golden file', () => {
    const schema = JSON.parse(read(root, 'site/schema/model.schema.json'));
    const golden = new Set();
    for (const form of forms) {
        keysIn(JSON.parse(read(folder, form, 'file.json')), '', golden);
    }
    const described = keysOf(schema);
    assert.ok(described.has('class.numbers.sign') && described.has('loads[].at') && described.has('supports[].settle.x'));
    assert.ok(described.has('moving[].axles[].force') && described.has('sections[].D') && described.size > 60);
    assert.deepEqual([...described].filter((key) => !golden.has(key)), []);
});

test('a key that no golden file has is missed', () => {
    const schema = JSON.parse(read(root, 'site/schema/model.schema.json'));
    schema.$defs.member.properties.colourOfPaint = { type: 'string' };
    assert.ok(keysOf(schema).has('members[].colourOfPaint'));
});

test('the list names every folder, and each holds a file, a link and what they open to', () => {
    const folders = fs.readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isDirectory());
    assert.deepEqual(folders.map((entry) => entry.name).filter((name) => name !== 'links').sort(), [...forms].sort());
    for (const form of forms) {
        assert.deepEqual(fs.readdirSync(path.join(folder, form)).sort(), ['file.json', 'link.txt', 'model.json']);
        assert.ok(read(folder, 'README.md').includes(`\`${form}\``));
    }
});

test('the schema tells the versions, one for each golden folder', () => {
    const told = JSON.parse(read(root, 'site/schema/model.schema.json')).$comment;
    const newest = Math.max(...forms.map((form) => parseInt(form)));
    for (let i = 1; i <= newest; ++i) {
        assert.ok(told.includes(`(${i}) `), `(${i})`);
    }
});
