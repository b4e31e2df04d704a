// What is stored and shared: links, reloads, undo, a bad link, a browser that stores nothing.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { boardOf, dragJoint, dropFile, openBoard } from './board.mjs';
import { linkOf, linkTo, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

// Waits until the address describes what is on the board; it is updated only when the board is at rest.
const settledAddress = (page, before) => page.waitForFunction((old) => location.hash !== old, before)
    .then(() => page.evaluate(() => location.hash));

async function opensElsewhere(hash) {
    const there = await openBoard(shared.browser, shared.site.address, sizes.desktop, hash);
    const seen = await there.board.observe();
    await there.context.close();
    return seen;
}

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
    await page.reload(); // at once: the address may still be the one that was opened
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
        IDBFactory.prototype.open = () => { throw new DOMException('off', 'SecurityError'); };
    });
    await page.reload();
    const board = await boardOf(page, sizes.desktop);
    await dragJoint(board, 'C', 60, 0);
    assert.match((await board.observe()).message, /file/i);
    assert.equal((await board.observe()).solved, true);
    await context.close();
});

test('where only local storage refuses, the board is kept all the same', async () => {
    const { context, page } = await open();
    await context.addInitScript(() => {
        Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); };
    });
    await page.reload();
    const board = await boardOf(page, sizes.desktop);
    await dragJoint(board, 'C', 60, 0);
    const { model, message } = await board.observe();
    assert.equal(message, '', 'nothing is said, as nothing is lost');
    await page.evaluate(() => window.gussetTest.reachedDisk());
    await page.reload();
    assert.deepEqual((await (await boardOf(page, sizes.desktop)).observe()).model, model);
    await context.close();
});

test('in a full local storage the board written longest ago gives way to the one that is shown', async () => {
    const { context, page } = await open();
    await context.addInitScript(() => { // so that only local storage keeps anything
        IDBFactory.prototype.open = () => { throw new DOMException('off', 'SecurityError'); };
    });
    await page.reload();
    const board = await boardOf(page, sizes.desktop);
    await page.evaluate(() => {
        const fits = (length) => {
            try {
                localStorage.setItem('gusset.work.old.0', `100 ${'x'.repeat(length)}`);
                return true;
            } catch {
                return false;
            }
        };
        let length = 0; // the greatest length that fits, bit by bit
        for (let bit = 2 ** 24; bit >= 1; bit /= 2) {
            length += fits(length + bit) ? bit : 0;
        }
    });
    await dragJoint(board, 'C', 60, 0);
    const { model } = await board.observe();
    await page.waitForFunction(() => localStorage.getItem('gusset.work.old.0') === null);
    await page.reload();
    assert.deepEqual((await (await boardOf(page, sizes.desktop)).observe()).model, model);
    await context.close();
});

test('when the browser takes its database away, the next edit is written to a new one', async () => {
    const { board, context, page } = await open();
    await dragJoint(board, 'C', 60, 0);
    await page.evaluate(() => window.gussetTest.reachedDisk());
    await page.evaluate(() => new Promise((resolve, reject) => {
        const request = indexedDB.deleteDatabase('gusset');
        request.onsuccess = resolve;
        request.onblocked = () => reject(new Error('the page holds on to it'));
    }));
    await dragJoint(board, 'C', -30, 0);
    await page.evaluate(() => window.gussetTest.reachedDisk());
    const kept = await page.evaluate(() => new Promise((resolve, reject) => {
        const request = indexedDB.open('gusset');
        request.onerror = reject;
        request.onsuccess = () => {
            const texts = request.result.transaction('work').objectStore('work').getAll();
            texts.onsuccess = () => resolve(texts.result);
            texts.onerror = reject;
        };
    }));
    assert.equal(kept.length, 1);
    await context.close();
});

test('after the first edit the address is a link to what is on the board, and follows it', async () => {
    const { board, context, page } = await open();
    assert.equal(new URL(page.url()).hash, '', 'who only looks has the plain address');
    await dragJoint(board, 'C', 60, 0);
    const first = await settledAddress(page, '');
    assert.match(first, /^#m=1\./);
    assert.deepEqual((await opensElsewhere(first)).model, (await board.observe()).model);
    await dragJoint(board, 'E', 0, -60);
    const second = await settledAddress(page, first);
    assert.deepEqual((await opensElsewhere(second)).model, (await board.observe()).model);
    await page.keyboard.press('Control+z');
    await board.idle();
    assert.equal(await settledAddress(page, second), first);
    assert.equal(await page.evaluate(() => history.length), 2, 'about:blank and this page: Back is not flooded');
    await context.close();
});

test('a hundred edits in a row change the address once, when the board rests', async () => {
    const { board, context, page } = await open();
    await page.evaluate(() => {
        window.changes = 0;
        const { replaceState } = History.prototype;
        History.prototype.replaceState = function counted(...all) {
            window.changes += all[2] === location.href ? 0 : 1;
            return replaceState.apply(this, all);
        };
    });
    await dragJoint(board, 'C', 60, 0);
    for (let i = 0; i < 50; ++i) {
        await page.evaluate(() => {
            for (const [key, code] of [['z', 'KeyZ'], ['y', 'KeyY']]) {
                document.getElementById('board').dispatchEvent(
                    new KeyboardEvent('keydown', { key, code, ctrlKey: true, bubbles: true }));
            }
            return new Promise((resolve) => requestAnimationFrame(resolve));
        });
    }
    await settledAddress(page, '');
    // A busy machine may come to rest in between: still far fewer than edits, and than WebKit's hundred in ten
    // seconds.
    assert.ok(await page.evaluate(() => window.changes) <= 10);
    await context.close();
});

test('an address that equals the kept board asks nothing at a reload, and keeps its undo', async () => {
    const { board, context, page } = await open();
    await dragJoint(board, 'C', 60, 0);
    await settledAddress(page, '');
    const { model } = await board.observe();
    await page.reload();
    const again = await boardOf(page, sizes.desktop);
    const seen = await again.observe();
    assert.deepEqual(seen.model, model);
    assert.match(seen.undo, /Move joint C/);
    assert.equal(seen.message, '');
    // As from a bookmark, in a tab without any of it.
    const address = page.url();
    await page.close();
    const tab = await context.newPage();
    await tab.goto(address);
    const there = await (await boardOf(tab, sizes.desktop)).observe();
    assert.deepEqual(there.model, model);
    assert.match(there.undo, /Move joint C/, 'the kept board itself, no copy by a link');
    await context.close();
});

test('a reload before the board rests shows the last edit, whatever the address says by then', async () => {
    const { board, context, page } = await open();
    await dragJoint(board, 'C', 60, 0);
    await settledAddress(page, '');
    await page.evaluate(() => { window.setTimeout = () => 0; }); // it never comes to rest again
    await dragJoint(board, 'E', 0, -60);
    const { model } = await board.observe();
    await page.reload();
    assert.deepEqual((await (await boardOf(page, sizes.desktop)).observe()).model, model);
    await context.close();
});

test('Back from an edited link to the board before it loses nothing of either', async () => {
    const stranger = encodeURIComponent(JSON.stringify({
        gusset: 1, title: 'Stranger',
        joints: [{ id: 'A', x: 0, y: 0 }, { id: 'B', x: 3, y: 0 }],
        members: [{ a: 'A', b: 'B' }],
    }));
    const { board, context, page } = await open();
    await dragJoint(board, 'C', 60, 0);
    const first = await settledAddress(page, '');
    const own = (await board.observe()).model;
    await page.evaluate((fragment) => { location.hash = fragment; }, `#j=${stranger}`);
    await board.idle();
    await dragJoint(board, 'B', 0, -60);
    await settledAddress(page, `#j=${stranger}`);
    const changed = (await board.observe()).model;
    await page.goBack();
    await page.waitForFunction((hash) => location.hash === hash, first);
    await board.idle();
    assert.deepEqual((await board.observe()).model, own);
    await page.keyboard.press('Control+z');
    await board.idle();
    assert.deepEqual((await board.observe()).model, changed, 'one undo away');
    await context.close();
});

// Random letters do not compress: each takes a character of the link.
function largeModel() {
    let seed = 1;
    const letter = () => { // Park and Miller, 1988
        seed = (seed * 16807) % 2147483647;
        return String.fromCharCode(48 + (seed % 64)).replace(/[<>\\]/, '-');
    };
    const mine = Array.from({ length: 80_000 }, letter).join('');
    return { gusset: 1, title: 'Large', joints: [{ id: 'A', x: 0, y: 0 }, { id: 'B', x: 3, y: 0 }],
        members: [{ a: 'A', b: 'B' }], mine };
}

test('a truss too large for a link is offered as a file, in words, and survives a reload', async () => {
    const { board, context, page } = await open();
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await page.evaluate(() => navigator.clipboard.writeText('before'));
    await dropFile(page, 'large.json', JSON.stringify(largeModel()));
    await page.waitForFunction(() => window.gussetTest.observe().model.title === 'Large');
    await board.press('Copy link');
    assert.match((await board.observe()).message, /link can't be made.*65536.*file/);
    assert.equal(await page.evaluate(() => navigator.clipboard.readText()), 'before');
    await board.press('Share');
    assert.equal(await board.has('share'), false, 'no button that can not do what it says');
    await screenshot(page, 'no-link-desktop');
    const [download] = await Promise.all([page.waitForEvent('download'), board.press('instead')]);
    assert.equal(JSON.parse(readFileSync(await download.path(), 'utf8')).mine.length, 80_000);
    await context.close();
});

test('an edit of such a truss is there after a reload, and the address does not name another board', async () => {
    const { board, context, page } = await open(linkTo('cottage_roof.json'));
    const { hash } = new URL(page.url());
    await dropFile(page, 'large.json', JSON.stringify(largeModel()));
    await page.waitForFunction(() => window.gussetTest.observe().model.title === 'Large');
    await page.waitForFunction((before) => location.hash !== before, hash);
    assert.equal(new URL(page.url()).hash, '');
    await board.press('Pin');
    await board.tap((await board.observe()).joints[0]);
    await board.idle();
    assert.equal((await board.observe()).model.supports.length, 1);
    await page.reload();
    const { model } = await (await boardOf(page, sizes.desktop)).observe();
    assert.equal(model.mine.length, 80_000);
    assert.equal(model.supports.length, 1);
    await context.close();
});

const twoCases = {
    gusset: 1, title: 'Two cases',
    joints: [{ id: 'A', x: 0, y: 0 }, { id: 'B', x: 4, y: 0 }, { id: 'C', x: 2, y: 2 }],
    members: [{ a: 'A', b: 'B' }, { a: 'A', b: 'C' }, { a: 'B', b: 'C' }],
    supports: [{ joint: 'A', kind: 'pin' }, { joint: 'B', kind: 'roller', reaction: 90 }],
    loads: [{ joint: 'C', fy: -10, case: 'snow & ice' }, { joint: 'C', fx: 6, case: 'wind' }],
    combinations: [{ id: '1.5 wind', factors: { wind: 1.5 } }],
};

test('a link opens on the case or the combination that is looked at', async () => {
    const link = linkOf(twoCases);
    const { board, context, page } = await open(link);
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    const seen = new Set();
    for (const wanted of ['&case=snow%20%26%20ice', '&case=wind', '&combination=1%2E5%20wind']) {
        await page.evaluate((hash) => { location.hash = hash; }, link + wanted);
        await board.idle();
        const forces = await board.table('Member forces');
        seen.add(JSON.stringify(forces));
        await board.press('Copy link');
        const copied = await page.evaluate(() => navigator.clipboard.readText());
        assert.ok(copied.endsWith(wanted), `${copied} has ${wanted}`);
        const there = await openBoard(shared.browser, shared.site.address, sizes.desktop,
            copied.slice(copied.indexOf('#')));
        assert.deepEqual(await there.board.table('Member forces'), forces);
        await there.page.reload();
        const again = await boardOf(there.page, sizes.desktop);
        assert.deepEqual(await again.table('Member forces'), forces, 'and after a reload');
        await there.context.close();
    }
    assert.equal(seen.size, 3, 'three different sets of forces');
    await context.close();
});

test('changing the case changes the address; a case that the truss does not have is told', async () => {
    const link = linkOf(twoCases);
    const { board, context, page } = await open(link);
    const all = await board.table('Member forces');
    await board.press('Results');
    await board.press('snow & ice');
    const changed = await settledAddress(page, link);
    assert.match(changed, /^#m=1\..*&case=snow%20%26%20ice$/);
    assert.notDeepEqual(await board.table('Member forces'), all);

    await page.evaluate((hash) => { location.hash = hash; }, `${link}&case=earthquake`);
    await board.idle();
    assert.match((await board.observe()).message, /load case that its truss does not have/);
    assert.deepEqual(await board.table('Member forces'), all);
    await context.close();
});
