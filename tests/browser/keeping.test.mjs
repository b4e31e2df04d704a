// What is kept and what travels: links, reloads, undo, a bad link, a browser that stores nothing.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { boardOf, dragJoint, openBoard } from './board.mjs';
import { siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

const open = (fragment = '') => openBoard(shared.browser, shared.site.address, sizes.desktop, fragment);

test('a copied link opens the same board, solved, in a fresh profile', async () => {
    const { board, context, page } = await open();
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await dragJoint(board, 'E', 0, -60);
    await board.press('Copy link');
    const link = await page.evaluate(() => navigator.clipboard.readText());
    assert.match(link, /^http.*#m=1\.[\w-]+\.\d+\.\w+$/);
    assert.match(link.at(-1), /[A-Za-z0-9]/, 'chat programs drop trailing signs');
    const there = await openBoard(shared.browser, shared.site.address, sizes.desktop, link.slice(link.indexOf('#')));
    assert.deepEqual((await there.board.observe()).model, (await board.observe()).model);
    assert.deepEqual(await there.board.table('Member forces'), await board.table('Member forces'));
    await context.close();
    await there.context.close();
});

test('a reload brings back the board, and what can be undone', async () => {
    const { board, context, page } = await open();
    const before = (await board.observe()).model;
    await dragJoint(board, 'C', 60, 0);
    const moved = (await board.observe()).model;
    assert.notDeepEqual(moved, before);
    await page.reload();
    const again = await boardOf(page, sizes.desktop);
    assert.deepEqual((await again.observe()).model, moved);
    assert.match((await again.observe()).undo, /Move joint C/);
    await page.keyboard.press('Control+z');
    await again.idle();
    assert.deepEqual((await again.observe()).model, before);
    await page.keyboard.press('Control+Shift+z');
    await again.idle();
    assert.deepEqual((await again.observe()).model, moved);
    await context.close();
});

test('looking at a link leaves the saved work alone; changing it there takes its place', async () => {
    const { board, context, page } = await open();
    await dragJoint(board, 'C', 60, 0);
    const own = (await board.observe()).model;
    const stranger = encodeURIComponent(JSON.stringify({
        gusset: 1, title: 'Stranger',
        joints: [{ id: 'A', x: 0, y: 0 }, { id: 'B', x: 3, y: 0 }],
        members: [{ a: 'A', b: 'B' }],
    }));
    await page.goto(`${shared.site.address}?test&again#j=${stranger}`);
    let there = await boardOf(page, sizes.desktop);
    assert.equal((await there.observe()).model.title, 'Stranger');
    await page.goto(`${shared.site.address}?test`);
    there = await boardOf(page, sizes.desktop);
    assert.deepEqual((await there.observe()).model, own);

    await page.goto(`${shared.site.address}?test&again#j=${stranger}`);
    there = await boardOf(page, sizes.desktop);
    await dragJoint(there, 'B', 0, -60);
    assert.equal(new URL(page.url()).hash, '', 'the address no longer names another board');
    await page.reload();
    there = await boardOf(page, sizes.desktop);
    const kept = await there.observe();
    assert.equal(kept.model.title, 'Stranger');
    assert.ok(kept.model.joints[1].y > 0);
    await context.close();
});

test('a bad link explains itself and leaves the board as it was', async () => {
    const { board, context, page, errors } = await open();
    const before = (await board.observe()).model;
    for (const bad of ['#m=1.abc.9.xyz', '#m=2.abc.3.abcd1', '#j=%7B%22gusset%22', '#m=']) {
        await page.evaluate((fragment) => { location.hash = fragment; }, bad);
        await board.idle();
        const { model, message } = await board.observe();
        assert.deepEqual(model, before, bad);
        assert.match(message, bad.startsWith('#m') ? /^The link [a-z]+ / : /\w+ \w+/, bad);
        assert.equal(await page.locator('#announcer').textContent(), message, 'and is read out');
    }
    assert.deepEqual(errors, []);
    await context.close();
});

test('a bad link at the start leaves the saved work on the board', async () => {
    const { board, context, page } = await open();
    await dragJoint(board, 'C', 60, 0);
    const own = (await board.observe()).model;
    await page.goto(`${shared.site.address}?test&again#m=1.QUJD.4.zzzzz1`);
    const there = await boardOf(page, sizes.desktop);
    assert.deepEqual((await there.observe()).model, own);
    assert.match((await there.observe()).message, /link/i);
    await context.close();
});

test('a browser that stores nothing says so once, and the board works', async () => {
    const { context, page } = await open();
    await context.addInitScript(() => {
        Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); };
    });
    await page.reload();
    const board = await boardOf(page, sizes.desktop);
    await dragJoint(board, 'C', 60, 0);
    assert.match((await board.observe()).message, /file/i);
    assert.equal((await board.observe()).solved, true);
    await context.close();
});
