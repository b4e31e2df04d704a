// Without a network, with a newer version on the server, and with an inconsistent server or cache.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { after, before, test } from 'node:test';
import path from 'node:path';
import { firstFrame, launch, linkTo, openPage, root, screenshot, serve, sizes } from './support.mjs';
import { openServer, siteWith } from './upload.mjs';
import { cached, controlled, heading, keeping, takesUpdate, title, updated, visit } from './versions.mjs';

let browser;
let old; // two versions of the site
let next;

before(async () => {
    browser = await launch();
    old = siteWith();
    // Page, program and worker's list all differ: a mixture of the two versions is neither.
    next = siteWith({
        'index.html': title('Gusset', 'Gusset, next'),
        'app.js': (script) => `${script}\ndocument.documentElement.dataset.version = 'next';\n`,
        'storage.js': (script) => `${script}\nexport const isNext = true;\n`,
        'files.js': (script) => `${script}\nexport const isNext = true;\n`,
        'failure.js': (script) => script.replace(/import \{ /, 'import { isNext, '),
    });
});

after(async () => {
    await browser?.close();
    old?.remove();
    next?.remove();
});

// The page of the old version, controlled by its worker.
const visited = (options) => visit(browser, old.folder, options);

// Replaces the content of a file that the worker keeps.
const damage = (page, name, content) => page.evaluate(async ([file, text]) => {
    const cache = await caches.open((await caches.keys())[0]);
    const { headers } = await cache.match(file);
    await cache.put(file, new Response(text ?? (await (await cache.match(file)).arrayBuffer()).slice(0, 1000),
        { headers }));
}, [name, content]);

const lengthKept = (page, name) => page.evaluate(async (file) => {
    const cache = await caches.open((await caches.keys())[0]);
    return (await (await cache.match(file)).arrayBuffer()).byteLength;
}, name);

test('after the first visit the page starts without a network', async () => {
    const site = await serve();
    const { page, context, errors } = await openPage(browser, site.address, { ...sizes.desktop, ...keeping });
    await page.goto(site.address);
    await firstFrame(page);
    await controlled(page);
    site.stop();
    await page.reload();
    await firstFrame(page);
    assert.match(await page.locator('#tables-content h2').textContent(), /\w/);
    const example = await page.evaluate(async () => (await fetch('examples/footbridge.json')).ok);
    assert.equal(example, true, 'the examples are there too');
    await page.goto(`${site.address}help/`);
    assert.match(await heading(page), /\w/, 'and the manual');
    await page.goto(`${site.address}course/${linkTo('footbridge.json')}`);
    await page.locator('html[data-ready]').waitFor();
    await page.getByRole('button', { name: 'Make the link' }).click();
    await page.locator('#made:not([hidden])').waitFor(); // by its program, in a worker
    assert.deepEqual(errors, []);
    await context.close();
});

test('a newer version is offered, taken when the person says so, and leaves one cache', async () => {
    const { page, server, close } = await visited();
    const [before] = await cached(page);
    server.serve(() => next.folder);
    await page.reload();
    await firstFrame(page);
    assert.equal(await heading(page), 'Gusset', 'not forced');
    await takesUpdate(page);
    assert.equal(await heading(page), 'Gusset, next');
    const names = await cached(page);
    assert.equal(names.length, 1);
    assert.notEqual(names[0], before);
    await close();
});

test('a newer version that another tab has let in is used when this tab says so too', async () => {
    const { page, context, server, close } = await visited();
    const other = await context.newPage();
    await other.goto(server.address);
    await firstFrame(other);
    server.serve(() => next.folder);
    assert.equal(await updated(page), 'installed');
    await other.locator('#update').waitFor({ state: 'visible' });
    await takesUpdate(other);
    assert.equal(await heading(page), 'Gusset', 'not forced here');
    await takesUpdate(page);
    assert.equal(await heading(page), 'Gusset, next');
    await close();
});

const half = (name) => (['sw.js', 'app.js', 'storage.js'].includes(name) ? next.folder : old.folder);
const cutShort = (name) =>
    name === 'gusset.wasm' ? readFileSync(path.join(next.folder, name)).subarray(0, 100_000) : next.folder;
const lacking = (name) => (name === 'failure.js' ? 404 : next.folder);

for (const [what, answer] of Object.entries({
    'half of its files are still old': half,
    'one of its files is cut short': cutShort,
    'one of its files is missing': lacking,
})) {
    test(`an update is not taken while ${what}, and is when the upload is through`, async () => {
        const { page, server, close } = await visited();
        const before = await cached(page);
        server.serve(answer);
        assert.equal(await updated(page), 'redundant');
        assert.deepEqual(await cached(page), before, 'nothing of it stays');
        await page.reload();
        await firstFrame(page);
        assert.equal(await heading(page), 'Gusset', 'the version before is in charge');
        assert.equal(await page.locator('#update').isVisible(), false, 'and nothing else is offered');

        server.serve(() => next.folder);
        await page.reload();
        await firstFrame(page);
        await takesUpdate(page);
        assert.equal(await heading(page), 'Gusset, next');
        assert.equal(await page.evaluate(() => document.documentElement.dataset.version), 'next');
        await close();
    });
}

test('while the list of files is still the old one and the files are new, the old page stays whole', async () => {
    const { page, server, close } = await visited();
    server.serve((name) => (name === 'sw.js' ? old.folder : next.folder));
    await page.reload();
    await firstFrame(page);
    assert.equal(await heading(page), 'Gusset');
    assert.equal(await page.evaluate(() => document.documentElement.dataset.version), undefined);
    await close();
});

for (const name of ['app.js', 'gusset.wasm', 'start.js', './']) {
    test(`a damaged ${name} in the cache is mended from the network, and the page starts`, async () => {
        const { page, server, close } = await visited();
        const length = await lengthKept(page, name);
        await damage(page, name);
        assert.equal(await lengthKept(page, name), 1000);
        const { loads } = server.served;
        await page.reload();
        await firstFrame(page);
        assert.equal(await lengthKept(page, name), length, 'for good');
        assert.ok(server.served.loads <= loads + 1, 'without starting again');
        server.stop();
        await page.reload();
        await firstFrame(page);
        await close();
    });
}

test('a wrong file of the right length is never handed out', async () => {
    const { page, close } = await visited();
    const length = await lengthKept(page, 'examples/footbridge.json');
    await damage(page, 'examples/footbridge.json', ' '.repeat(length));
    const text = await page.evaluate(async () => (await fetch('examples/footbridge.json')).text());
    assert.equal(text, readFileSync(path.join(root, 'site/examples/footbridge.json'), 'utf8'));
    await close();
});

for (const name of ['storage.js', './']) {
    test(`a damaged ${name} that the server has no more gives way to the new version, whole`, async () => {
        const { page, server, close } = await visited();
        server.serve((file) => (file === 'sw.js' ? old.folder : next.folder));
        await damage(page, name);
        await page.goto(server.address).catch(() => {}); // it may restart meanwhile
        await page.waitForFunction(() => document.documentElement?.dataset.version === 'next');
        await firstFrame(page);
        assert.equal(await heading(page), 'Gusset, next');
        await close();
    });
}

test('a damaged page without a network says that it is damaged, and comes back with the network', async () => {
    const { page, context, server, close } = await visited();
    await damage(page, './');
    await context.setOffline(true);
    await page.reload();
    assert.match(await page.locator('p').textContent(), /damaged.*boards are still there.*online/s);
    await context.setOffline(false);
    await page.goto(server.address);
    await firstFrame(page);
    await close();
});

for (const [what, fault] of Object.entries({
    'a script is missing': (name) => (name === 'failure.js' ? 404 : old.folder),
    'a script is cut short': (name) =>
        name === 'storage.js' ? readFileSync(path.join(old.folder, name)).subarray(0, 2000) : old.folder,
    'the program is cut short': (name) =>
        name === 'gusset.wasm' ? readFileSync(path.join(old.folder, name)).subarray(0, 100_000) : old.folder,
    'two versions are mixed': (name) => (name === 'failure.js' ? next.folder : old.folder),
    'the program is missing': (name) => (name === 'gusset.js' ? 404 : old.folder),
})) {
    test(`on the first visit, when ${what}, the page says so, tries once more, and never goes round`, async () => {
        const server = await openServer(fault);
        const { page, context } = await openPage(browser, server.address, { ...sizes.desktop, ...keeping });
        await page.goto(server.address);
        const button = page.locator('#status button');
        await button.waitFor({ state: 'visible' });
        assert.match(await page.locator('#status').textContent(), /did not start.*Your boards are still in this/);
        // Requested at its start and, each time, once more afresh.
        const { loads } = server.served;
        assert.ok(loads >= 1 && loads <= 4, `${loads} loads`);
        assert.deepEqual(await cached(page), [], 'and nothing of it is kept');

        server.serve(() => old.folder);
        await Promise.all([page.waitForEvent('load'), button.click()]);
        await firstFrame(page);
        assert.equal(await page.locator('#status').isVisible(), false);
        await context.close();
        server.stop();
    });
}

for (const [name, size] of Object.entries(sizes)) {
    test(`what a page that did not start says can be read on a ${name}`, async () => {
        const server = await openServer((file) => (file === 'failure.js' ? 404 : old.folder));
        const { page, context } = await openPage(browser, server.address, { ...size, ...keeping });
        await page.goto(server.address);
        const button = page.locator('#status button');
        await button.waitFor({ state: 'visible' });
        const box = await button.boundingBox();
        assert.ok(box.height >= 44 && box.x >= 0 && box.x + box.width <= size.viewport.width);
        await screenshot(page, `not-started-${name}`);
        await context.close();
        server.stop();
    });
}
