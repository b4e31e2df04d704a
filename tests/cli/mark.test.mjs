// Answers of a class, marked on the command line.
import assert from 'node:assert/strict';
import { appendFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
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
// Does something in a folder of its own, which then goes.
function inFolder(work) {
    const folder = mkdtempSync(path.join(os.tmpdir(), 'course-'));
    try {
        return work(folder);
    } finally {
        rmSync(folder, { recursive: true });
    }
}
const rowsOf = (stdout) => stdout.replace('\ufeff', '').split('\r\n');

test('a right sheet has all marks, and no feedback', () => {
    const { status, stdout, stderr } = marked(`${heads}\nZQ1,${right}\n`);
    assert.equal(stderr, '');
    assert.equal(status, 0);
    assert.equal(rowsOf(stdout)[0], 'code,marks,of,slips,feedback');
    assert.equal(rowsOf(stdout)[1], 'ZQ1,32,32,,'); // 16 answers of two marks
});

test('one wrong reaction is marked once, with its equation, and what follows from it is not', () => {
    // A_y = 33 kN: AC = −33 · 5/3 = −55, AB = BD = 44, CD = (33 − 24) · 5/3 = 15,
    // CE = EG = −(33 · 8 − 24 · 4)/3 = −56, DG = (24 − 9) · 5/3 = 25, DF = FH = 44 + 12 − 20 = 36,
    // and H_y = 72 − 33 = 39 kN from the sum of upright forces, GH = −39 · 5/3 = −65.
    const { stdout } = marked(`${heads}\nZQ1,0,33,39,44,44,36,36,-56,-56,24,0,24,-55,15,25,-65\n`);
    const row = rowsOf(stdout)[1];
    assert.match(row, /^ZQ1,31,32,not recognised,/); // one mark of one answer
    // About H: A_y · 16 = 24 · (12 + 8 + 4).
    assert.match(row, /A_y = 33\skN: a slip at the whole truss\. With your other values [^.]*ΣM_H = 0: [^.]*A_y[^.]* = 0, which gives 36\skN/);
    assert.match(row, /AC = −55\skN follows from your own earlier values/);
});

test('a load left out of a sum is named', () => {
    // Without the load on F: A_y · 16 = 24 · (12 + 8) = 480, A_y = 30.
    const { stdout } = marked(`${heads}\nZQ1,0,30,42,40,40,24,24,-48,-48,24,0,24,-50,10,30,-70\n`);
    assert.match(rowsOf(stdout)[1], /^ZQ1,30,32,a force left out,/); // the method too
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
    assert.match(stderr, /column "AZ": the exercise has no such member, reaction or value/);
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

test('a link that was handed in is marked where a file could be named', () => {
    const link = 'https://example.org/exercise/#a=1.YqsGpktgsixxzCsuB6dJQx0lRAmoZGmRZmZikWQMTvMpIJGoQHOQ91ITkcqR_DRQkreqAKfgqlRwSQdKykBRAyVQzoYqqIQrMDaDq9AGugJaBIJMA7LLEnNKwWxwwIGI2FoA.132.1cru6';
    const { stdout, stderr } = gusset(['mark', '-', link], key);
    assert.doesNotMatch(stderr, /no such file/);
    // What the same link in a file gives.
    const filed = marked(`${link}\n`);
    assert.equal(stdout, filed.stdout);
});

test('links that students handed in are marked, one a line, and a broken one is said with its row', () => {
    // Made by the page of exercises for a blank sheet with A_x = 0 and A_y = 36 kN upward.
    const link = 'a=1.YqsGpktgsixxzCsuB6dJQx0lRAmoZGmRZmZikWQMTvMpIJGoQHOQ91ITkcqR_DRQkreqAKfgqlRwSQdKykBRAyVQzoYqqIQrMDaDq9AGugJaBIJMA7LLEnNKwWxwwIGI2FoA.132.1cru6';
    const { status, stdout, stderr } = marked(`https://example.org/exercise/#${link}\n\n#a=1.broken.6.x\n`);
    assert.equal(status, 0);
    assert.match(rowsOf(stdout)[1], /^ZQ7,4,32,/);
    assert.match(stderr, /row 3/);
});

// Of the footbridge only DE carries nothing: E has no load, and CE and EG are in line.
const others = gusset(['exercise', 'site/examples/footbridge.json', '--ask', 'zero,determinacy,steps']).stdout;

test('zero members and the degree of indeterminacy stand in class tables too; steps are marked by hand', () => {
    inFolder((folder) => {
        const file = path.join(folder, 'class.csv');
        writeFileSync(file, 'Code,zero,degree\na,DE,0\nb,"D-E, BC",1\nc,XY; E-D,0.5\nd,,\n');
        const { stdout, stderr } = gusset(['mark', '-', file], others);
        const rows = rowsOf(stdout);
        assert.match(rows[1], /^a,2,2,,"?The steps are marked by hand/);
        assert.match(rows[2], /^b,0,2,/); // one right, one wrong; and not determinate
        assert.match(rows[3], /^c,1,2,/);
        assert.match(stderr, /row 4, column "zero": "XY" is no member of the truss/);
        assert.match(stderr, /row 4, column "degree": "0\.5" is no degree of indeterminacy/);
        assert.match(stderr, /row 5: no answers/);
    });
});

test('a displacement and an influence ordinate are marked in class tables, with a unit or none', () => {
    const model = JSON.parse(readFileSync(new URL('../../site/examples/footbridge.json', import.meta.url), 'utf8'));
    model.materials = [{ id: 'steel', E: 210000 }];
    model.sections = [{ id: 'all', material: 'steel', A: 1000 }];
    model.members.forEach((member) => { member.section = 'all'; });
    model.exercise = { ask: [{ what: 'displacement', joint: 'D', axis: 'y' },
        { what: 'influence', path: ['A', 'B', 'D', 'F', 'H'], member: ['C', 'E'], at: 'D' }] };
    const down = JSON.parse(gusset(['solve', '-', '--json'], JSON.stringify(model)).stdout)
        .joints.find((joint) => joint.id === 'D').uy;
    inFolder((folder) => {
        const file = path.join(folder, 'class.tsv');
        // 1 down at D, the middle of 16 m: CE = −(1/2 · 8)/3 = −1.333 about D, 3 m below it.
        const inMetres = String(down / 1000).replace('.', ',');
        writeFileSync(file, `Code\tQ1\tQ2\na\t${down} mm\t−1.333\nb\t${inMetres} m\t1.333\nc\tsome\t-1,333\n`);
        const { stdout, stderr } = gusset(['mark', '-', file], JSON.stringify(model));
        assert.deepEqual(rowsOf(stdout).slice(1, 4), ['a,4,4,,',
            'b,2,4,,The ordinate at D of the influence line is wrong: 0 of 2 marks.',
            'c,2,4,,The displacement of joint D: no value is given.']);
        assert.match(stderr, /row 4, column "Q1": "some" is no value/);
    });
});

test('a sense of the wrong kind and a quote that is never closed lose nothing else', () => {
    const { stdout, stderr } = marked(`${heads}\nZQ1,0,36 T${right.slice(4)}\n"ZQ2,${right}\nZQ3,0,36,00${right.slice(4)}\n`);
    assert.match(stderr, /row 2, column "A_y": "36 T" is no force/);
    assert.ok(rowsOf(stdout)[2].startsWith('"""ZQ2",32,32,,'));
    assert.match(stderr, /row 4: more cells than there are headings/);
    assert.equal(rowsOf(stdout)[3].split(',')[0], 'ZQ3');
});

test('a sheet for an exercise whose truss was changed since is said, with its file', () => {
    inFolder((folder) => {
        const file = path.join(folder, 'sheet.json');
        writeFileSync(file, '{"gussetAnswers":1,"exercise":"00000000","code":"ZQ9"}');
        const { status, stdout, stderr } = gusset(['mark', '-', file], key);
        assert.equal(status, 2);
        assert.equal(stdout, '');
        assert.match(stderr, /sheet\.json: /);
        assert.match(stderr, /exercise/);
    });
});

// Two exercises in a folder: the footbridge under its loads, and under half of them. Returns their
// checksums, as the table of marks tells them.
function course(folder) {
    const half = key.replaceAll(/"fy": ?-24/g, '"fy": -12');
    assert.notEqual(half, key);
    mkdirSync(path.join(folder, 'keys'));
    mkdirSync(path.join(folder, 'sheets'));
    const sheet = path.join(folder, 'sheet.csv');
    writeFileSync(sheet, `${heads}\nx,${right}\n`);
    return [key, half].map((model, i) => {
        const file = path.join(folder, 'keys', `${i}.json`);
        const out = path.join(folder, `${i}.csv`);
        writeFileSync(file, model);
        assert.equal(gusset(['mark', file, sheet, '--out', out]).status, 0);
        return rowsOf(readFileSync(out, 'utf8'))[1].split(',')[2];
    });
}

test('a course is marked as a folder: each sheet by its own exercise, and others are said with their row', () => {
    inFolder((folder) => {
        const [whole, half] = course(folder);
        assert.notEqual(whole, half);
        writeFileSync(path.join(folder, 'sheets', 'a.csv'),
            `exercise,${heads}\n${whole},ZQ1,${right}\n${half},ZQ2,${right}\n00000000,ZQ3,${right}\n`);
        writeFileSync(path.join(folder, 'sheets', 'b.json'),
            `{"gussetAnswers":1,"exercise":"${whole}","code":"ZQ4","reactions":[{"of":"A:y","size":36,"sign":"+"}]}`);
        const { status, stdout, stderr } = gusset(['mark', path.join(folder, 'keys'), path.join(folder, 'sheets')]);
        assert.equal(status, 0);
        const rows = rowsOf(stdout);
        assert.equal(rows[0], 'file,row,exercise,code,marks,of,slips,feedback');
        assert.match(rows[1], new RegExp(`a\\.csv,2,${whole},ZQ1,32,32,,$`));
        assert.match(rows[2], new RegExp(`a\\.csv,3,${half},ZQ2,(?!32)[\\d.]+,32,`));
        assert.match(rows[3], new RegExp(`b\\.json,1,${whole},ZQ4,2,32,`)); // one answer of two marks
        assert.match(stderr, /a\.csv: row 4: this sheet is for no exercise of the course/);
        assert.match(stdout, /slip,times/);
    });
});

test('two files with one code are both marked, and said', () => {
    inFolder((folder) => {
        const files = ['a.csv', 'b.csv'].map((name) => path.join(folder, name));
        for (const file of files) {
            writeFileSync(file, `${heads}\nZQ1,${right}\n`);
        }
        const { stdout, stderr } = gusset(['mark', '-', ...files], key);
        assert.deepEqual(rowsOf(stdout).slice(1, 3), ['ZQ1,32,32,,', 'ZQ1,32,32,,']);
        assert.match(stderr, /b\.csv: row 2: "ZQ1" is in row 2 of .*a\.csv too: both are marked/);
    });
});

test('marking that was stopped goes on where it was, and marks no sheet twice', () => {
    inFolder((folder) => {
        const keys = path.join(folder, 'key.json');
        writeFileSync(keys, key);
        const sheets = path.join(folder, 'class.csv');
        writeFileSync(sheets, `${heads}\nZQ1,${right}\nZQ2,${right}\n`);
        const out = path.join(folder, 'marks.csv');
        assert.equal(gusset(['mark', keys, sheets, '--out', out]).status, 0);
        const whole = readFileSync(out, 'utf8');
        const again = gusset(['mark', keys, sheets, '--out', out]);
        assert.equal(again.status, 2); // what is there is not lost
        assert.match(again.stderr, /add --resume/);
        assert.equal(readFileSync(out, 'utf8'), whole);
        writeFileSync(out, whole.slice(0, whole.indexOf('ZQ2') + 3)); // stopped in the second row
        appendFileSync(sheets, `ZQ3,${right}\n`);
        const { status, stderr } = gusset(['mark', keys, sheets, '--out', out, '--resume', '--progress']);
        assert.equal(status, 0);
        assert.match(stderr, /1 of 1: .*class\.csv/);
        const rows = rowsOf(readFileSync(out, 'utf8'));
        assert.deepEqual(rows.slice(1, 4).map((row) => row.split(',')[3]), ['ZQ1', 'ZQ2', 'ZQ3']);
        assert.equal(rows.length, 5); // and what stands behind the end of the last line: nothing
    });
});

test('a folder without exercises, or one that is not there, is said', () => {
    inFolder((folder) => {
        const { status, stderr } = gusset(['mark', folder, folder]);
        assert.equal(status, 2);
        assert.match(stderr, /no exercise is in this folder/);
        assert.equal(gusset(['mark', path.join(folder, 'none'), folder]).status, 2);
    });
});

test('a thousand sheets of random numbers are said to be beyond a few slips', () => {
    let state = 1;
    const random = () => {
        state = (state * 48271) % 2147483647;
        return ((state % 2000) - 1000) / 10;
    };
    const rows = Array.from({ length: 1000 }, (_, i) => `S${i},${Array.from({ length: 16 }, random).join(',')}`);
    const { status, stdout } = marked([heads, ...rows].join('\n'));
    assert.equal(status, 0);
    assert.ok(rowsOf(stdout).filter((row) => /^S\d+,.*Too much of this sheet is wrong/.test(row)).length > 900);
});
