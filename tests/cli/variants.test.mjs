// gusset variants: a folder of files with a key and links; wrong wishes are said and write nothing.
import assert from 'node:assert/strict';
import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { test } from 'node:test';
import { answered, gusset } from './support.mjs';

const footbridge = 'site/examples/footbridge.json';
const folder = mkdtempSync(path.join(os.tmpdir(), 'gusset_variants_'));
test.after(() => rmSync(folder, { recursive: true }));
const at = (...names) => path.join(folder, ...names);
const linesOf = (file) => readFileSync(file, 'utf8').replace(/^\uFEFF/, '').trimEnd().split('\r\n');

function variants(name, ...words) {
    const made = gusset(['variants', footbridge, '--out', at(name), ...words]);
    assert.equal(made.status, 0, made.stderr);
    return made;
}

test('thirty variants: each file solves to its line of the key, and its link opens it', () => {
    const { stderr } = variants('thirty', '--count', '30', '--seed', '7', '--decimals', '1');
    assert.match(stderr, /^32 of 32: .*links\.csv$/m);
    const key = linesOf(at('thirty', 'key.csv')).map((line) => line.split(','));
    const links = linesOf(at('thirty', 'links.csv')).map((line) => line.split(','));
    assert.equal(key.length, 31);
    const answers = new Set(key.slice(1).map((line) => line.slice(4).join()));
    assert.equal(answers.size, 30);
    for (const [number, , file, , ...values] of key.slice(1)) {
        assert.ok(values.every((value) => /^-?\d+(\.\d)?$/.test(value)), values.join());
        const model = JSON.parse(readFileSync(at('thirty', file), 'utf8'));
        const solved = JSON.parse(answered(['solve', at('thirty', file), '--json']));
        model.members.forEach((_, i) => {
            assert.ok(Math.abs(solved.members[i].force - values[i]) < 1e-9, `${file}, member ${i}`);
        });
        const link = links[number].at(-1);
        // A line that begins with # is no formula.
        assert.deepEqual(JSON.parse(answered(['open', link])), model);
    }
});

test('the same seed gives the same files, another one others, and a longer series begins alike', () => {
    variants('a', '--count', '3', '--seed', '9');
    variants('b', '--count', '5', '--seed', '9');
    variants('c', '--count', '3', '--seed', '10');
    const third = (name) => readFileSync(at(name, 'variant_003.json'), 'utf8');
    assert.equal(third('a'), third('b'));
    assert.notEqual(third('a'), third('c'));
});

test('going on after a stop leaves whole files alone and replaces broken ones', () => {
    variants('stopped', '--count', '4', '--seed', '2');
    const kept = statSync(at('stopped', 'variant_001.json')).ino;
    const broken = readFileSync(at('stopped', 'variant_002.json'), 'utf8');
    writeFileSync(at('stopped', 'variant_002.json'), broken.slice(0, 40));
    rmSync(at('stopped', 'variant_003.json'));
    variants('stopped', '--count', '4', '--seed', '2');
    assert.equal(statSync(at('stopped', 'variant_001.json')).ino, kept);
    assert.equal(readFileSync(at('stopped', 'variant_002.json'), 'utf8'), broken);
    assert.deepEqual(readdirSync(at('stopped')).sort(), [
        'key.csv', 'links.csv', 'variant_001.json', 'variant_002.json', 'variant_003.json', 'variant_004.json']);
});

const lists = {
    'semicolons and a byte order mark': ['\uFEFFLast name;First name\r\nNoether;Emmy\r\n"Gauß; C.";Friedrich\r\n'],
    'tabs without a head': ['Noether\tEmmy\nGauß; C.\tFriedrich'],
    'commas, quotes and empty lines': ['Name,Email\n\nNoether,Emmy\n\n"Gauß; C.",Friedrich\n'],
};
for (const [name, [text]] of Object.entries(lists)) {
    test(`a class list with ${name}: a variant for each student, whose name is in no link`, () => {
        writeFileSync(at('list.csv'), text);
        variants(name, '--class', at('list.csv'), '--address', 'https://example.org/');
        const links = linesOf(at(name, 'links.csv'));
        assert.match(links[1], /^1,Noether Emmy,[A-Z0-9]{5},https:\/\/example\.org\/exercise\/#x=/);
        assert.match(links[2], /^2,Gauß; C\. Friedrich,[A-Z0-9]{5},https:\/\/example\.org\/exercise\/#x=/);
        assert.equal(links.length, 3);
        for (const line of links.slice(1)) {
            const model = answered(['open', line.split(',').at(-1)]);
            assert.doesNotMatch(model, /Noether|Gauß/);
        }
    });
}

test('a doubled quote in a quoted name is one, and a formula is text', () => {
    writeFileSync(at('list.csv'), '"A ""B"" C"\n=cmd|x\n');
    variants('formula', '--class', at('list.csv'));
    const [, first, second] = linesOf(at('formula', 'links.csv'));
    assert.match(first, /^1,"A ""B"" C",/);
    assert.match(second, /^2,'=cmd\|x,/);
});

const refused = {
    'no folder': [3, ['--count', '2'], /--out: is missing/],
    'a count and a class list': [3, ['--out', at('no'), '--count', '2', '--class', 'x'], /--count: follows/],
    'a count that is no number': [2, ['--out', at('no'), '--count', '2x'], /--count: is no whole number/],
    'no variants': [2, ['--out', at('no'), '--count', '0'], /count: must be from 1 to/],
    'too many': [2, ['--out', at('no'), '--count', '100000'], /count: must be from 1 to/],
    'a negative seed': [2, ['--out', at('no'), '--seed', '-1'], /--seed: is no whole number/],
    'two decimals': [2, ['--out', at('no'), '--decimals', '2'], /decimals: must be 0 or 1/],
    'something else to vary': [2, ['--out', at('no'), '--vary', 'loads,colours'], /"colours" can't vary/],
    'a member that is not there': [2, ['--out', at('no'), '--asked', 'A-Z9'], /./],
    'a case that is not there': [2, ['--out', at('no'), '--case', 'hail'], /hail: there is no such case/],
    'a class list that is not there': [2, ['--out', at('no'), '--class', at('none.csv')], /there is no such file/],
};
for (const [name, [status, words, says]] of Object.entries(refused)) {
    test(`${name}: said, and nothing is written`, () => {
        const answer = gusset(['variants', footbridge, ...words]);
        assert.match(answer.stderr, says);
        assert.equal(answer.status, status);
        assert.equal(answer.stdout, '');
        assert.ok(!existsSync(at('no')));
    });
}

test('without a file: seven joints, two zero members', () => {
    const made = gusset(['variants', '--joints', '7', '--zero', '2', '--count', '6', '--seed', '4', '--out', at('form')]);
    assert.equal(made.status, 0, made.stderr);
    const key = linesOf(at('form', 'key.csv')).slice(1).map((line) => line.split(','));
    assert.equal(key.length, 6);
    for (const line of key) {
        const forces = line.slice(4, 4 + 11); // 2·7 − 3 members
        assert.equal(forces.filter((force) => force === '0').length, 2, line.join());
        assert.ok(line.slice(4).every((value) => /^-?\d+$/.test(value)), line.join());
    }
});

test('wishes for a form that can not be met are said', () => {
    const says = (...words) => gusset(['variants', '--out', at('no'), ...words]).stderr;
    assert.match(says(), /needs a FILE or --joints/);
    assert.match(says(footbridge, '--joints', '7'), /needs a FILE or --joints/);
    assert.match(says(footbridge, '--zero', '2'), /--zero: goes with --joints/);
    assert.match(says('--joints', '99'), /joints: must be from 4 to 40/);
    assert.match(says('--joints', '7', '--held', 'wall'), /ask for 6 or 8/);
    assert.match(says('--joints', '7', '--held', 'air'), /--held: must be ends or wall/);
    assert.match(says('--joints', '7', '--zero', '11'), /zero: no loading .* 11 zero members: the nearest/);
    assert.ok(!existsSync(at('no')));
});

test('an empty class list and a folder that is a file are said', () => {
    writeFileSync(at('empty.csv'), '\uFEFF\n;;\n');
    const empty = gusset(['variants', footbridge, '--out', at('no'), '--class', at('empty.csv')]);
    assert.match(empty.stderr, /holds no student/);
    assert.equal(empty.status, 2);
    const taken = gusset(['variants', footbridge, '--out', at('empty.csv')]);
    assert.match(taken.stderr, /the folder .*empty\.csv could not be written/);
    assert.equal(taken.status, 4);
});
