// The catalogue of profiles on the command line, and checks both ways.
import assert from 'node:assert/strict';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { test } from 'node:test';
import { gusset } from './support.mjs';

const canopy = 'tests/data/formats/10_sections/file.json';

test('without a name, the kinds are listed with their sources', () => {
    const { status, stdout } = gusset(['profiles']);
    assert.equal(status, 0);
    assert.match(stdout, /^ipe: IPE sections, 18\. EN 10365:2017; .*MIT licence/m);
    assert.equal(stdout.trim().split('\n').length, 23);
});

test('a kind is listed within a range of mass', () => {
    const { status, stdout } = gusset(['profiles', 'ipe', '--from', '10', '--to', '30', '--csv']);
    assert.equal(status, 0);
    const rows = stdout.trim().split('\r\n').map((row) => row.split(','));
    assert.equal(rows.length, 7);
    assert.deepEqual(rows.at(-2).slice(0, 2), ['IPE 200', '22.36']); // 28.48 cm² · 7850 kg/m³
    assert.equal(rows.at(-2).at(-1), 'mm');
});

test('one profile is found by its name', () => {
    const { status, stdout } = gusset(['profiles', 'w8x31']);
    assert.equal(status, 0);
    assert.match(stdout, /W8×31 +46\./); // 31 lb/ft are 46.1 kg/m
});

test('what is no profile is refused, and no number of kg/m', () => {
    const unknown = gusset(['profiles', 'IPE 205']);
    assert.equal(unknown.status, 2);
    assert.match(unknown.stderr, /no kind of profiles and no profile/);
    assert.equal(gusset(['profiles', 'ipe', '--from', 'light']).status, 3);
});

test('an own list is read, and its bad rows are told', () => {
    const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'profiles-'));
    const list = path.join(folder, 'yard.csv');
    fs.writeFileSync(list, 'name,shape,unit,B,t\nY 60,shs,mm,60,4\nY 61,shs,m,61,4\n');
    const { status, stdout, stderr } = gusset(['profiles', '--list', list]);
    assert.equal(status, 0);
    assert.match(stdout, /Y 60 +7\.03/); // 4 · 4 · 56 = 896 mm²
    assert.match(stderr, /row 3: "Y 61" is left out: it measures 61 m: is the unit right\?/);
    fs.rmSync(folder, { recursive: true });
});

test('a check of a tie with holes and of a rafter out of the plane is written with its clauses', () => {
    const tie = gusset(['check', canopy, '--member', 'A-B']);
    assert.equal(tie.status, 0);
    assert.match(tie.stdout, /EN 1993-1-1, 6\.2\.3 \(6\.7\)/);
    assert.match(tie.stdout, /0\.9\s·\sA_net\s·\sf_u\s\/\sγ_M2/);
    const rafter = gusset(['check', canopy, '--member', 'A-D']);
    assert.match(rafter.stdout, /Slenderness in the plane of the truss:/);
    assert.match(rafter.stdout, /λ\s=\sK\s·\sL\s\/\sr\s=\s0\.85\s·\s2500\s\//);
    assert.match(rafter.stdout, /out of that plane/);
    assert.match(rafter.stdout, /table 5\.2/);
    const post = gusset(['check', canopy, '--member', 'B-D']);
    assert.match(post.stdout, /It carries no force/);
});

test('the table of checks says what is checked how, and the caution', () => {
    const { status, stdout } = gusset(['check', canopy, '--members']);
    assert.equal(status, 0);
    assert.match(stdout, /buckle between joints that are held there: A, C and D/);
    assert.match(stdout, /Joint \w moves farthest/);
    assert.match(stdout, /Left out are connections/);
});
