// A hostile browser: storage denied, a database that hangs or belongs to a newer page, a clock that was turned
// back, an address that changes at the wrong moment.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { boardOf, dragJoint, openBoard, openStart } from './board.mjs';
import { beam, linkOf, openPage, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

const open = (fragment = '') => openBoard(shared.browser, shared.site.address, sizes.desktop, fragment);
const modelOf = async (board) => (await board.observe()).model;

function hangInWrites() {
    const { transaction } = IDBDatabase.prototype;
    IDBDatabase.prototype.transaction = function stuck(store, mode, ...more) {
        const all = transaction.call(this, store, mode, ...more);
        if (mode === 'readwrite') {
            Object.defineProperty(all, 'oncomplete', { set: () => {} });
        }
        return all;
    };
}

// A board in a browser modified by these scripts before any script of the page runs.
async function openChanged(...changes) {
    const opened = await openPage(shared.browser, shared.site.address);
    for (const change of changes) {
        await opened.page.addInitScript(change);
    }
    await opened.page.goto(`${shared.site.address}?test`);
    return { ...opened, board: await boardOf(opened.page, sizes.desktop) };
}

async function recentEntries(board) {
    await openStart(board);
    return board.page.locator('#recent-list .card').evaluateAll((buttons) =>
        buttons.map((button) => [...button.querySelectorAll('span')].map((span) => span.textContent)));
}

test('where the browser denies all storage the board works, says that nothing is kept, and Recent is empty', async () => {
    const { board, page, context, errors } = await openChanged(() => {
        const deny = () => { throw new DOMException('denied', 'SecurityError'); };
        for (const name of ['localStorage', 'sessionStorage', 'indexedDB', 'caches']) {
            Object.defineProperty(window, name, { get: deny });
        }
        Object.defineProperty(navigator, 'locks', { get: () => ({ request: async () => deny(), query: async () => deny() }) });
        Object.defineProperty(navigator, 'serviceWorker', { get: () => ({
            addEventListener: () => {}, register: async () => deny(), getRegistrations: async () => deny() }) });
    });
    await dragJoint(board, 'C', 60, 0);
    assert.match((await board.observe()).message, /keeps nothing.*file/);
    await page.evaluate((hash) => { location.hash = hash; }, linkOf(beam('Looked at')));
    await page.waitForFunction(() => window.gussetTest.observe().model.title === 'Looked at');
    await board.idle();
    await dragJoint(board, 'B', 0, -60);
    assert.equal((await modelOf(board)).title, 'Looked at');
    assert.deepEqual(await recentEntries(board), []);
    assert.deepEqual(errors, []);
    await context.close();
});

for (const [what, change] of Object.entries({
    'hangs for ever': () => { IDBFactory.prototype.open = () => ({}); },
    'hangs in every write': hangInWrites,
})) {
    test(`a database that ${what} holds nothing up: the board is kept in local storage`, async () => {
        const { board, page, context } = await openChanged(change);
        await dragJoint(board, 'C', 60, 0);
        await dragJoint(board, 'E', 0, -60);
        const { model, message } = await board.observe();
        assert.equal(message, '');
        await page.reload();
        assert.deepEqual(await modelOf(await boardOf(page, sizes.desktop)), model);
        await context.close();
    });
}

test('a full local storage beside a database that hangs is said: the board is kept nowhere', async () => {
    const { board, page, context } = await openChanged(() => {
        Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); };
    }, hangInWrites);
    await page.clock.install();
    await dragJoint(board, 'C', 60, 0);
    await page.clock.fastForward(5000);
    await dragJoint(board, 'C', -30, 0);
    assert.match((await board.observe()).message, /keeps nothing.*file/);
    await context.close();
});

// As where a slow device frees the lock of the page that was reloaded a second or two later.
function lateLocks() {
    const { request } = LockManager.prototype;
    LockManager.prototype.request = async function late(name, options, use) {
        if (!options.ifAvailable) {
            await new Promise((go) => { setTimeout(go, 1500); });
        }
        return request.call(this, name, options, use);
    };
}

test('a reload on a slow device shows the last edit and what can be undone, though the address is behind', async () => {
    const { board, page, context } = await openChanged(lateLocks);
    await dragJoint(board, 'C', 60, 0);
    await page.waitForFunction(() => location.hash !== '');
    await page.evaluate(() => { window.setTimeout = () => 0; }); // so that the address follows no more
    await dragJoint(board, 'E', 0, -60);
    const { model } = await board.observe();
    await page.reload();
    const again = await (await boardOf(page, sizes.desktop)).observe();
    assert.deepEqual(again.model, model);
    assert.match(again.undo, /Move joint E/);
    assert.equal(again.message, '');
    await context.close();
});

test('a database that is slow after the death of the browser is waited for: only there is the last edit', async () => {
    const { board, page, context } = await open();
    await dragJoint(board, 'C', 60, 0);
    const { model } = await board.observe();
    await page.evaluate(() => window.gussetTest.reachedDisk());
    await page.addInitScript(() => {
        localStorage.clear();
        Object.defineProperty(IDBRequest.prototype, 'onsuccess', { set(use) {
            this.addEventListener('success', (event) => setTimeout(() => use.call(this, event), 1200));
        } });
    });
    await page.goto('about:blank');
    await page.goto(`${shared.site.address}?test`);
    const again = await (await boardOf(page, sizes.desktop)).observe();
    assert.deepEqual(again.model, model);
    assert.match(again.undo, /Move joint C/);
    await context.close();
});

test('a database that a newer page has changed is left to it, and the board is kept all the same', async () => {
    const { board, page, context } = await open();
    await dragJoint(board, 'C', 60, 0);
    await page.evaluate(() => window.gussetTest.reachedDisk());
    // As a newer page in another tab would do: this one has to let go.
    await page.evaluate(() => new Promise((resolve, reject) => {
        const request = indexedDB.open('gusset', 9);
        request.onblocked = () => reject(new Error('the page holds on to it'));
        request.onsuccess = () => resolve(request.result.close());
    }));
    await dragJoint(board, 'C', -30, 0);
    const { model, message } = await board.observe();
    assert.equal(message, '');
    await page.reload();
    const again = await boardOf(page, sizes.desktop);
    assert.deepEqual(await modelOf(again), model);
    await context.close();
});

test('a board that is left while the clock is wrong is not forgotten as the oldest one', async () => {
    const { board, page, context } = await openChanged(() => {
        for (let i = 0; i < 9; ++i) { // written before the clock was turned back to 2001
            localStorage.setItem(`gusset.work.old${i}.0`, `${Date.now() - i} text`);
        }
        Date.now = () => 1_000_000_000_000;
    });
    await dragJoint(board, 'C', 60, 0);
    const { title } = await modelOf(board);
    await page.evaluate((hash) => { location.hash = hash; }, linkOf(beam('Next')));
    await board.idle();
    await dragJoint(board, 'B', 0, -60);
    await page.waitForFunction(() =>
        Object.keys(localStorage).filter((key) => key.startsWith('gusset.work.old')).length < 9);
    const [first] = await recentEntries(board);
    assert.deepEqual(first, [title, 'time not known'], 'no date that is still to come');
    await context.close();
});

test('a number that no clock has shown does not put a damaged board before all others for ever', async () => {
    const { board, page, context } = await open();
    await page.evaluate(() => localStorage.setItem('gusset.work.bad.0', '8640000000000000 text'));
    await dragJoint(board, 'C', 60, 0);
    const own = await modelOf(board);
    await page.evaluate(() => window.gussetTest.reachedDisk());
    await page.close();
    const next = await context.newPage();
    await next.goto(`${shared.site.address}?test`);
    const there = await boardOf(next, sizes.desktop);
    assert.deepEqual(await modelOf(there), own);
    assert.equal((await there.observe()).message, '');
    await context.close();
});

test('an address that is changed in the middle of a drag opens, and the board before it is kept as it was', async () => {
    const { board, page, context } = await open();
    await dragJoint(board, 'C', 60, 0);
    const own = await modelOf(board);
    const from = await board.joint('E');
    await board.drag(from, { x: from.x, y: from.y + 50 }, { release: false });
    await page.evaluate((hash) => { location.hash = hash; }, linkOf(beam('Looked at')));
    await page.waitForFunction(() => window.gussetTest.observe().model.title === 'Looked at');
    await page.mouse.up();
    await board.idle();
    assert.deepEqual((await modelOf(board)).joints, beam('').joints);
    const page2 = await context.newPage();
    await page.close();
    await page2.goto(`${shared.site.address}?test`);
    assert.deepEqual(await modelOf(await boardOf(page2, sizes.desktop)), own);
    await context.close();
});

test('a link that is put in the address in the moment when the board writes its own there is opened', async () => {
    const { board, page, context } = await open();
    await page.evaluate(() => {
        const later = window.setTimeout;
        window.setTimeout = (call, time, ...rest) => {
            window.atRest = time === 500 ? call : window.atRest;
            return time === 500 ? 0 : later(call, time, ...rest);
        };
    });
    await dragJoint(board, 'C', 60, 0);
    await page.evaluate((hash) => {
        location.hash = hash;
        window.atRest(); // before the browser reports the change
    }, linkOf(beam('Put there')));
    await page.waitForFunction(() => window.gussetTest.observe().model.title === 'Put there');
    await context.close();
});

test('an address changed by hand before it was brought up to date loses no edit', async () => {
    const { board, page, context } = await open();
    await dragJoint(board, 'C', 60, 0);
    await page.waitForFunction(() => location.hash.startsWith('#m='));
    await page.evaluate(() => { window.setTimeout = () => 0; }); // the board never comes to rest again
    await dragJoint(board, 'E', 0, -60);
    const own = await modelOf(board);
    await page.evaluate((hash) => { location.hash = hash; }, linkOf(beam('By hand')));
    await board.idle();
    assert.equal((await modelOf(board)).title, 'By hand');
    await page.goto(`${shared.site.address}?test&again`);
    assert.deepEqual(await modelOf(await boardOf(page, sizes.desktop)), own);
    await context.close();
});

test('Back and Forward between links show what the address says, and keep the board that was there first', async () => {
    const { board, page, context } = await open();
    await dragJoint(board, 'C', 60, 0);
    const own = await modelOf(board);
    await page.waitForFunction(() => location.hash.startsWith('#m='));
    for (const title of ['One', 'Two', 'Three']) {
        await page.evaluate((hash) => { location.hash = hash; }, linkOf(beam(title)));
        await board.idle();
    }
    const shows = async (title) => {
        await page.waitForFunction((wanted) => window.gussetTest.observe().model.title === wanted, title);
    };
    await page.evaluate(() => history.go(-2));
    await shows('One');
    await page.evaluate(() => history.go(1));
    await shows('Two');
    await page.evaluate(() => history.go(1));
    await shows('Three');
    await page.evaluate(() => history.go(-3));
    await shows(own.title);
    assert.deepEqual(await modelOf(board), own);
    await board.idle();
    assert.deepEqual(await recentEntries(board), [], 'one board, and three that were only looked at');
    await context.close();
});
