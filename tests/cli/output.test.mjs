// The output of the command line: failing to write it is an error, a reader that closes the pipe is not, and text is
// UTF-8 whatever bytes came in.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { test } from 'node:test';
import { gusset, gussetInNode, root } from './support.mjs';

const programs = {
    natively: `'${path.join(root, 'build/dev/engine/gusset')}'`,
    'in node': `node --no-experimental-fetch '${path.join(root, 'build/web/engine/gusset.js')}'`,
};
const bridge = 'site/examples/farm_bridge.json';

// Runs a line of shell, in which $GUSSET stands for the program.
function shell(program, line) {
    const script = `set -o pipefail; ${line.replaceAll('$GUSSET', program)}`;
    const { status, stdout, stderr } = spawnSync('bash', ['-c', script], { encoding: 'utf8', cwd: root, timeout: 60_000 });
    return { status, stdout, stderr };
}

for (const [where, program] of Object.entries(programs)) {
    for (const [name, line] of Object.entries({
        'a full disk': `$GUSSET solve ${bridge} >/dev/full`,
        'a long answer on a full disk': `$GUSSET working ${bridge} --html >/dev/full`,
        'help on a full disk': '$GUSSET --help >/dev/full',
        // Node reopens a closed output before it runs any program.
        ...(where === 'natively' && { 'a closed output': `$GUSSET solve ${bridge} >&-` }),
        'a mechanism on a full disk': '$GUSSET check site/examples/missing_diagonal.json >/dev/full',
    })) {
        test(`${name}, ${where}: exit status 4 and a line that says so`, () => {
            const { status, stderr } = shell(program, line);
            assert.equal(status, 4);
            assert.match(stderr, /^gusset: the answer could not be written \(.+\): make room, or write it somewhere else\n$/m);
        });
    }

    test(`a reader that has had enough, ${where}: not a word, and the exit status of the answer`, () => {
        const { status, stdout, stderr } = shell(program, `$GUSSET working ${bridge} --html | head -c 1`);
        assert.equal(stderr, '');
        assert.equal(stdout, '<');
        assert.equal(status, 0);
        const gone = shell(program, `$GUSSET check site/examples/missing_diagonal.json | true`);
        assert.equal(gone.stderr, '');
        assert.equal(gone.status, 1);
    });
}

test('nothing to write is nothing lost', () => {
    assert.equal(shell(programs.natively, `$GUSSET solve no/such.json >/dev/full`).status, 2);
});

// The bytes of a Latin-1 "é" and of a surrogate are not UTF-8.
test('JSON is UTF-8 whatever the words of the command line are', () => {
    for (const line of [
        `$GUSSET solve $'caf\\xe9.json' --json`,
        `$GUSSET solve ${bridge} --json --case $'\\xed\\xa0\\x80'`,
        `$GUSSET influence ${bridge} --path $'A,\\xff' --of member:A-B --json`,
        `$GUSSET solve $'#j=%7B%22gusset%22%3A1%2C%22\\xff%22%3A1%7D' --json`,
        `printf '{"gusset":1,"\\xff":1}' | $GUSSET solve - --json`,
    ]) {
        const { status, stdout, stderr } = spawnSync('bash', ['-c', line.replaceAll('$GUSSET', programs.natively)], { cwd: root });
        assert.equal(status, 2, line);
        const strict = new TextDecoder('utf-8', { fatal: true });
        assert.equal(JSON.parse(strict.decode(stdout)).status, 'invalid', line);
        assert.doesNotThrow(() => strict.decode(stderr), line);
    }
});

const hidden = {
    gusset: 1,
    joints: [{ id: 'A', x: 0, y: 0 }, { id: 'B\u200b', x: 8, y: 0 }, { id: 'C\uffff', x: 4, y: 3 }],
    members: [{ a: 'A', b: 'B\u200b' }, { a: 'A', b: 'C\uffff' }, { a: 'B\u200b', b: 'C\uffff' }],
    supports: [{ joint: 'A', kind: 'pin' }, { joint: 'B\u200b', kind: 'roller', reaction: 90 }],
    loads: [{ joint: 'C\uffff', fy: -24 }],
};

test('names are read without what can not be seen, and every command says so', () => {
    const said = /the name "B\[U\+200B\]" has characters in it that can't be seen: it is read as "B"/;
    for (const words of [
        ['solve', '-'], ['solve', '-', '--csv'], ['solve', '-', '--json'], ['check', '-'], ['working', '-'],
        ['envelope', '-'], ['influence', '-', '--path', 'A,B', '--of', 'member:A-B'], ['link', '-'], ['open', '-'],
        ['check', '-', '--members'], ['check', '-', '--members', '--worst'],
    ]) {
        const { status, stdout, stderr } = gusset(words, JSON.stringify(hidden));
        assert.equal(status, 0, words.join(' '));
        assert.match(stdout.replaceAll('\\"', '"') + stderr, said, words.join(' '));
        assert.doesNotMatch(stdout, /[\u200b\uffff]/, words.join(' '));
        assert.deepEqual(gussetInNode(words, JSON.stringify(hidden)), { status, stdout, stderr });
    }
});

test('no drawing holds a character that XML forbids', () => {
    const model = structuredClone(hidden);
    model.loads[0]['\ufffe'] = 'a key that is kept';
    for (const words of [['working', '-', '--polygon', '--svg'], ['working', '-', '--html']]) {
        const { stdout } = gusset(words, JSON.stringify(model));
        assert.doesNotMatch(stdout, /[\ufffe\uffff]/);
    }
    assert.match(gusset(['check', '-'], JSON.stringify(model)).stdout, /the key "\[U\+FFFE\]" is unknown here/);
});

test('names that look the same are refused in words', () => {
    for (const [one, other, says] of [
        ['A', 'A\u200b', /^joints\[1\]\.id: "A\[U\+200B\]" looks the same as "A"/],
        ['\u00e9', 'e\u0301', /^joints\[1\]\.id: "e\u0301" looks the same as "\u00e9"/],
    ]) {
        const model = { gusset: 1, joints: [{ id: one, x: 0, y: 0 }, { id: other, x: 1, y: 0 }], members: [{ a: one, b: other }] };
        const { status, stderr } = gusset(['check', '-'], JSON.stringify(model));
        assert.equal(status, 2);
        assert.match(stderr, says);
    }
});

test('a key with controls in it can not give orders to a terminal', () => {
    const model = { ...hidden, 'x\u001b[2J\u009b31m\u202e': 1 };
    const { stdout, stderr } = gusset(['check', '-'], JSON.stringify(model));
    assert.match(stdout, /the key "x\[U\+001B\]\[2J\[U\+009B\]31m\[U\+202E\]" is unknown here/);
    assert.doesNotMatch(stdout + stderr, /[\u001b\u009b\u202e]/);
});
