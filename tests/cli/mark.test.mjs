// Answers of a class, marked on the command line.
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { test } from 'node:test';
import { gusset } from './support.mjs';

// 72 kN in the middle three joints of the footbridge: reactions of 36 kN, slopes 3 in 4, so that
// AC = −36 · 5/3 = −60 kN and AB = 60 · 4/5 = 48 kN.
const key = gusset(['exercise', 'site/examples/footbridge.json', '--ask', 'reactions,forces']).stdout;
const heads = 'Code,A_x,A_y,H_y,AB,BD,DF,FH,CE,EG,BC,DE,FG,AC,CD,DG,GH';
const right = '0,36,36,48,48,48,48,-64,-64,24,0,24,-60,20,20,-60';

// Marks a table that stands in a file of its own, with the key as standard input.
function marked(table, ...more) {
    const folder = mkdtempSync(path.join(os.tmpdir(), 'mark-'));
    const file = path.join(folder, 'class.csv');
    writeFileSync(file, table);
    const result = gusset(['mark', '-', file, ...more], key);
    rmSync(folder, { recursive: true });
    return result;
}
const rowsOf = (stdout) => stdout.replace('\ufeff', '').split('\r\n');

test('a right sheet has all marks, and no feedback', () => {
    const { status, stdout, stderr } = marked(`${heads}\nZQ1,${right}\n`);
    assert.equal(stderr, '');
    assert.equal(status, 0);
    assert.equal(rowsOf(stdout)[0], 'code,marks,of,slips,feedback');
    assert.equal(rowsOf(stdout)[1], 'ZQ1,32,32,,'); // 16 answers of two marks
});

test('one wrong reaction is marked once, and what follows from it is not', () => {
    // A_y = 30 kN: AC = −50, AB = BD = 40, CD = 10, CE = EG = −48, DG = 30, DF = FH = 24,
    // GH = −70, and H_y = 72 − 30 = 42 kN from the sum of upright forces.
    const { stdout } = marked(`${heads}\nZQ1,0,30,42,40,40,24,24,-48,-48,24,0,24,-50,10,30,-70\n`);
    const row = rowsOf(stdout)[1];
    assert.match(row, /^ZQ1,31,32,not recognised,/); // one mark of one answer
    // 24 · (3 + 6 + 9) + 42 · 12 … the sum of moments holds A_y about H: A_y · 12 = 24 · (9 + 6 + 3).
    assert.match(row, /A_y = 30\skN: a slip at the whole truss\. With your other values ΣM_H.* = 0, which gives 36\skN/);
    assert.match(row, /AC = −50\skN follows from your own earlier values/);
});

test('tension for compression is named', () => {
    const { stdout } = marked(`${heads}\nZQ1,${right.replace('-60,20', '60 T,20')}\n`);
    assert.match(rowsOf(stdout)[1], /^ZQ1,31,32,"?right size, but tension for compression/);
});

test('commas, dashes, arrows, units, semicolons, tabs and a byte order mark are read', () => {
    const cells = ['0', '↑ 36', '36,0 kN', '48 T', '48kN T', '48.0', '48', '64 C', '−64', '24',
        '0', '0,024 MN', '60 C', '20', '20', '–60 kN'];
    for (const between of [';', '\t']) {
        const table = `\ufeff${heads.replaceAll(',', between)}\r\nZQ1${between}${cells.join(between)}\r\n`;
        const { stdout, stderr } = marked(table);
        assert.equal(stderr, '');
        assert.equal(rowsOf(stdout)[1], 'ZQ1,32,32,,');
    }
});

test('what is wrong with a row is said with the row, and the others are marked', () => {
    const table = [`${heads},AZ,variant,exercise`, `ZQ1,${right},5,,`, `ZQ2,${right},,9,`, `ZQ3,${right},,,00000000`,
        `ZQ1,${right},5,,`, `ZQ1,0,35,${right.slice(5)},,,`, `ZQ5,=1+1${right.slice(1)},,,`, 'ZQ6', ''].join('\n');
    const { status, stdout, stderr } = marked(table);
    assert.equal(status, 0);
    assert.match(stderr, /column "AZ": the truss has no such member or reaction/);
    assert.match(stderr, /row 3: this sheet is for another exercise or variant/);
    assert.match(stderr, /row 4: this sheet is for another exercise or variant/);
    assert.match(stderr, /row 5: the same as row 2/);
    assert.match(stderr, /row 6: "ZQ1" is in row 2 too/);
    assert.match(stderr, /row 7, column "A_x": "=1\+1" is no force/);
    assert.match(stderr, /row 8: no answers/);
    const rows = rowsOf(stdout);
    assert.deepEqual(rows.slice(1, 5).map((row) => row.split(',')[0]), ['ZQ1', 'ZQ1', 'ZQ5', 'ZQ6']);
    assert.equal(rows[1], 'ZQ1,32,32,,');
});

test('no cell that goes out is run as a formula', () => {
    const { stdout } = marked(`${heads}\n=HYPERLINK("x"),${right}\n@A,${right}\n`.replace('=HYPERLINK("x")', '"=HYPERLINK(""x"")"'));
    for (const row of rowsOf(stdout)) {
        assert.doesNotMatch(row, /^"?[=+@-]/);
    }
    assert.ok(stdout.includes(`"'=HYPERLINK(""x"")"`));
});

test('the slips of the class are counted, as a table and as text', () => {
    const wrong = right.replace('-60,20', '60,20');
    const table = `${heads}\na,${wrong}\nb,${wrong}\nc,${right}\n`;
    assert.match(marked(table).stdout, /slip,times\r\n"right size, but tension for compression",2\r\n/);
    assert.match(marked(table, '--text').stdout, /Slips of the class\n {2}2 × right size, but tension for compression\n/);
});

test('a table without answers is refused, with the place', () => {
    for (const table of ['', 'name,mark\nx,2\n']) {
        const { status, stdout, stderr } = marked(table);
        assert.equal(status, 2);
        assert.equal(stdout, '');
        assert.match(stderr, /row 1: /);
    }
    assert.equal(gusset(['mark', '-']).status, 3);
});

test('a class of a thousand is marked row by row', () => {
    const rows = Array.from({ length: 1000 }, (_, i) => `S${i},${right}`);
    const { stdout } = marked([heads, ...rows].join('\n'));
    assert.equal(rowsOf(stdout).filter((row) => /^S\d+,32,32,,$/.test(row)).length, 1000);
});

test('links that students handed in are marked, one a line, and a broken one is said with its row', () => {
    // Made by the page of exercises for a blank sheet with A_x = 0 and A_y = 36 kN upward.
    const link = 'a=1.YqsGpktgsixxzCsuB6dJQx0lRAmoZGmRZmZikWQMTvMpIJGoQHOQ91ITkcqR_DRQkreqAKfgqlRwSQdKykBRAyVQzoYqqIQrMDaDq9AGugJaBIJMA7LLEnNKwWxwwIGI2FoA.132.1cru6';
    const { status, stdout, stderr } = marked(`https://example.org/exercise/#${link}\n\n#a=1.broken.6.x\n`);
    assert.equal(status, 0);
    assert.match(rowsOf(stdout)[1], /^ZQ7,4,32,/);
    assert.match(stderr, /row 3/);
});
