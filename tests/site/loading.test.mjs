// start.js and the service worker, run with stand-ins for the browser: for orders of events that a real browser can't
// be made to produce.
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';
import vm from 'node:vm';

const site = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../../site');
// Waits for everything in progress: stand-ins that answer at once are done after this many turns of the event loop.
async function settled() {
    for (let i = 0; i < 20; ++i) {
        await new Promise((resolve) => setImmediate(resolve));
    }
}

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

// start.js in a page at this address. Its fetches wait for `page.answer()`, its timers for `page.pass()`.
function startingPage(address, kept = new Map()) {
    const heard = {};
    const marks = new Map();
    const page = { reloads: 0, heard, kept, unregistered: [], status: { append: () => {} } };
    const answered = new Promise((resolve) => {
        page.answer = (type = 'text/javascript') => resolve(new Response('', { headers: { 'content-type': type } }));
    });
    const timers = [];
    page.pass = () => timers.splice(0).forEach((ring) => ring());
    const registrations = ['https://host/', 'https://host/one/', 'https://host/two/'].map((scope) =>
        ({ scope, unregister: () => page.unregistered.push(scope) }));
    page.scripts = vm.createContext({
        URL, Promise, caches: cachesOf(kept),
        fetch: async () => (await answered).clone(),
        setTimeout: (ring) => timers.push(ring),
        performance: { getEntriesByType: () => [{ name: `${address}app.js` }] },
        navigator: { serviceWorker: { getRegistrations: async () => registrations } },
        location: { href: address, hash: '', origin: 'https://host', reload: () => { ++page.reloads; } },
        sessionStorage: {
            getItem: (key) => marks.get(key) ?? null,
            setItem: (key, value) => marks.set(key, value),
            removeItem: (key) => marks.delete(key),
        },
        document: {
            readyState: 'complete', getElementById: () => page.status,
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

test('a network that answers everything with a page of its own makes nobody drop what is kept', async () => {
    const page = startingPage('https://host/one/', new Map([['gusset /one/ 1', new Map()]]));
    page.heard.error({ message: 'a script is damaged' });
    page.answer('text/html; charset=utf-8');
    await settled();
    assert.equal(page.reloads, 0);
    assert.equal(page.kept.size, 1);
    assert.deepEqual(page.unregistered, []);
    assert.match(page.status.textContent, /could not be fetched afresh.*Your boards are still/);
});

test('a page that is still being loaded after a long time says so, and one that has started does not', async () => {
    const page = startingPage('https://host/one/');
    page.pass();
    await settled();
    assert.match(page.status.textContent, /taking a while.*goes on by itself/);
    const started = startingPage('https://host/one/');
    started.scripts.gussetStart.succeeded();
    started.pass();
    await settled();
    assert.equal(started.status.textContent, undefined);
});

test('a page that waits in vain to be fetched afresh says so', async () => {
    const page = startingPage('https://host/one/', new Map([['gusset /one/ 1', new Map()]]));
    page.heard.error({ message: 'a script is damaged' });
    await settled();
    page.pass();
    await settled();
    assert.match(page.status.textContent, /could not be fetched afresh/);
    assert.equal(page.kept.size, 1);
});

test('a browser that refuses caches has the page loaded again all the same', async () => {
    const page = startingPage('https://host/one/');
    page.scripts.caches.keys = async () => { throw new Error('private'); };
    page.heard.error({ message: 'a script is damaged' });
    page.answer();
    await settled();
    assert.equal(page.reloads, 1);
});

// The service worker of a page in this folder of the host, made of `files`, { name: text }; the server answers with the
// result of `server(name)`. `worker.pass()` lets the time pass that a hanging network is given.
function workerOf(folder, version, files, kept, server) {
    const heard = {};
    const timers = new Set();
    const worker = { isRegistered: true, caches: cachesOf(kept), timers };
    const sums = Object.entries(files).map(([name, text]) =>
        `'${name}': '${createHash('sha256').update(text).digest('hex')}',`).join('\n');
    vm.runInContext(readFileSync(path.join(site, 'sw.js.in'), 'utf8')
        .replace('@VERSION@', version).replace('@FILES@', sums), vm.createContext({
        caches: worker.caches, crypto, AbortController, Blob, URL, Response, TextDecoder, Uint8Array,
        Request: class {
            constructor(name, { signal }) {
                this.url = name;
                this.signal = signal;
            }
        },
        fetch: ({ url, signal }) => Promise.race([
            Promise.resolve(server(url, signal)),
            new Promise((resolve, reject) => signal?.addEventListener('abort', () => reject(signal.reason))),
        ]),
        setTimeout: (ring) => {
            timers.add(ring);
            return ring;
        },
        clearTimeout: (ring) => timers.delete(ring),
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
    worker.pass = () => [...timers].forEach((ring) => ring());
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

// A worker whose complete cache has a damaged app.js, and whose server then gives `answers`.
async function workerWithDamage(answers) {
    const files = { './': 'page', 'app.js': 'script' };
    const kept = new Map();
    let server = (name) => new Response(files[name]);
    const worker = workerOf('/', '1', files, kept, (...all) => server(...all));
    await worker.install();
    [...kept.values()][0].set('app.js', new Response('damaged'));
    server = answers;
    return { worker, kept };
}

const list = () => new Response("// its list\nconst version = '2';\n");

for (const [status, isKept] of [[503, true], [500, true], [429, true], [404, false], [410, false]]) {
    test(`when a damaged file is answered with ${status} the rest is ${isKept ? 'kept' : 'given up'}`, async () => {
        const { worker, kept } = await workerWithDamage((name) =>
            (name === 'sw.js' ? list() : new Response('', { status })));
        assert.equal((await worker.get('app.js')).type, 'error');
        assert.equal(kept.size === 1, isKept);
        assert.equal(worker.isRegistered, isKept);
    });
}

for (const [what, answer] of Object.entries({
    'answers everything with a page of its own': () =>
        new Response('<!DOCTYPE html><p>Log in', { headers: { 'content-type': 'text/html' } }),
    'has lost everything': () => new Response('', { status: 404 }),
})) {
    test(`when a file is damaged and the server ${what} the rest is kept, and mended later`, async () => {
        const { worker, kept } = await workerWithDamage(answer);
        assert.equal((await worker.get('app.js')).type, 'error');
        assert.equal(kept.size, 1);
        assert.equal(worker.isRegistered, true);
        assert.equal(await (await worker.get('')).text(), 'page');
    });
}

// A response that sends the beginning of a file, then nothing more.
const hanging = (signal) => new Response(new ReadableStream({ start: (to) => {
    to.enqueue(new Uint8Array(3));
    signal.addEventListener('abort', () => to.error(signal.reason));
} }));

test('a network that hangs in the middle of a file is given up, and nothing of that version stays', async () => {
    const kept = new Map();
    const files = { './': 'page', 'app.js': 'script' };
    const worker = workerOf('/', '1', files, kept, (name, signal) =>
        (name === 'app.js' ? hanging(signal) : new Response(files[name])));
    const outcome = worker.install().then(() => 'installed', () => 'refused');
    await settled();
    assert.equal(worker.timers.size, 1, 'only the file that hangs is waited for');
    worker.pass();
    assert.equal(await outcome, 'refused');
    assert.equal(kept.size, 0);
});

test('a full disk refuses a version whole, and the one before it stays', async () => {
    const kept = new Map();
    const install = (version, isFull) => {
        const files = { './': `page ${version}`, 'app.js': `script ${version}` };
        const worker = workerOf('/', version, files, kept, (name) => new Response(files[name]));
        const { open } = worker.caches;
        worker.caches.open = async (name) => {
            const cache = await open(name);
            return !isFull ? cache : { ...cache, put: async (file, ...all) => {
                if (file === 'app.js') {
                    throw new DOMException('full', 'QuotaExceededError');
                }
                return cache.put(file, ...all);
            } };
        };
        return worker.install().then(() => worker);
    };
    const worker = await install('1', false);
    await assert.rejects(install('2', true), /full/);
    assert.deepEqual([...kept.keys()], ['gusset / 1']);
    assert.equal(await (await worker.get('app.js')).text(), 'script 1');
});

for (const [what, broken] of Object.entries({
    has: (caches) => { caches.has = async () => { throw new Error('internal error'); }; },
    open: (caches) => { caches.open = async () => { throw new Error('internal error'); }; },
    match: (caches) => {
        const { open } = caches;
        caches.open = async (name) => ({ ...await open(name), match: async () => { throw new Error('internal error'); } });
    },
})) {
    test(`a cache storage that fails at "${what}" is as good as none: the page comes from the network`, async () => {
        const files = { './': 'page', 'app.js': 'script' };
        const worker = workerOf('/', '1', files, new Map(), (name) =>
            new Response(files[name.replace('https://host/', '')]));
        await worker.install();
        broken(worker.caches);
        assert.equal(await (await worker.get('app.js')).text(), 'script');
    });
}
