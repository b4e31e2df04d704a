// An update at a bad moment: no space, no network, no list of files, a log-in page for everything, a return to the
// previous version, another tab still working. Whatever happens, one version stays whole and the board is kept.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { boardOf, dragJoint } from './board.mjs';
import { firstFrame, launch, openPage, screenshot, sizes } from './support.mjs';
import { hangs, logIn, noAnswer, openServer, siteWith } from './upload.mjs';
import { cached, heading, keeping, takesUpdate, title, updated, visit } from './versions.mjs';

let browser;
let old; // two versions of the site
let next;

before(async () => {
    browser = await launch();
    old = siteWith();
    next = siteWith({ 'index.html': title('Gusset', 'Gusset, next') });
});

after(async () => {
    await browser?.close();
    old?.remove();
    next?.remove();
});

const newList = (other) => (name) => (name === 'sw.js' ? next.folder : other);
const newButFor = (wanted, other) => (name) => (name === wanted ? other : next.folder);

for (const [what, { answer, outcome }] of Object.entries({
    'the network goes away after the list of files': { answer: newList(noAnswer), outcome: 'redundant' },
    'the network goes away before the program': { answer: newButFor('gusset.wasm', noAnswer), outcome: 'redundant' },
    'the server is down for one file': { answer: newButFor('recent.js', 503), outcome: 'redundant' },
    'a proxy answers for the program with a page of its own':
        { answer: newButFor('gusset.wasm', logIn), outcome: 'redundant' },
    'the network wants a password and answers everything with that page':
        { answer: () => logIn, outcome: 'SecurityError' },
    'the list of files is missing': { answer: newButFor('sw.js', 404), outcome: 'TypeError' },
    'the list of files is a page': { answer: newButFor('sw.js', logIn), outcome: 'SecurityError' },
    'the server fails at the list of files': { answer: newButFor('sw.js', 500), outcome: 'TypeError' },
})) {
    test(`when ${what} the version before stays whole, and the update is taken later`, async () => {
        const { page, server, close } = await visit(browser, old.folder);
        const before = await cached(page);
        server.serve(answer);
        assert.equal(await updated(page), outcome);
        assert.deepEqual(await cached(page), before, 'nothing of it stays');
        await page.reload();
        await firstFrame(page);
        assert.equal(await heading(page), 'Gusset');
        assert.equal(await page.locator('#update').isVisible(), false);
        server.serve(() => next.folder);
        await page.reload();
        await firstFrame(page);
        await takesUpdate(page);
        assert.equal(await heading(page), 'Gusset, next');
        await close();
    });
}

test('while the network hangs in the middle of an update the page starts from what it has', async () => {
    const { page, server, close } = await visit(browser, old.folder);
    server.serve(newButFor('gusset.wasm', hangs));
    await page.evaluate(async () => {
        const registration = await navigator.serviceWorker.getRegistration();
        const found = new Promise((resolve) => registration.addEventListener('updatefound', resolve));
        registration.update();
        await found;
    });
    await page.reload();
    await firstFrame(page);
    assert.equal(await heading(page), 'Gusset');
    await close();
});

test('an update for which the browser has no room is not taken, and is when there is', async () => {
    const { page, context, server, close } = await visit(browser, old.folder);
    const session = await context.newCDPSession(page);
    const before = await cached(page);
    const { usage } = await page.evaluate(() => navigator.storage.estimate());
    const origin = new URL(server.address).origin;
    await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: usage + 200_000 });
    server.serve(() => next.folder);
    assert.equal(await updated(page), 'redundant');
    assert.deepEqual(await cached(page), before);
    await page.reload();
    await firstFrame(page);
    assert.equal(await heading(page), 'Gusset');
    await session.send('Storage.overrideQuotaForOrigin', { origin });
    await page.reload();
    await firstFrame(page);
    await takesUpdate(page);
    assert.equal(await heading(page), 'Gusset, next');
    await close();
});

for (const [what, answer] of Object.entries({ 'is missing': 404, 'is a page': logIn })) {
    test(`on the first visit, when the list of files ${what}, the page works with the network`, async () => {
        const server = await openServer((name) => (name === 'sw.js' ? answer : old.folder));
        const { page, context } = await openPage(browser, server.address, { ...sizes.desktop, ...keeping });
        await page.goto(server.address);
        await firstFrame(page);
        assert.deepEqual(await cached(page), []);
        await context.close();
        server.stop();
    });
}

test('on the first visit, when a proxy answers for the program with a page, that is said and nothing is kept', async () => {
    const server = await openServer((name) => (name === 'gusset.wasm' ? logIn : old.folder));
    const { page, context } = await openPage(browser, server.address, { ...sizes.desktop, ...keeping });
    await page.goto(server.address);
    await page.locator('#status button').waitFor({ state: 'visible' });
    assert.match(await page.locator('#status').textContent(), /did not start.*Your boards are still/);
    assert.deepEqual(await cached(page), []);
    await context.close();
    server.stop();
});

for (const [name, size] of Object.entries(sizes)) {
    test(`on a ${name}, a page that loads for long says so, goes on, and starts when all of it is there`, async () => {
        const server = await openServer(() => old.folder);
        const { page, context } = await openPage(browser, server.address, { ...size, ...keeping });
        let letGo;
        const held = new Promise((resolve) => { letGo = resolve; });
        await page.route('**/gusset.wasm', async (route) => {
            await held;
            await route.continue();
        });
        await page.clock.install();
        await page.goto(server.address);
        await page.waitForFunction(() => window.gussetStart);
        await page.clock.fastForward(30_000);
        const button = page.locator('#status button');
        await button.waitFor({ state: 'visible' });
        assert.match(await page.locator('#status').textContent(), /taking a while.*goes on by itself/);
        const box = await button.boundingBox();
        assert.ok(box.height >= 44 && box.x >= 0 && box.x + box.width <= size.viewport.width);
        await screenshot(page, `slow-${name}`);
        letGo();
        await page.waitForFunction(() => document.body.classList.contains('has-board'));
        assert.equal(await page.locator('#status').isVisible(), false);
        await context.close();
        server.stop();
    });
}

test('a network that wants a password costs nobody the page: what is damaged waits for the server', async () => {
    const { page, server, close } = await visit(browser, old.folder);
    const before = await cached(page);
    await page.evaluate(async () => {
        const cache = await caches.open((await caches.keys())[0]);
        await cache.put('storage.js', new Response('damaged', { headers: { 'content-type': 'text/javascript' } }));
    });
    server.serve(() => logIn);
    await page.reload();
    await page.locator('#status button').waitFor({ state: 'visible' });
    assert.match(await page.locator('#status').textContent(), /did not start.*could not be fetched afresh/);
    assert.deepEqual(await cached(page), before);
    server.serve(() => old.folder);
    await Promise.all([page.waitForEvent('load'), page.locator('#status button').click()]);
    await firstFrame(page);
    server.stop();
    await page.reload();
    await firstFrame(page);
    await close();
});

test('the version before, put back on the server, is an update like any other, and keeps the board', async () => {
    const { page, server, close } = await visit(browser, next.folder, sizes.desktop, '?test');
    const board = await boardOf(page, sizes.desktop);
    await dragJoint(board, 'C', 60, 0);
    const { model } = await board.observe();
    server.serve(() => old.folder);
    await page.reload();
    await firstFrame(page);
    assert.equal(await heading(page), 'Gusset, next');
    await takesUpdate(page);
    assert.equal(await heading(page), 'Gusset');
    assert.deepEqual((await (await boardOf(page, sizes.desktop)).observe()).model, model);
    assert.equal((await cached(page)).length, 1);
    await close();
});

test('a tab of the version before goes on beside the new one, also when its program has to start again', async () => {
    const { page, server, close } = await visit(browser, old.folder, sizes.desktop, '?test');
    const board = await boardOf(page, sizes.desktop);
    await dragJoint(board, 'C', 60, 0);
    const { model } = await board.observe();
    const other = siteWith({ 'gusset.wasm': () => 'a program that the scripts of the version before can do nothing with' });
    server.serve(() => other.folder);
    assert.equal(await updated(page), 'installed');
    await page.evaluate(async () => {
        const { waiting } = await navigator.serviceWorker.getRegistration();
        const changed = new Promise((resolve) => navigator.serviceWorker.addEventListener('controllerchange', resolve));
        waiting.postMessage('take over');
        await changed;
    });
    await page.evaluate((joint) => window.gussetTest.failOn(joint), JSON.stringify(model.joints.find(({ id }) => id === 'C')));
    await page.mouse.move(300, 300);
    await page.waitForFunction(() =>
        document.getElementById('failure-text').textContent.includes('before its last step'));
    other.remove();
    await close();
});
