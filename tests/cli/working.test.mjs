// The working on the command line.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { gusset, gussetInNode, root } from './support.mjs';

const footbridge = 'site/examples/footbridge.json';

test('the working begins with the count and ends with all forces', () => {
    const { status, stdout, stderr } = gusset(['working', footbridge]);
    assert.equal(status, 0);
    assert.equal(stderr, '');
    assert.match(stdout, /^Count\n {2}\d+ members, \d+ reactions, \d+ joints\.\n/);
    assert.match(stdout, /\nCheck\n[^]*They do: the working closes\.\n\nAll forces\n/);
});

test('as HTML it is a whole document: title, style, the truss, what is sought, the working, the results', () => {
    const { status, stdout } = gusset(['working', footbridge, '--html']);
    assert.equal(status, 0);
    assert.match(stdout, /^<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">/);
    const title = JSON.parse(readFileSync(path.join(root, footbridge), 'utf8')).title;
    assert.ok(stdout.includes(`<title>${title}</title>`) && stdout.includes(`<h1>${title}</h1>`));
    assert.deepEqual(stdout.match(/<h2>[^<]*/g), ['<h2>Given', '<h2>Working', '<h2>Results']);
    assert.match(stdout, /<h2>Given<\/h2>\n<div class="steps">\n<figure class="wide">[^]*<p class="sought">Find the reactions and the forces in all members\./);
    assert.match(stdout, /<h2>Results<\/h2>[^]*<h3>All forces<\/h3>[^]*<\/svg>[^]*Forces in kN\. T is tension, C is compression\./);
    assert.match(stdout, /@page \{/);
    for (const tag of ['section', 'h3', 'p', 'math', 'mrow', 'msub', 'mi', 'mn', 'mo', 'mtext', 'div', 'span', 'style']) {
        const opened = stdout.split(new RegExp(`<${tag}[ >]`)).length;
        assert.equal(opened, stdout.split(`</${tag}>`).length, `every <${tag}> is closed`);
    }
});

test('the document needs no network: its typeface is in it, and nothing else is referred to', () => {
    const html = gusset(['working', footbridge, '--html']).stdout;
    const font = Buffer.from(html.match(/url\(data:font\/woff2;base64,([\w+/=]+)\)/)[1], 'base64');
    assert.deepEqual(font, readFileSync(path.join(root, 'engine/report/paper/maths.woff2')));
    assert.ok(font.length < 60_000);
    assert.doesNotMatch(html.replaceAll('http://www.w3.org/2000/svg', ''), /https?:|src=|href=|url\((?!data:)/);
});

test('each derivation says what is sought', () => {
    const sought = (...words) => gusset(['working', ...words, '--html']).stdout.match(/<p class="sought">(.*)<\/p>/)[1];
    const cases = 'tests/published/cases';
    assert.equal(sought(footbridge, '--member', 'D-F'), 'Find the force in DF.');
    assert.equal(sought(footbridge, '--section', 'B-D,C-D,C-E'), 'Find what a cut through BD, CD and CE gives.');
    assert.equal(sought(footbridge, '--polygon'), 'Find the forces in all members by drawing a force polygon.');
    assert.equal(sought(`${cases}/DF-01.json`, '--displacement', 'C:y'), 'Find how far joint C moves vertically.');
    assert.equal(sought(`${cases}/DF-01.json`, '--displacement', 'C:x'), 'Find how far joint C moves horizontally.');
    assert.equal(sought(`${cases}/IN-05.json`), 'Find the reactions and the forces in all members.');
    assert.equal(sought(`${cases}/IL-02.json`, '--influence', 'member:C-G', '--path', 'A,B,C,D,E'),
        'Find the influence line of the force in CG.');
});

test('with --answers-first the results come before the working, in text and on paper', () => {
    const text = gusset(['working', footbridge, '--answers-first']).stdout;
    assert.match(text, /^All forces\n[^]*\nCount\n/);
    const lines = (it) => it.split('\n').sort();
    assert.deepEqual(lines(text), lines(gusset(['working', footbridge]).stdout));
    const html = gusset(['working', footbridge, '--html', '--answers-first']).stdout;
    assert.deepEqual(html.match(/<h2>[^<]*/g), ['<h2>Given', '<h2>Results', '<h2>Working']);
});

test('a mechanism has a working that says why it ends, and exit status 1', () => {
    const { status, stdout } = gusset(['working', 'site/examples/missing_diagonal.json']);
    assert.equal(status, 1);
    assert.match(stdout, /It has to be made stable/);
});

test('a member that is named is explained, by nothing beside the point', () => {
    const { status, stdout } = gusset(['working', footbridge, '--member', 'D-F']);
    assert.equal(status, 0);
    assert.match(stdout, /F_DF = [−\d.]+\/[\d.]+ = [−\d.]+\u2009kN \((tension|compression)\)\n$/);
    assert.doesNotMatch(stdout, /^Check$/m);
});

test('a cut that is named is worked out, or refused with the reason', () => {
    const refused = gusset(['working', footbridge, '--section', 'A-B']);
    assert.equal(refused.status, 0);
    assert.match(refused.stdout, /does not leave the truss in two parts\./);
});

test('a displacement is written as the table of the unit load method', () => {
    // R. C. Hibbeler, Structural Analysis, 8th ed., Example 9.1 (from memory): 0.204 in down.
    const file = 'tests/published/cases/DF-01.json';
    const { status, stdout } = gusset(['working', file, '--displacement', 'C:y']);
    assert.equal(status, 0);
    assert.match(stdout, /\n {4}C moves 0\.204\u2009in down\.\n$/);
    assert.equal(gusset(['working', file, '--displacement', 'C']).status, 2);
});

test('a displacement of an indeterminate truss puts the unit load on the released truss', () => {
    // R. C. Hibbeler, Structural Analysis, 8th ed., Example 14.6 (from memory): 0.003704 m to the left.
    const file = 'tests/published/cases/IN-05.json';
    const { status, stdout } = gusset(['working', file, '--displacement', 'P:x']);
    assert.equal(status, 0);
    assert.match(stdout, /the force method gives its forces N, with F_RP as redundant\./);
    assert.match(stdout, /at P of the released truss, without RP, and nothing else/);
    assert.match(stdout, /\n {4}P moves 0\.00370\u2009m to the left\.\n$/);
});

test('an indeterminate truss is worked by the force method, asked for or not', () => {
    // R. C. Hibbeler, Structural Analysis, 8th ed., Example 14.6 (from memory): 9.26 kN in RP.
    const file = 'tests/published/cases/IN-05.json';
    const asked = gusset(['working', file, '--force-method']);
    assert.equal(asked.status, 0);
    assert.match(asked.stdout, /\n {4}X_1 = F_RP ≈ 9\.26\u2009kN \(tension\)\n/);
    assert.deepEqual(gusset(['working', file]), asked);
    const html = gusset(['working', file, '--html']).stdout;
    for (const tag of ['section', 'h3', 'p', 'math', 'mfrac', 'table', 'caption', 'th', 'td']) {
        const opened = html.split(new RegExp(`<${tag}[ >]`)).length;
        assert.ok(opened === html.split(`</${tag}>`).length, `every <${tag}> is closed`);
    }
    assert.match(html, /<th scope="col"><var>N<\/var><sub>0<\/sub>, kN<\/th>/);
    assert.deepEqual(gussetInNode(['working', file]), asked);
});

test('how a column of the force method was found is a working like any other', () => {
    const file = 'tests/published/cases/IN-07.json';
    const unit = gusset(['working', file, '--released', 'n1']);
    assert.equal(unit.status, 0);
    assert.match(unit.stdout, /^Count\n {2}5 members, 3 reactions, 4 joints\.\n/);
    assert.match(gusset(['working', file, '--released', 'N0']).stdout, /Load at n2: P_n2x = 2\u2009kip/);
    const none = gusset(['working', file, '--released', 'n2']);
    assert.equal(none.status, 2);
    assert.match(none.stderr, /n2.*is no column of the force method here/);
});

test('the force method of a determinate truss is refused with the reason', () => {
    const { status, stdout } = gusset(['working', footbridge, '--force-method']);
    assert.equal(status, 0);
    assert.match(stdout, /there is no redundant/);
});

test('an influence line by hand takes a unit load from joint to joint', () => {
    // R. C. Hibbeler, Structural Analysis, 8th ed., Example 6.16 (from memory): 1 at C, else 0.
    const file = 'tests/published/cases/IL-02.json';
    const words = ['working', file, '--influence', 'member:C-G', '--path', 'A,B,C,D,E'];
    const { status, stdout } = gusset(words);
    assert.equal(status, 0);
    assert.match(stdout, /^Influence line of F_CG\n/);
    assert.match(stdout, /\n {4}C +12 +1\.0000 +1\n {4}D +18 +0\.0000 +0\n/);
    assert.match(gusset([...words, '--html']).stdout, /<h3>Load at C<\/h3>/);
    assert.equal(gusset(words.slice(0, 4)).status, 3);
    assert.equal(gusset([...words.slice(0, 5), 'A,Z']).status, 2);
});

test('a member that is not there is bad input', () => {
    const { status, stdout, stderr } = gusset(['working', footbridge, '--member', 'A-Z']);
    assert.equal(status, 2);
    assert.equal(stdout, '');
    assert.match(stderr, /A-Z.*is no member/);
});

test('in node the working is the same to the last digit', () => {
    assert.deepEqual(gussetInNode(['working', footbridge]), gusset(['working', footbridge]));
});
