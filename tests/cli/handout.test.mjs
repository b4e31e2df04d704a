// Exercises on paper: the sheets for students tell nothing of the answers, the key tells all of them, and both are
// sound HTML.
import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { test } from 'node:test';
import { answered, gusset, root } from './support.mjs';

const { HtmlValidate } = createRequire(path.join(root, 'tests/browser/package.json'))('html-validate');
const validator = new HtmlValidate({ extends: ['html-validate:recommended'], rules: { 'wcag/h63': 'error',
    'no-dup-id': 'error', 'doctype-style': ['error', { style: 'lowercase' }], 'long-title': 'off' } });

const bridge = 'site/examples/footbridge.json';
const folder = mkdtempSync(path.join(tmpdir(), 'gusset-handout-'));

// The bridge with loads whose forces are no lengths or numbers of questions. The posts at B and F carry the loads there,
// so that the sheet has these numbers anyway.
const oddLoads = [17.3, 23.9, 31.7];
function oddBridge(exercise) {
    const model = JSON.parse(readFileSync(path.join(root, bridge)));
    model.title = 'A bridge';
    oddLoads.forEach((load, i) => (model.loads[i].fy = -load));
    if (exercise) {
        model.exercise = exercise;
    }
    const file = path.join(folder, `bridge${Object.keys(exercise ?? {}).length}.json`);
    writeFileSync(file, JSON.stringify(model));
    return file;
}

const sizesOf = (file) => {
    const results = JSON.parse(gusset(['solve', file, '--json']).stdout);
    return [...results.members.map((it) => it.force), ...results.reactions.flatMap((it) => [it.fx, it.fy])]
        .map(Math.abs);
};
const words = (html) => html.replace(/<style>[\s\S]*?<\/style>/g, '').replace(/<title>[^<]*<\/title>/g, '');
const numbersIn = (html) => (words(html).replace(/<[^>]*>/g, ' ').match(/\d+(\.\d+)?/g) ?? []).map(Number);
const isAbout = (size) => (number) => Math.abs(number - size) <= 0.006 * Math.max(1, size);

test('a sheet for students holds no answer: no force, no ticked box, no working', () => {
    const file = oddBridge();
    const html = answered(['handout', file]);
    const numbers = numbersIn(html);
    assert.ok(numbers.includes(23.9)); // the loads are there
    const told = sizesOf(file).filter((it) => it > 1e-6 && !oddLoads.some(isAbout(it)));
    assert.ok(told.length >= 10);
    for (const size of told) {
        assert.ok(!numbers.some(isAbout(size)), `${size} on the sheet`);
    }
    assert.ok(!html.includes('☒'));
    assert.equal(html.match(/<span class="blank">(?!<\/span>)/g), null); // every blank is empty
    assert.ok(!/ink-(tension|compression|zero)/.test(words(html)));
    assert.equal(html.match(/☐/g).length, 3 * 16);
});

test('a sheet has a blank for each value, a free body of each joint to complete, and a code instead of a name', () => {
    const text = answered(['handout', oddBridge()]);
    assert.equal((text.match(/class="blank"/g) ?? []).length, 1 + 16); // the code, 13 members, 3 reactions
    assert.equal((text.match(/class="stub"/g) ?? []).length, 8); // a joint each
    assert.match(text, /Code:/);
    assert.ok(!/\bname\b/i.test(words(text).replace(/<[^>]*>/g, ' ')));
});

test('the answers are those of the engine, size and sense', () => {
    const file = oddBridge();
    const html = answered(['handout', file, '--answers']);
    const results = JSON.parse(gusset(['solve', file, '--json']).stdout);
    for (const { a, b, force } of results.members) {
        const [, size, boxes] = html.match(
            new RegExp(`<span class="of">${a}${b}</span> <span class="blank">([^<]*)</span> kN([^\\n]*)</li>`));
        assert.ok(Math.abs(Number(size) - Math.abs(force)) <= 0.005 + 1e-9, `${a}${b}: ${size} for ${force}`);
        const ticked = boxes.match(/☒<\/span>\u00A0(.)/)[1];
        assert.equal(ticked, Math.abs(force) < 1e-9 ? '0' : force > 0 ? 'T' : 'C', a + b);
    }
    assert.ok(!html.includes('<math')); // no working
    assert.match(html, /For the teacher/);
});

test('the key has the working as well, in the class’s settings', () => {
    const html = answered(['handout', bridge, '--key']);
    assert.match(html, /<math/);
    assert.ok(html.includes('How the forces are found'));
    const model = JSON.parse(readFileSync(path.join(root, bridge)));
    model.class = { numbers: { sign: ',' } };
    const file = path.join(folder, 'comma.json');
    writeFileSync(file, JSON.stringify(model));
    const comma = answered(['handout', file, '--answers']);
    assert.match(comma, /<span class="blank">\d+,\d+<\/span>/);
});

test('every kind of question has its place, and its value in the answers', () => {
    const file = oddBridge({ text: 'Work <neatly>.', ask: ['reactions', { what: 'forces', members: [['C', 'E']], marks: 4 },
        'zero-members', { what: 'determinacy', marks: 1 },
        { what: 'influence', path: ['A', 'B', 'D', 'F', 'H'], member: ['C', 'E'], at: 'D' }, 'steps'], variant: 7, seed: '1' });
    const html = answered(['handout', file]);
    assert.equal(html.match(/<h2>Question \d/g).length, 6);
    assert.match(html, /Question 2 \(4 marks\)/);
    assert.match(html, /Question 4 \(1 mark\)/);
    assert.match(html, /Variant 7/);
    assert.match(html, /Work &lt;neatly&gt;\./);
    assert.match(html, /☐<\/span>\u00A0AB/);
    const answers = answered(['handout', file, '--answers']);
    assert.match(answers, /<span class="blank">0<\/span>/); // determinate
    assert.match(answers, /<span class="blank">−1\.33<\/span>/); // (1/2 · 8)/3 of compression, by ΣM about D
    const sections = (text) => text.match(/<section/g).length;
    const forcesAlone = answered(['handout', oddBridge({ ask: ['forces'] }), '--key']);
    const withLine = answered(['handout', file, '--key']);
    assert.ok(sections(withLine) - 6 > sections(forcesAlone) - 1); // the working of the influence line as well
});

test('several exercises are one document, each on a page of its own', () => {
    const html = answered(['handout', bridge, oddBridge(), '--paper', 'Letter']);
    assert.equal(html.match(/<article class="handout">/g).length, 2);
    assert.match(html, /\.handout \+ \.handout \{\s*break-before: page;/);
    assert.match(html, /size: letter portrait/);
    assert.equal(html.match(/<!doctype html>/g).length, 1);
});

test('the code in the corner opens the exercise that the sheet puts', () => {
    const html = answered(['handout', bridge, '--address', 'https://example.org/']);
    const [, link] = html.match(/<a href="(https:\/\/example\.org\/exercise\/#x=1\.[^"]+)"/);
    const opened = JSON.parse(answered(['open', link]));
    assert.deepEqual(opened.exercise.ask, [{ what: 'reactions' }, { what: 'forces' }]);
    assert.ok(!answered(['handout', bridge]).includes('href='));
});

test('sheets, answers and keys are sound HTML', async () => {
    for (const options of [[], ['--answers'], ['--key'], ['--address', 'https://example.org/']]) {
        const html = answered(['handout', bridge, oddBridge(), ...options]);
        const report = await validator.validateString(html);
        assert.deepEqual(report.results.flatMap(({ messages }) =>
            messages.map(({ line, ruleId, message }) => `${line}: ${ruleId}: ${message}`)), [], options.join(' '));
    }
});

test('a truss that moves makes no sheet, and the fault names its file', () => {
    const { status, stdout, stderr } = gusset(['handout', bridge, 'site/examples/missing_diagonal.json']);
    assert.equal(status, 1);
    assert.equal(stdout, '');
    assert.match(stderr, /^site\/examples\/missing_diagonal\.json: /);
    assert.equal(gusset(['handout', bridge, '--paper', 'A5']).status, 2);
    assert.equal(gusset(['handout', bridge, '--key', '--answers']).status, 3);
});
