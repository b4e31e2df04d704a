// The working on the command line.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { gusset, gussetInNode } from './support.mjs';

const footbridge = 'site/examples/footbridge.json';

test('the working begins with the count and ends with all forces', () => {
    const { status, stdout, stderr } = gusset(['working', footbridge]);
    assert.equal(status, 0);
    assert.equal(stderr, '');
    assert.match(stdout, /^Count\n {2}\d+ members, \d+ reactions, \d+ joints\.\n/);
    assert.match(stdout, /\nCheck\n[^]*They do: the working closes\.\n\nAll forces\n/);
});

test('as HTML it is a fragment of headings, paragraphs and MathML', () => {
    const { status, stdout } = gusset(['working', footbridge, '--html']);
    assert.equal(status, 0);
    assert.match(stdout, /^<section>\n<h3>Count<\/h3>\n<p>/);
    assert.match(stdout, /<math display="block">/);
    for (const tag of ['section', 'h3', 'p', 'math', 'mrow', 'msub', 'mi', 'mn', 'mo', 'mtext']) {
        const opened = stdout.split(new RegExp(`<${tag}[ >]`)).length;
        assert.equal(opened, stdout.split(`</${tag}>`).length, `every <${tag}> is closed`);
    }
});

test('a mechanism has a working that says why it ends, and exit status 1', () => {
    const { status, stdout } = gusset(['working', 'site/examples/missing_diagonal.json']);
    assert.equal(status, 1);
    assert.match(stdout, /It has to be made stable/);
});

test('a member that is named is explained, by nothing beside the point', () => {
    const { status, stdout } = gusset(['working', footbridge, '--member', 'D-F']);
    assert.equal(status, 0);
    assert.match(stdout, /F_DF = [−\d.]+\u2009kN \((tension|compression)\)\n$/);
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
    assert.match(gusset(['working', file, '--released', 'N0']).stdout, /Load at n2: 2\u2009kip/);
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
