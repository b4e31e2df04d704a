// The program comes in two parts (site/split): with the first alone the page shows its first picture, and it can be
// edited once the rest is there. What that costs, and what happens to a page whose rest does not arrive.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { after, before, test } from 'node:test';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { boardOf, dragJoint } from './board.mjs';
import {
    firstFrame, firstPicture, linkTo, openPage, root, screenshot, siteAndBrowser, sizes,
} from './support.mjs';
import { hangs, logIn, noAnswer, openServer, siteWith } from './upload.mjs';
import { cached } from './versions.mjs';

const mostBytes = 400_000; // of a first visit up to its first picture, each file compressed by gzip -9

const shared = siteAndBrowser();
let site; // a copy, for servers that fail

before(() => { site = siteWith(); });
after(() => site?.remove());

const hasMark = (page, name) => page.evaluate((mark) => performance.getEntriesByName(mark).length > 0, name);

// A page whose rest is delivered when `letGo` is called.
async function openHeld(fragment = '', size = sizes.desktop) {
    const opened = await openPage(shared.browser, shared.site.address, size);
    let letGo;
    const held = new Promise((resolve) => { letGo = resolve; });
    await opened.page.route('**/gusset-rest.wasm', async (route) => {
        await held;
        await route.continue();
    });
    await opened.page.goto(`${shared.site.address}?test${fragment}`);
    return { ...opened, letGo };
}

for (const [name, size] of Object.entries(sizes)) {
    test(`on a ${name} a linked truss is seen before the rest of the program is there, and worked on after`, async () => {
        const { page, context, errors, letGo } = await openHeld(linkTo('footbridge.json'), size);
        await firstPicture(page);
        await page.locator('#status', { hasText: 'Loading the rest' }).waitFor({ state: 'visible' });
        assert.match(await page.locator('#tables-content p').first().textContent(), /determinate/i, 'it is solved');
        assert.equal(await hasMark(page, 'can-edit'), false);
        await screenshot(page, `picture-${name}`);
        letGo();
        const board = await boardOf(page, size);
        assert.equal(await page.locator('#status').isVisible(), false);
        assert.equal(await hasMark(page, 'waited-for-the-rest'), false);
        const before = (await board.observe()).model;
        await dragJoint(board, 'C', 40, 0);
        assert.notDeepEqual((await board.observe()).model, before);
        assert.deepEqual(errors, []);
        await context.close();
    });
}

test('what the first picture needs is light', async () => {
    const { page, context, responses, letGo } = await openHeld(linkTo('footbridge.json'));
    await firstPicture(page);
    const bodies = await Promise.all(responses.map((response) => response.body()));
    const bytes = bodies.reduce((sum, body) => sum + gzipSync(body, { level: 9 }).length, 0);
    assert.ok(bytes > 100_000, 'the program is among it');
    assert.ok(bytes <= mostBytes, `${bytes} bytes`);
    letGo();
    await context.close();
});

const { examples } = JSON.parse(readFileSync(path.join(root, 'site/examples/index.json'), 'utf8'));
const later = ['braced_tower.json', 'farm_bridge.json', 'missing_diagonal.json']; // site/split/split.mjs

for (const [at, { file, title }] of examples.entries()) {
    const waits = later.includes(file);
    test(`the first picture of ${file} ${waits ? 'waits' : 'does not wait'} for the rest`, async () => {
        const size = Object.values(sizes)[at % 3];
        const { page, context, errors } = await openPage(shared.browser, shared.site.address, size);
        await page.goto(`${shared.site.address}?test${linkTo(file)}`);
        const board = await boardOf(page, size);
        assert.equal((await board.observe()).model.title, title);
        assert.equal(await hasMark(page, 'waited-for-the-rest'), waits);
        assert.deepEqual(errors, []);
        await context.close();
    });
}

test('a stored board that shows more than the first part can draw is there after a reload as it was', async () => {
    const { page, context } = await openPage(shared.browser, shared.site.address);
    await page.goto(`${shared.site.address}?test${linkTo('braced_tower.json')}`);
    const board = await boardOf(page, sizes.desktop);
    await dragJoint(board, 'C', 20, 0);
    await board.press('Working');
    const { model } = await board.observe();
    await page.reload();
    const after = await boardOf(page, sizes.desktop);
    assert.equal(await hasMark(page, 'waited-for-the-rest'), true);
    assert.deepEqual((await after.observe()).model, model);
    await page.waitForFunction(() => window.gussetTest.observe().working);
    await context.close();
});

test('a link that is put in the address while the rest is on its way is opened when it is there', async () => {
    const { page, context, letGo } = await openHeld(linkTo('footbridge.json'));
    await firstPicture(page);
    await page.evaluate((link) => { location.hash = link; }, linkTo('cottage_roof.json'));
    letGo();
    await boardOf(page, sizes.desktop);
    await page.waitForFunction(() => window.gussetTest.observe().model.title.startsWith('Cottage roof'));
    await context.close();
});

const rest = (answer) => (name) => (name === 'gusset-rest.wasm' ? answer() : site.folder);
const bytesOf = (name) => readFileSync(path.join(site.folder, name));

// The rest of another build: identical except for the name through which the parts call each other.
function ofAnotherBuild() {
    const module = new WebAssembly.Module(bytesOf('gusset-rest.wasm'));
    const { module: name } = WebAssembly.Module.imports(module)[0];
    const text = bytesOf('gusset-rest.wasm').toString('latin1');
    return Buffer.from(text.replaceAll(name, '0'.repeat(name.length)), 'latin1');
}

for (const [what, answer] of Object.entries({
    'is missing': () => 404,
    'is cut short': () => bytesOf('gusset-rest.wasm').subarray(0, 100_000),
    'is of another build': ofAnotherBuild,
    'is a log-in page': () => logIn,
    'does not come, as the network is gone': () => noAnswer,
})) {
    test(`when the rest of the program ${what}, the page says so, and starts when it is there`, async () => {
        const server = await openServer(rest(answer));
        const { page, context } = await openPage(shared.browser, server.address);
        await page.goto(server.address);
        const button = page.locator('#status button');
        await button.waitFor({ state: 'visible' });
        assert.match(await page.locator('#status').textContent(), /did not start.*Your boards are still in this/);
        assert.ok(server.served.loads <= 4, `${server.served.loads} loads`);
        assert.deepEqual(await cached(page), [], 'and nothing of it is kept');
        await screenshot(page, 'no-rest');
        server.serve(() => site.folder);
        await Promise.all([page.waitForEvent('load'), button.click()]);
        await firstFrame(page);
        assert.equal(await page.locator('#status').isVisible(), false);
        await context.close();
        server.stop();
    });
}

test('a rest that fails before the first picture is reported after it', async () => {
    const server = await openServer(rest(() => noAnswer));
    const { page, context } = await openPage(shared.browser, server.address);
    await page.addInitScript(() => {
        const { instantiate } = WebAssembly;
        const held = new Promise((resolve) => { window.letGo = resolve; });
        WebAssembly.instantiate = (...all) => held.then(() => instantiate(...all));
    });
    const failed = page.waitForEvent('requestfailed', (request) => request.url().endsWith('gusset-rest.wasm'));
    await page.goto(server.address);
    await failed;
    for (let i = 0; i < 20; ++i) { // time enough for a report that comes too early
        await page.evaluate(() => fetch('index.html', { cache: 'reload' }).then((response) => response.text()));
    }
    await page.evaluate(() => window.letGo());
    await page.locator('#status button').waitFor({ state: 'visible' });
    assert.match(await page.locator('#status').textContent(), /did not start.*Your boards are still in this/);
    await context.close();
    server.stop();
});

test('while the network hangs in the middle of the rest, the page says that it takes a while', async () => {
    const server = await openServer(rest(() => hangs));
    const { page, context } = await openPage(shared.browser, server.address);
    await page.clock.install();
    await page.goto(server.address);
    await page.locator('#status', { hasText: 'Loading the rest' }).waitFor({ state: 'visible' });
    await page.clock.fastForward(30_000);
    await page.locator('#status button').waitFor({ state: 'visible' });
    assert.match(await page.locator('#status').textContent(), /taking a while.*goes on by itself/);
    await context.close();
    server.stop();
});
