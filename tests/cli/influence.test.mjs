// Influence lines and envelopes on the command line, in every output format.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { answered, root } from './support.mjs';

const cases = 'tests/published/cases';

// What the source of a published case prints: the path, and one ordinate per joint.
function published(name) {
    const text = readFileSync(path.join(root, cases, `${name}.txt`), 'utf8');
    const rows = text.trimEnd().split('\n').map((row) => row.split(' '));
    const lines = rows.filter(([what]) => what === 'influence');
    return {
        path: rows.find(([what]) => what === 'path').slice(1),
        of: lines[0]?.[1],
        ordinates: lines.map(([, , , value]) => Number(value)),
        rows,
    };
}

const influence = (name, along, of, form) =>
    answered(['influence', `${cases}/${name}.json`, '--path', along.join(','), '--of', of, form]);

for (const name of ['IL-02', 'IL-03']) {
    const source = published(name);

    test(`${name}: the ordinates as CSV are the published ones`, () => {
        const lines = influence(name, source.path, source.of, '--csv').trimEnd().split('\r\n');
        assert.equal(lines.shift(), '\ufeffjoint,at,ordinate');
        assert.deepEqual(lines.map((line) => line.split(',')[0]), source.path);
        lines.forEach((line, i) => {
            assert.ok(Math.abs(Number(line.split(',')[2]) - source.ordinates[i]) < 1e-9, line);
        });
    });

    test(`${name}: the text has the published ordinates to four decimals, and as fractions`, () => {
        const rows = influence(name, source.path, source.of, '--text').split('\n').slice(2);
        source.ordinates.forEach((ordinate, i) => {
            const [joint, , decimal, exact] = rows[i].trim().split(/\s+/);
            assert.equal(joint, source.path[i]);
            assert.ok(Math.abs(Number(decimal) - ordinate) <= 0.5e-4, rows[i]);
            const [above, below = '1'] = exact.split('/');
            assert.ok(Math.abs(Number(above) / Number(below) - ordinate) < 1e-9, rows[i]);
        });
    });

    test(`${name}: the drawing is SVG, and names every joint of the path and the largest ordinate`, () => {
        const svg = influence(name, source.path, source.of, '--svg');
        assert.match(svg, /^<svg xmlns="http:\/\/www.w3.org\/2000\/svg" viewBox="0 0 640 /);
        source.path.forEach((joint) => assert.ok(svg.includes(`>${joint}</tspan>`), joint));
        const largest = String(Number(Math.max(...source.ordinates).toFixed(4)));
        assert.ok(svg.includes(`>+${largest}</tspan>`), largest);
    });
}

test('ML-01: the largest reaction under the lorry is the published one, in JSON and in text', () => {
    const { path: along, rows } = published('ML-01');
    const [, of, value, , within] = rows.find(([what]) => what === 'moving-max');
    const { moving } = JSON.parse(influence('ML-01', along, of, '--json'));
    assert.ok(Math.abs(moving[0].largest.value - Number(value)) <= Number(within));
    const told = /truck: ([\d.]+)\skip/.exec(influence('ML-01', along, of, '--text'));
    assert.ok(Math.abs(Number(told[1]) - Number(value)) <= Number(within), told[0]);
});

test('a reaction that no load on the path changes is told as such, and drawn without an area', () => {
    const along = ['A', 'B', 'C', 'D', 'E'];
    assert.match(influence('IL-02', along, 'reaction:A:x', '--text'), /zero wherever the load stands/);
    assert.doesNotMatch(influence('IL-02', along, 'reaction:A:x', '--svg'), /fill-opacity/);
});

test('a displacement along the path comes in units of displacement per unit of force', () => {
    // Two bars of EA = 2e5 · 1000 N at 45° carry 1 kN at their joint C: each shortens by
    // N·L/EA = (1000/√2)·(√2·2000)/2e8 = 0.01 mm, and C sinks by √2 times that, 0.014142 mm.
    const model = {
        gusset: 1,
        joints: [{ id: 'A', x: 0, y: 0 }, { id: 'B', x: 4, y: 0 }, { id: 'C', x: 2, y: 2 }],
        materials: [{ id: 'm', E: 200000 }],
        sections: [{ id: 's', material: 'm', A: 1000 }],
        members: [{ a: 'A', b: 'C', section: 's' }, { a: 'C', b: 'B', section: 's' }],
        supports: [{ joint: 'A', kind: 'pin' }, { joint: 'B', kind: 'pin' }],
    };
    const words = ['influence', '-', '--path', 'A,C,B', '--of', 'displacement:C:y', '--text'];
    const text = answered(words, JSON.stringify(model));
    assert.match(text, /the displacement of C upwards/);
    assert.match(text, /ordinate, mm\/kN/);
    assert.match(text, /\n {2}C +2 +−0\.01414\n/);
});

// garage_roof by hand: AB carries 10 under the roofing and 15 under snow; `winter` takes 1.35 and 1.5
// times these, 36.
test('an envelope over combinations has the greatest of every member, in each form', () => {
    const words = ['envelope', 'site/examples/garage_roof.json'];
    const json = JSON.parse(answered([...words, '--json']));
    assert.equal(json.members[0].tension, 36);
    assert.equal(json.members[0].tensionCombination, 'winter');
    const csv = answered([...words, '--csv']).split('\r\n');
    assert.equal(csv[0], '\ufeffmember,tension,by,compression,by');
    assert.match(csv[1], /^AB,36,winter,0,/);
    const text = answered([...words, '--text']);
    assert.match(text, /^Greatest tension and compression of each member\n/);
    assert.match(text, /\n {2}AB +36\.00 +winter +0\n/);
    assert.equal(text.trimEnd().split('\n').length, 2 + json.members.length);
});
