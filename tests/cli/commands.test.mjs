// The answer and the exit status of each command.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { answered, gusset, gussetInNode, root } from './support.mjs';

const footbridge = 'site/examples/footbridge.json';
const examples = readdirSync(path.join(root, 'site/examples'))
    .filter((name) => name !== 'index.json')
    .map((name) => `site/examples/${name}`);

test('solve answers in text unless asked otherwise', () => {
    assert.match(answered(['solve', footbridge]), /AC\s+−60\.00\s+compression/);
    assert.equal(answered(['solve', '--text', footbridge]), answered(['solve', footbridge]));
});

test('solve --json names every member and reaction in the order of the model', () => {
    const model = JSON.parse(readFileSync(path.join(root, footbridge), 'utf8'));
    const results = JSON.parse(answered(['solve', footbridge, '--json']));
    assert.equal(results.status, 'determinate');
    assert.deepEqual(
        results.members.map(({ a, b }) => a + b),
        model.members.map(({ a, b }) => a + b),
    );
    // By hand: 3 · 24 / 2 = 36 at A, and 36 · 5/3 in the end post.
    assert.deepEqual(results.reactions[0], { joint: 'A', fx: 0, fy: 36 });
    const post = results.members.find(({ a, b }) => a + b === 'AC');
    assert.deepEqual(post, { a: 'A', b: 'C', force: -60, sense: 'C' });
    const zero = results.members.find(({ a, b }) => a + b === 'DE');
    assert.equal(zero.sense, '0');
});

test('solve --csv is a table with a line for each member and reaction', () => {
    const lines = answered(['solve', footbridge, '--csv']).trimEnd().split('\r\n');
    assert.equal(lines.length, 1 + 13 + 2);
    assert.ok(lines.includes('member,AC,-60,C,,,kN'));
});

test('solve takes one case or one combination of the model', () => {
    const force = (words) =>
        JSON.parse(answered(['solve', 'site/examples/garage_roof.json', '--json', ...words]))
            .members[0].force;
    // AB carries 25 under 2 + 3 on each joint.
    assert.equal(force([]), 25);
    assert.equal(force(['--case', 'snow']), 15);
    assert.equal(force(['--case=roofing']), 10);
    assert.equal(force(['--combination', 'winter']), 36); // 1.35 · 10 + 1.5 · 15
});

test('working shows the steps as text or as HTML', () => {
    assert.match(answered(['working', footbridge]), /Joint A/);
    assert.match(answered(['working', footbridge, '--html']), /<math/);
});

test('check says what a truss is', () => {
    assert.match(answered(['check', footbridge]), /^Statically determinate/);
});

test('a mechanism exits with 1, and says what would cure it', () => {
    for (const words of [['solve'], ['solve', '--json'], ['check']]) {
        const { status, stdout, stderr } = gusset([...words, 'site/examples/missing_diagonal.json']);
        assert.equal(status, 1);
        assert.equal(stderr, '');
        assert.match(stdout, /mechanism|Unstable/);
    }
});

test('link and open are each other’s inverse, on every example', () => {
    for (const example of examples) {
        const link = answered(['link', example]).trimEnd();
        assert.match(link, /^#m=1\.[A-Za-z0-9_-]+\.\d+\.[0-9a-z]+$/);
        assert.equal(answered(['open', link]), readFileSync(path.join(root, example), 'utf8'));
        assert.equal(answered(['link', '-'], link).trimEnd(), link);
    }
});

test('a model is read from a path, a link or standard input', () => {
    const wanted = answered(['solve', footbridge]);
    const link = answered(['link', footbridge]).trimEnd();
    assert.equal(answered(['solve', link]), wanted);
    assert.equal(answered(['solve', `https://example.org/${link}`]), wanted);
    assert.equal(answered(['solve', '-'], readFileSync(path.join(root, footbridge))), wanted);
    assert.equal(answered(['solve', '-'], `${link}\n`), wanted);
});

test('unknown keys are kept, and noted where they stand', () => {
    const model = JSON.parse(readFileSync(path.join(root, footbridge), 'utf8'));
    model.joints[2].colour = 'red';
    const text = JSON.stringify(model);
    assert.match(answered(['check', '-'], text), /^joints\[2\]\.colour: /m);
    const results = JSON.parse(answered(['solve', '-', '--json'], text));
    assert.ok(results.notes.some(({ at }) => at === 'joints[2].colour'));
    assert.equal(JSON.parse(answered(['open', '-'], text)).joints[2].colour, 'red');
});

test('in node the answers are the same to the last digit, on every example', () => {
    for (const example of examples) {
        for (const words of [['solve', '--json'], ['working'], ['link']]) {
            assert.deepEqual(gussetInNode([...words, example]), gusset([...words, example]));
        }
    }
});
