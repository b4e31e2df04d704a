// Drawings in and out: trace makes a model of lines or of a table, draw writes centre lines.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { answered, gusset, gussetInNode, root } from './support.mjs';

const footbridge = 'site/examples/footbridge.json';

const line = (x1, y1, x2, y2, layer = '0') =>
    `0\nLINE\n8\n${layer}\n10\n${x1}\n20\n${y1}\n11\n${x2}\n21\n${y2}\n`;
const dxf = (...entities) => `0\nSECTION\n2\nENTITIES\n${entities.join('')}0\nENDSEC\n0\nEOF\n`;
// 24 m wide and 4.5 m high, in millimetres; the post ends on the tie.
const roof = dxf(
    line(0, 0, 24000, 0, 'STEEL'), line(0, 0, 12000, 4500, 'STEEL'), line(12000, 4500, 24000, 0, 'STEEL'),
    line(12000, 0, 12000, 4500, 'STEEL'), line(-5000, 0, -5000, 9000, 'GRID'));

const traced = (text, ...options) => {
    const { status, stdout, stderr } = gusset(['trace', '-', ...options], text);
    assert.equal(status, 0, stderr);
    return { model: JSON.parse(stdout), notes: stderr };
};

test('a DXF in millimetres becomes a model in metres, and what was decided is said', () => {
    const { model, notes } = traced(roof, '--unit', 'mm', '--layers', 'steel');
    assert.deepEqual(model.joints, [
        { id: 'A', x: 0, y: 0 }, { id: 'B', x: 12, y: 0 }, { id: 'C', x: 12, y: 4.5 }, { id: 'D', x: 24, y: 0 },
    ]);
    assert.equal(model.members.length, 5);
    assert.match(notes, /layer "GRID": was not chosen, so that lines are left out: 1/);
    assert.match(notes, /the line from joint A to joint D passes joint B and is divided there/);
    assert.match(notes, /ends within 24 of each other/);
    assert.match(notes, /says nothing of supports/);
    for (const each of notes.trimEnd().split('\n')) {
        assert.match(each, /^\S.{10,}$/, 'a sentence on each line');
    }
});

test('without a unit, metres are taken and 24,000 m are doubted', () => {
    const { notes } = traced(roof);
    assert.match(notes, /does not say its unit: m is taken/);
    assert.match(notes, /the truss would be 29000 m across/);
    assert.match(notes, /member AB at .* touches no other/);
});

test('a typed tolerance and a typed width are kept to', () => {
    const { notes } = traced(roof, '--tolerance', '5', '--layers', 'STEEL');
    assert.match(notes, /ends within 5 of each other in the drawing's unit make one joint, as typed/);
    const svg = '<svg><path d="M0 300H400L200 100z"/></svg>';
    const { model } = traced(svg, '--width', '10');
    assert.deepEqual(model.joints.map(({ x, y }) => [x, y]), [[0, 0], [5, 5], [10, 0]]);
});

test('a table with semicolons and decimal commas becomes a model', () => {
    const { model } = traced('joint;x;y\nA;0;0\nB;4;0\nC;2;1,5\na;b\nA;B\nB;C\nA;C\n');
    assert.equal(model.joints[2].y, 1.5);
    assert.equal(model.members.length, 3);
});

test('the examples of the site are drawn as DXF and as tables, and traced back to the same joints and members', () => {
    const names = readdirSync(path.join(root, 'site/examples')).filter((name) => name.endsWith('.json') && name !== 'index.json');
    assert.ok(names.length > 5);
    let count = 0;
    for (const name of names) {
        const file = `site/examples/${name}`;
        const given = JSON.parse(readFileSync(path.join(root, file), 'utf8'));
        const places = (model) => model.joints.map(({ x, y }) => `${x} ${y}`).sort();
        const ends = (model) => {
            const at = Object.fromEntries(model.joints.map(({ id, x, y }) => [id, `${x} ${y}`]));
            return model.members.map(({ a, b }) => [at[a], at[b]].sort().join(' to ')).sort();
        };
        for (const form of ['--dxf', '--csv']) {
            const { model } = traced(answered(['lines', file, form]));
            assert.deepEqual(places(model), places(given), `${name} ${form}`);
            assert.deepEqual(ends(model), ends(given), `${name} ${form}`);
            count += 1;
        }
    }
    console.log(`${count} drawings of ${names.length} examples traced back alike`);
});

test('the table of the report is read as well', () => {
    const given = JSON.parse(readFileSync(path.join(root, footbridge), 'utf8'));
    const { model } = traced(answered(['report', footbridge, '--csv', '--parts', 'model']));
    assert.equal(model.joints.length, given.joints.length);
    assert.equal(model.members.length, given.members.length);
});

test('what can’t be traced is said with status 2, wrong use with status 3', () => {
    const cases = [
        [['trace', '-'], '', 2, /is empty: give a DXF/],
        [['trace', '-'], dxf('0\nARC\n8\n0\n'), 2, /no straight lines/],
        [['trace', '-'], '0\nSECTION\n2\nENTITIES\nx\n', 2, /line 5: "x" stands where a group code belongs/],
        [['trace', 'no_such.dxf'], '', 2, /no such file/],
        [['trace', '-', '--layers', 'X'], roof, 2, /has no layer "X": it has STEEL, GRID/],
        [['trace', '-', '--unit', 'furlong'], roof, 3, /no unit of length/],
        [['trace', '-', '--tolerance', '-1'], roof, 3, /not negative/],
        [['trace', '-', '--width', '0'], roof, 3, /greater than zero/],
        [['trace', '-', '--tolerance', 'much'], roof, 3, /--tolerance/],
        [['lines', footbridge, '--csv', '--unit', 'mm'], '', 3, /goes with --dxf/],
        [['lines', footbridge, '--csv', '--dxf'], '', 3, /--csv/],
    ];
    for (const [words, input, exit, says] of cases) {
        const { status, stdout, stderr } = gusset(words, input);
        assert.equal(status, exit, `${words.join(' ')}: ${stderr}`);
        assert.equal(stdout, '');
        assert.match(stderr, says);
    }
});

test('in node drawings are traced and written to the same digit', () => {
    assert.deepEqual(gussetInNode(['lines', footbridge]), gusset(['lines', footbridge]));
    assert.deepEqual(gussetInNode(['trace', '-'], roof), gusset(['trace', '-'], roof));
});
