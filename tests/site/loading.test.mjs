// The scripts around the page, start.js and the service worker, with the browser's part played by stand-ins:
// what happens in an order that a browser can't be made to keep.
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';
import vm from 'node:vm';

const site = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../../site');
const settled = () => new Promise((resolve) => setImmediate(resolve));

// The caches of an origin, by name.
function cachesOf(kept) {
    return {
        has: async (name) => kept.has(name),
        keys: async () => [...kept.keys()],
        delete: async (name) => kept.delete(name),
        open: async (name) => {
            kept.set(name, kept.get(name) ?? new Map());
            const files = kept.get(name);
            return {
                match: async (file) => files.get(file)?.clone(),
                put: async (file, response) => { files.set(file, response); },
            };
        },
    };
}

// start.js in a page at this address; its fetches wait for `answer`.
function startingPage(address, kept = new Map()) {
    const heard = {};
    const marks = new Map();
    const page = { reloads: 0, heard, kept, unregistered: [] };
    const answered = new Promise((resolve) => { page.answer = () => resolve({ ok: true }); });
    const registrations = ['https://host/', 'https://host/one/', 'https://host/two/'].map((scope) =>
        ({ scope, unregister: () => page.unregistered.push(scope) }));
    page.scripts = vm.createContext({
        URL, Promise, caches: cachesOf(kept),
        fetch: () => answered,
        performance: { getEntriesByType: () => [{ name: `${address}app.js` }] },
        navigator: { serviceWorker: { getRegistrations: async () => registrations } },
        location: { href: address, origin: 'https://host', reload: () => { ++page.reloads; } },
        sessionStorage: {
            getItem: (key) => marks.get(key) ?? null,
            setItem: (key, value) => marks.set(key, value),
            removeItem: (key) => marks.delete(key),
        },
        document: {
            readyState: 'complete', getElementById: () => ({ append: () => {} }),
            createElement: () => ({ addEventListener: () => {} }),
        },
        addEventListener: (type, hears) => { heard[type] = hears; },
    });
    vm.runInContext(readFileSync(path.join(site, 'start.js'), 'utf8'), page.scripts);
    return page;
}

test('a page that starts after an error of something else is not loaded again, and nothing kept is dropped', async () => {
    const page = startingPage('https://host/one/', new Map([['gusset /one/ 1', new Map()]]));
    page.heard.unhandledrejection({ reason: new Error('from elsewhere') });
    await settled();
    page.scripts.gussetStart.succeeded();
    page.answer();
    await settled();
    assert.equal(page.reloads, 0);
    assert.deepEqual([...page.kept.keys()], ['gusset /one/ 1']);
    assert.deepEqual(page.unregistered, []);
});

test('a page that does not start drops what is kept of it, and of no other folder, and is loaded again', async () => {
    const kept = new Map([['gusset /one/ 1', new Map()], ['gusset /two/ 1', new Map()], ['other', new Map()]]);
    const page = startingPage('https://host/one/', kept);
    page.heard.error({ message: 'a script is damaged' });
    page.answer();
    await settled();
    assert.equal(page.reloads, 1);
    assert.deepEqual([...kept.keys()], ['gusset /two/ 1', 'other']);
    assert.deepEqual(page.unregistered, ['https://host/one/']);
});

// A service worker of a page in this folder of the host, which is made of `files`, { name: text }; the server
// answers what `server(name)` gives back.
function workerOf(folder, version, files, kept, server) {
    const heard = {};
    const worker = { isRegistered: true };
    const sums = Object.entries(files).map(([name, text]) =>
        `'${name}': '${createHash('sha256').update(text).digest('hex')}',`).join('\n');
    vm.runInContext(readFileSync(path.join(site, 'sw.js.in'), 'utf8')
        .replace('@VERSION@', version).replace('@FILES@', sums), vm.createContext({
        caches: cachesOf(kept), crypto, URL, Response, Uint8Array,
        Request: class { constructor(name) { this.url = name; } },
        fetch: async ({ url }) => server(url),
        location: new URL(`https://host${folder}sw.js`),
        registration: { unregister: async () => { worker.isRegistered = false; } },
        clients: { claim: async () => {} },
        addEventListener: (type, hears) => { heard[type] = hears; },
    }));
    const event = (type, more = {}) => {
        let outcome;
        const take = (promise) => { outcome = promise; };
        heard[type]({ waitUntil: take, respondWith: take, ...more });
        return outcome;
    };
    worker.install = async () => {
        await event('install');
        await event('activate');
    };
    worker.get = (name) => event('fetch', { request: { method: 'GET', url: `https://host${folder}${name}` } });
    return worker;
}

test('two versions of the page on one host leave each other alone, and each forgets its own older one', async () => {
    const kept = new Map();
    const install = async (folder, version) => {
        const files = { './': `page ${version}`, 'app.js': `script ${version}` };
        const worker = workerOf(folder, version, files, kept, (name) => new Response(files[name]));
        await worker.install();
        return worker;
    };
    const one = await install('/gusset/', '1');
    await install('/gusset/next/', '2');
    assert.equal(kept.size, 2);
    assert.equal(await (await one.get('app.js')).text(), 'script 1');
    await install('/gusset/', '3');
    assert.equal(kept.size, 2);
    assert.ok([...kept.keys()].every((name) => /[23]$/.test(name)), [...kept.keys()].join());
});

for (const [status, isKept] of [[503, true], [500, true], [429, true], [404, false], [410, false]]) {
    test(`when a damaged file is answered with ${status} the rest is ${isKept ? 'kept' : 'given up'}`, async () => {
        const kept = new Map();
        const files = { './': 'page', 'app.js': 'script' };
        let now = 200;
        const worker = workerOf('/', '1', files, kept, (name) => new Response(files[name], { status: now }));
        await worker.install();
        [...kept.values()][0].set('app.js', new Response('damaged'));
        now = status;
        assert.equal((await worker.get('app.js')).type, 'error');
        assert.equal(kept.size === 1, isKept);
        assert.equal(worker.isRegistered, isKept);
    });
}
