// A server in the middle of an upload: each file comes from the folder, altered or refused as the test says.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { root } from './support.mjs';

const types = {
    '.css': 'text/css', '.html': 'text/html', '.js': 'text/javascript', '.json': 'application/json',
    '.png': 'image/png', '.svg': 'image/svg+xml', '.wasm': 'application/wasm',
    '.webmanifest': 'application/manifest+json',
};

// A copy of the site with some files edited, { name: (text) => text }, and its service worker regenerated as by the
// build.
export function siteWith(edits = {}) {
    const folder = mkdtempSync(path.join(tmpdir(), 'gusset-site-'));
    cpSync(path.join(root, 'build/site'), folder, { recursive: true });
    for (const [name, edit] of Object.entries(edits)) {
        const file = path.join(folder, name);
        writeFileSync(file, edit(readFileSync(file, 'utf8')));
    }
    execFileSync('cmake', ['-D', `FOLDER=${folder}`, '-D', `TEMPLATE=${path.join(root, 'site/sw.js.in')}`,
        '-D', `OUTPUT=${path.join(folder, 'sw.js')}`, '-P', path.join(root, 'site/cmake/precache.cmake')]);
    return { folder, remove: () => rmSync(folder, { recursive: true }) };
}

// What a network that asks for a password first answers to every request.
export const logIn = { type: 'text/html; charset=utf-8', bytes: '<!DOCTYPE html><title>Log in</title><p>Log in' };
export const hangs = { hangs: true }; // the head of a response, and then nothing more
export const noAnswer = { isCut: true };

function send(response, name, what) {
    if (what.isCut) {
        response.destroy();
        return;
    }
    const { status = 200, type = types[path.extname(name)] ?? 'text/plain', bytes = '' } = what;
    response.writeHead(status, { 'Content-Type': type, 'Cache-Control': 'no-cache' });
    if (what.hangs) {
        response.write(' ');
    } else {
        response.end(bytes);
    }
}

function answerOf(what, name) {
    if (typeof what === 'number') {
        return { status: what };
    }
    if (Buffer.isBuffer(what)) {
        return { bytes: what };
    }
    try {
        return typeof what === 'string' ? { bytes: readFileSync(path.join(what, name)) } : what;
    } catch {
        return { status: 404 };
    }
}

// Resolves to { address, serve, served, stop }. `serve(answer)`: from now on `answer(name)` returns the folder that
// a file comes from, its bytes, a status, or one of the above. `served.loads` counts how often the page itself was
// requested.
export async function openServer(first) {
    let answer = first;
    const served = { loads: 0 };
    const server = createServer((request, response) => {
        const asked = new URL(request.url, 'http://localhost').pathname.slice(1);
        const name = asked === '' || asked.endsWith('/') ? `${asked}index.html` : asked;
        served.loads += asked === '' ? 1 : 0;
        send(response, name, answerOf(answer(name), name));
    });
    await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
    server.unref(); // a test that fails before stop() must not keep its file from ending
    return {
        address: `http://localhost:${server.address().port}/`,
        serve: (next) => { answer = next; },
        served,
        stop: () => {
            server.closeAllConnections();
            server.close();
        },
    };
}
