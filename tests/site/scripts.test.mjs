// site/setup and the server of the page on a machine where something is missing or in use.
import assert from 'node:assert/strict';
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { createInterface } from 'node:readline';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');

// Runs site/setup with the named programs replaced by these shell scripts.
function setupWith(programs) {
    const folder = mkdtempSync(path.join(tmpdir(), 'setup-'));
    for (const [name, script] of Object.entries(programs)) {
        writeFileSync(path.join(folder, name), `#!/bin/sh\n${script}\n`, { mode: 0o755 });
    }
    const { status, stdout, stderr } = spawnSync(path.join(root, 'site/setup'), {
        encoding: 'utf8',
        env: { ...process.env, PATH: `${folder}:${process.env.PATH}`, STUBS: folder },
    });
    const aptWasCalled = existsSync(path.join(folder, 'called'));
    rmSync(folder, { recursive: true });
    return { status, stdout, stderr, aptWasCalled };
}

const noNetwork = `touch "$STUBS/called"
echo "E: Failed to fetch the package list: Temporary failure resolving 'mirror'" >&2
exit 100`;

test('where nothing is missing, setup asks the network for nothing', () => {
    const { status, stdout, aptWasCalled } = setupWith({ 'apt-get': noNetwork });
    assert.equal(status, 0);
    assert.equal(stdout, '');
    assert.equal(aptWasCalled, false);
});

test('without a network, setup names the packages it could not install, and why', () => {
    const { status, stderr } = setupWith({
        'apt-get': noNetwork,
        'dpkg-query': 'exit 1', // nothing is installed
        sudo: 'exec "$@"',
    });
    assert.equal(status, 1);
    assert.match(stderr, /could not install: .*libeigen3-dev .*libboost-dev/);
    assert.match(stderr, /Temporary failure resolving/);
});

test('a port in use is reported, and the next one is taken', async () => {
    const holder = createServer().listen(0, '127.0.0.1');
    await once(holder, 'listening');
    const { port } = holder.address();
    const script = path.join(root, 'site/static_server.py');
    const server = spawn('python3', [script, root, '--port', String(port)]);
    const said = [];
    try {
        for await (const line of createInterface({ input: server.stdout })) {
            said.push(line);
            if (line.startsWith('Gusset is at')) {
                break;
            }
        }
        assert.equal(said[0], `Port ${port} is in use; trying ${port + 1}.`);
        assert.ok(Number(said.at(-1).match(/localhost:(\d+)\//)[1]) > port, said.join('\n'));
    } finally {
        server.kill();
        holder.close();
    }
});
