// gusset form and gusset combine: a truss from its outline, combinations from what its cases stand for.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { answered, gusset, root } from './support.mjs';

const barn = 'tests/data/outlines/barn_roof.json';
const outline = JSON.parse(readFileSync(path.join(root, barn), 'utf8'));
const rowsOf = (table) => table.replace(/^\uFEFF/, '').trimEnd().split('\r\n').map((line) => line.split(','));
const without = (key) => {
    const { [key]: _, ...form } = outline.form;
    return JSON.stringify({ ...outline, form });
};

test('a barn roof of 24 m in 10 panels: its truss solves, and its supports carry what stands on it', () => {
    const model = answered(['form', barn]);
    const truss = JSON.parse(model);
    assert.equal(truss.title, outline.title);
    assert.deepEqual(truss.form, outline.form);
    assert.deepEqual(truss.cases, [
        { id: 'roofing', kind: 'permanent' }, { id: 'snow', kind: 'snow' }, { id: 'wind', kind: 'wind' },
    ]);
    // 0.8 kN/m² on 24 m and two overhangs of 0.6 m, 6 m apart.
    const snow = JSON.parse(answered(['solve', '-', '--json', '--case', 'snow'], model));
    const held = snow.reactions.reduce((sum, { fy }) => sum + fy, 0);
    assert.ok(Math.abs(held - 0.8 * 25.2 * 6) < 1e-9, `${held}`);
    assert.equal(answered(['form', '-'], model), model); // made anew from itself
});

test('the shares of the joints, as a table, add up to the load', () => {
    const [head, ...rows] = rowsOf(answered(['form', barn, '--shares']));
    assert.deepEqual(head, ['case', 'joint', 'on plan', 'along the slope', 'fx', 'fy']);
    assert.equal(rows.length, 3 * 13);
    const sum = (name, column) => rows.filter(([id]) => id === name)
        .reduce((all, row) => all + Number(row[column]), 0);
    assert.ok(Math.abs(sum('snow', 2) - 25.2) < 1e-4);
    assert.ok(Math.abs(sum('snow', 5) + 0.8 * 25.2 * 6) < 1e-3);
    assert.ok(Math.abs(sum('roofing', 3) * Math.cos(Math.PI / 9) - 25.2) < 1e-3); // a pitch of 20°
});

test('combinations from kinds that are typed, with those that govern no member told', () => {
    const roof = 'site/examples/garage_roof.json';
    const words = ['combine', roof, '--kinds', 'roofing=permanent,snow=snow'];
    const model = JSON.parse(answered(words));
    const leading = model.combinations.find(({ factors }) => factors.snow === 1.5 && factors.roofing === 1.35);
    assert.equal(leading.by, 'EN 1990:2002, 6.10');
    const [head, ...rows] = rowsOf(answered([...words, '--csv']));
    assert.deepEqual(head.slice(-1), ['governs a member']);
    assert.equal(rows.length, model.combinations.length);
    assert.ok(rows.some((row) => row.at(-1) === 'yes') && rows.some((row) => row.at(-1) === 'no'));
    const asce = JSON.parse(answered([...words, '--rule', 'asce-lrfd']));
    assert.ok(asce.combinations.some(({ factors }) => factors.roofing === 1.2 && factors.snow === 1.6));
});

test('what is wrong is said with its cure, and the exit status tells the kind', () => {
    const said = (words, input, status, sentence) => {
        const made = gusset(words, input);
        assert.equal(made.status, status, made.stderr);
        assert.match(made.stderr, sentence);
        assert.equal(made.stdout, '');
    };
    said(['form', 'site/examples/garage_roof.json'], '', 2, /not made from an outline/);
    said(['form', '-'], without('span'), 2, /form\.span/);
    said(['form', '-'], without('heel'), 2, /overhang needs some height/);
    said(['combine', 'site/examples/garage_roof.json'], '', 2, /give at least one a kind/);
    said(['combine', barn, '--rule', 'guess'], '', 3, /asce-lrfd/);
    said(['combine', barn, '--kinds', 'G=heavy'], '', 3, /imposed-a/);
});
