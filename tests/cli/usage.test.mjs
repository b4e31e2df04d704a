// Wrong use of the command line: exit status 3; the first line says what is wrong, then comes the usage.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { gusset, gussetInNode, root } from './support.mjs';

const footbridge = 'site/examples/footbridge.json';

const misuses = {
    'no command': [],
    'an unknown command': ['solv', footbridge],
    'no file': ['solve'],
    'two files': ['solve', footbridge, footbridge],
    'an unknown option': ['solve', footbridge, '--fast'],
    'an option of another command': ['link', footbridge, '--json'],
    'two forms at once': ['solve', footbridge, '--json', '--csv'],
    'an option twice': ['solve', footbridge, '--json', '--json'],
    'a case and a combination': ['solve', footbridge, '--case', 'a', '--combination', 'b'],
    'an option without its value': ['solve', footbridge, '--case'],
    'a value where none belongs': ['solve', footbridge, '--json=yes'],
    'an empty value': ['solve', footbridge, '--case', ''],
    'an empty value behind =': ['solve', footbridge, '--case='],
    'an option where a value belongs': ['solve', footbridge, '--case', '--json'],
    'an option before the command': ['--json', 'solve', footbridge],
    'an empty file name': ['solve', ''],
    'an option behind --': ['solve', '--', footbridge, '--json'],
    'help of an unknown command': ['help', 'solv'],
};

for (const [name, words] of Object.entries(misuses)) {
    test(`${name}: said on standard error, exit status 3`, () => {
        const { status, stdout, stderr } = gusset(words);
        assert.equal(status, 3);
        assert.equal(stdout, '');
        assert.match(stderr, /^gusset: .+\.\nUsage:\n/);
    });
}

test('--help shows the usage', () => {
    const { status, stdout, stderr } = gusset(['--help']);
    assert.equal(status, 0);
    assert.equal(stderr, '');
    assert.match(stdout, /gusset solve FILE/);
});

const commandNames = ['solve', 'working', 'influence', 'envelope', 'check', 'report', 'exercise', 'lesson', 'export', 'handout', 'trace', 'lines', 'form', 'combine', 'size', 'profiles', 'link', 'open'];

test('each command has its own help: what it takes, how it ends, an example', () => {
    for (const name of commandNames) {
        const { status, stdout, stderr } = gusset([name, '--help']);
        assert.equal(status, 0);
        assert.equal(stderr, '');
        assert.ok(stdout.startsWith(`Usage:\n  gusset ${name} `));
        assert.match(stdout, /Exit status: 0 answered; 1 .*; 2 .*;\n3 .*; 4 /);
        assert.match(stdout, new RegExp(`\nExample:\n  gusset ${name} `));
        assert.ok(stdout.split('\n').slice(2).every((line) => line.length <= 100), name);
        assert.equal(gusset(['help', name]).stdout, stdout);
        assert.equal(gusset(['--help', name]).stdout, stdout);
        assert.equal(gusset([name, footbridge, '-h']).stdout, stdout);
    }
});

test('the help of a command tells of every option that its usage lists', () => {
    for (const name of commandNames) {
        const [, usage, ...rest] = gusset([name, '--help']).stdout.split('\n');
        for (const option of usage.match(/--[a-z-]+/g) ?? []) {
            assert.ok(rest.some((line) => line.startsWith(`  ${option}`)), `${name} ${option}`);
        }
    }
});

test('the example in a command’s help is answered', () => {
    for (const name of commandNames) {
        const example = gusset([name, '--help']).stdout.trimEnd().split('\n').at(-1).trim();
        const program = `'${path.join(root, 'build/dev/engine/gusset')}'`;
        const { status } = spawnSync('bash', ['-c', example.replaceAll('gusset ', `${program} `)], { cwd: root });
        assert.equal(status, 0, example);
    }
});

test('--version tells the version of the program, and of the formats that it reads', () => {
    const version = readFileSync(path.join(root, 'CMakeLists.txt'), 'utf8').match(/project\(gusset VERSION ([\d.]+)/)[1];
    const { status, stdout } = gusset(['--version']);
    assert.equal(status, 0);
    assert.equal(stdout, `gusset ${version}\nReads and writes model files of version 1 and links of form 1.\n`);
});

test('behind -- a file may begin with a hyphen', () => {
    const { status, stderr } = gusset(['solve', '--json', '--', '--odd.json']);
    assert.equal(status, 2);
    assert.equal(stderr, '--odd.json: there is no such file: name an existing one\n');
    assert.equal(gusset(['solve', '--', footbridge]).stdout, gusset(['solve', footbridge]).stdout);
});

test('options stand before or behind the file', () => {
    assert.equal(gusset(['solve', '--json', footbridge]).stdout, gusset(['solve', footbridge, '--json']).stdout);
});

test('in node it answers as it does natively', () => {
    for (const words of [[], ['--help'], ['--version'], ['working', '--help'], ['solve', 'site'], ['solve', 'no/such']]) {
        assert.deepEqual(gussetInNode(words), gusset(words));
    }
});
