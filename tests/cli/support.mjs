// Runs the command line as a user would, natively or as WebAssembly in node.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import path from 'node:path';

export const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');

// Standard input is empty unless given. Returns { status, stdout, stderr }.
export function gusset(words, input = '') {
    return run(path.join(root, 'build/dev/engine/gusset'), words, input);
}

// The answer of a command that must print nothing on standard error.
export function answered(words, input) {
    const { status, stdout, stderr } = gusset(words, input);
    assert.equal(stderr, '');
    assert.equal(status, 0);
    return stdout;
}

export function gussetInNode(words, input = '') {
    const program = path.join(root, 'build/web/engine/gusset.js');
    return run('node', ['--no-experimental-fetch', program, ...words], input);
}

function run(program, words, input) {
    const { status, stdout, stderr, error } = spawnSync(program, words, {
        input,
        encoding: 'utf8',
        cwd: root,
        timeout: 60_000,
        maxBuffer: 256 * 1024 * 1024,
    });
    if (error && error.code !== 'EPIPE') { // it need not read what it is given
        throw error;
    }
    return { status, stdout, stderr };
}
