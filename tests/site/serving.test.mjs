// Which files the build compresses, and that the server sends what a browser accepts.
import assert from 'node:assert/strict';
import { execFileSync, spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { createInterface } from 'node:readline';
import { after, before, test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
const text = 'A truss of pin-jointed members. '.repeat(100);
const noise = Buffer.concat(Array.from({ length: 100 }, (_, i) => createHash('sha256').update(`${i}`).digest()));

let folder;
let server;
let address;

const at = (name) => path.join(folder, name);
const compress = () => execFileSync('node', [path.join(root, 'site/cmake/compress.mjs'), folder]);
const isThere = (name) => existsSync(at(name));

before(async () => {
    folder = mkdtempSync(path.join(tmpdir(), 'site-'));
    mkdirSync(at('help'));
    writeFileSync(at('app.js'), text);
    writeFileSync(at('help/index.html'), text);
    writeFileSync(at('board.png'), noise);
    compress();
    server = spawn('python3', [path.join(root, 'site/static_server.py'), folder, '--port', '0']);
    for await (const line of createInterface({ input: server.stdout })) {
        address = line.match(/http:\/\/\S+/)[0];
        break;
    }
});

after(() => {
    server?.kill();
    rmSync(folder, { recursive: true });
});

// The response as sent, not decompressed.
function fetched(name, accepts) {
    return new Promise((resolve, reject) => {
        const headers = accepts === undefined ? {} : { 'Accept-Encoding': accepts };
        request(new URL(name, address), { headers }, (response) => {
            const parts = [];
            response.on('data', (part) => parts.push(part));
            response.on('end', () => resolve({
                status: response.statusCode,
                coding: response.headers['content-encoding'],
                type: response.headers['content-type'],
                length: Number(response.headers['content-length']),
                vary: response.headers.vary,
                body: Buffer.concat(parts),
            }));
        }).on('error', reject).end();
    });
}

test('files that compression makes smaller have both kinds beside them, in every folder; others have none', () => {
    for (const name of ['app.js', 'help/index.html']) {
        assert.equal(String(brotliDecompressSync(readFileSync(at(`${name}.br`)))), text);
        assert.equal(String(gunzipSync(readFileSync(at(`${name}.gz`)))), text);
    }
    assert.deepEqual(['board.png.br', 'board.png.gz', 'app.js.br.gz'].filter(isThere), []);
});

test('only what has changed is compressed again, and what is gone takes its compressed files along', () => {
    writeFileSync(at('old.js'), text);
    compress();
    const { mtimeMs } = statSync(at('app.js.br'));
    writeFileSync(at('new.js'), text);
    rmSync(at('old.js'));
    compress();
    assert.equal(statSync(at('app.js.br')).mtimeMs, mtimeMs);
    assert.deepEqual(['new.js.br', 'new.js.gz', 'old.js.br', 'old.js.gz'].map(isThere), [true, true, false, false]);
});

for (const [accepts, coding] of [
    ['gzip, deflate, br', 'br'], ['gzip, deflate', 'gzip'], ['gzip;q=0.5, br;q=0', 'gzip'],
    ['identity', undefined], ['br;q=0.0, gzip;q=0', undefined], [undefined, undefined],
]) {
    test(`a browser that accepts "${accepts ?? ''}" is given ${coding ?? 'the plain file'}`, async () => {
        const unpack = { br: brotliDecompressSync, gzip: gunzipSync }[coding] ?? ((bytes) => bytes);
        for (const [name, type] of [['app.js', /^text\/javascript/], ['help/', /^text\/html/]]) {
            const answer = await fetched(name, accepts);
            assert.equal(answer.status, 200);
            assert.equal(answer.coding, coding);
            assert.match(answer.type, type);
            assert.equal(answer.length, answer.body.length);
            assert.equal(answer.vary, 'Accept-Encoding');
            assert.equal(String(unpack(answer.body)), text);
        }
    });
}

test('what has no compressed file, or an older one, comes as it is', async () => {
    assert.deepEqual((await fetched('board.png', 'br, gzip')).body, noise);
    const late = Date.now() / 1000 + 10;
    writeFileSync(at('changed.js'), text);
    compress();
    writeFileSync(at('changed.js'), 'another text');
    utimesSync(at('changed.js'), late, late);
    const { coding, body } = await fetched('changed.js', 'br, gzip');
    assert.equal(coding, undefined);
    assert.equal(String(body), 'another text');
    const missing = await fetched('no-such.js', 'br');
    assert.equal(missing.status, 404);
    assert.equal(missing.coding, undefined);
});
