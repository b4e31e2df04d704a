// Work is not lost: two tabs, recent boards, and a page that ends in the middle of a gesture.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { boardOf, dragJoint, openBoard, openStart } from './board.mjs';
import { beam, firstFrame, linkOf, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

const open = (fragment = '') => openBoard(shared.browser, shared.site.address, sizes.desktop, fragment);

async function openIn(context, fragment = '') {
    const page = await context.newPage();
    await page.goto(`${shared.site.address}?test${fragment}`);
    return { page, board: await boardOf(page, sizes.desktop) };
}

const modelOf = async (board) => (await board.observe()).model;

test('the same board in two tabs is two boards: neither overwrites the other', async () => {
    const first = await open();
    await dragJoint(first.board, 'C', 60, 0);
    const later = await openIn(first.context);
    assert.deepEqual(await modelOf(later.board), await modelOf(first.board), 'begins as a copy');
    assert.match((await later.board.observe()).message, /open in another tab/);

    await later.page.reload();
    later.board = await boardOf(later.page, sizes.desktop);
    assert.deepEqual(await modelOf(later.board), await modelOf(first.board), 'and still after a reload');

    await dragJoint(later.board, 'C', 0, -60);
    await dragJoint(first.board, 'E', 60, 0);
    const mine = await modelOf(first.board);
    const other = await modelOf(later.board);
    assert.notDeepEqual(mine, other);

    await first.page.reload();
    await later.page.reload();
    assert.deepEqual(await modelOf(await boardOf(first.page, sizes.desktop)), mine);
    assert.deepEqual(await modelOf(await boardOf(later.page, sizes.desktop)), other);
    await first.context.close();
});

// A duplicated tab has the session storage and the entry of the tab that it was made from.
test('a duplicated tab shows what the first one shows, not what its address says nor what was written last', async () => {
    const first = await open();
    await dragJoint(first.board, 'C', 60, 0);
    await first.page.waitForFunction(() => location.hash !== '');
    await first.page.evaluate(() => { window.setTimeout = () => 0; }); // so that the address follows no more
    await dragJoint(first.board, 'E', 0, -60);
    const other = await openIn(first.context, linkOf(beam('Written last')));
    await dragJoint(other.board, 'B', 0, -60);
    const [page] = await Promise.all([first.context.waitForEvent('page'), first.page.evaluate(() => { window.open('about:blank'); })]);
    await page.addInitScript((state) => history.replaceState(state, ''), await first.page.evaluate(() => history.state));
    await page.goto(first.page.url());
    const made = await (await boardOf(page, sizes.desktop)).observe();
    assert.deepEqual(made.model, await modelOf(first.board));
    assert.match(made.message, /open in another tab/);
    await first.context.close();
});

test('a tab that is closed leaves its board to the next one that opens', async () => {
    const { board, page, context } = await open();
    await dragJoint(board, 'C', 60, 0);
    const left = await modelOf(board);
    await page.close();
    const next = await openIn(context);
    assert.deepEqual(await modelOf(next.board), left);
    assert.doesNotMatch((await next.board.observe()).message, /another tab/);
    await context.close();
});

test('a link that is opened and changed leaves the board before it among the recent ones', async () => {
    const stranger = encodeURIComponent(JSON.stringify({
        gusset: 1, title: '<b>Stranger</b>',
        joints: [{ id: 'A', x: 0, y: 0 }, { id: 'B', x: 3, y: 0 }],
        members: [{ a: 'A', b: 'B' }],
    }));
    const { board, page, context, errors } = await open();
    await dragJoint(board, 'C', 60, 0);
    const own = await modelOf(board);
    await page.evaluate((fragment) => { location.hash = fragment; }, `#j=${stranger}`);
    await board.idle();
    await dragJoint(board, 'B', 0, -60);
    const changed = await modelOf(board);
    assert.equal(changed.title, '<b>Stranger</b>');

    const goToRecent = async (from, title) => {
        await openStart(from);
        await Promise.all([
            page.waitForEvent('load'),
            page.locator('#recent-list button', { hasText: title }).first().click(),
        ]);
        return boardOf(page, sizes.desktop);
    };
    const back = await goToRecent(board, own.title);
    assert.deepEqual(await modelOf(back), own);
    assert.match((await back.observe()).undo, /Move joint C/, 'with its undo');
    const there = await goToRecent(back, '<b>Stranger</b>');
    assert.deepEqual(await modelOf(there), changed, 'and the one that was left is in the list too');
    assert.deepEqual(errors, []);
    await context.close();
});

test('of many boards the eight written last are kept besides the open one', async () => {
    const { page, context } = await open();
    await page.evaluate(() => {
        for (let i = 0; i < 20; ++i) {
            localStorage.setItem(`gusset.work.old${i}.0`, `${1000 + i} text`);
        }
    });
    const link = encodeURIComponent('{"gusset":1,"joints":[{"id":"A","x":0,"y":0},{"id":"B","x":3,"y":0}],' +
        '"members":[{"a":"A","b":"B"}]}');
    await page.goto(`${shared.site.address}?test&again#j=${link}`);
    const board = await boardOf(page, sizes.desktop);
    await dragJoint(board, 'B', 0, -60);
    await page.waitForFunction(() =>
        Object.keys(localStorage).filter((key) => key.startsWith('gusset.work.old')).length <= 8);
    assert.equal(await page.evaluate(() => localStorage.getItem('gusset.work.old19.0')), '1019 text');
    await context.close();
});

async function boardWithLink(context, title) {
    const opened = await openIn(context, `&${title}${linkOf(beam(title))}`);
    await dragJoint(opened.board, 'B', 0, -60);
    return opened;
}

test('recent boards stand in the list with their pictures', async () => {
    const { board, page, context, errors } = await open();
    await dragJoint(board, 'C', 60, 0);
    const other = await boardWithLink(context, 'Other');
    await other.page.close();
    await openStart(board);
    const picture = page.locator('#recent-list img').first();
    await page.waitForFunction(() => document.querySelector('#recent-list img').naturalWidth > 20);
    const inked = await picture.evaluate(async (image) => {
        const sheet = new OffscreenCanvas(image.naturalWidth, image.naturalHeight);
        const pen = sheet.getContext('2d');
        pen.drawImage(image, 0, 0);
        const { data } = pen.getImageData(0, 0, sheet.width, sheet.height);
        const colours = new Set();
        for (let i = 0; i < data.length; i += 4) {
            colours.add((data[i] << 16) | (data[i + 1] << 8) | data[i + 2]);
        }
        return colours.size;
    });
    assert.ok(inked > 3, `${inked} colours: paper, ink and their edges`);
    assert.deepEqual(errors, []);
    await context.close();
});

// Changes this word in every copy of a board, or removes its beginning; from a page beside the board's, as an
// accident might. Resolves to the number of copies.
async function damageCopies(context, word, damage) {
    const aside = await context.newPage();
    await aside.goto(`${shared.site.address}help/`);
    const count = await aside.evaluate(async ([wanted, how]) => {
        const change = (text) => (how === 'word' ? text.replace(wanted, 'Never') : `9${'9'.repeat(20)} ${wanted}`);
        const kept = Object.entries(localStorage).filter(([, text]) => text.includes(wanted));
        kept.forEach(([key, text]) => localStorage.setItem(key, change(text)));
        const done = (request) => new Promise((resolve) => { request.onsuccess = () => resolve(request.result); });
        const database = await done(indexedDB.open('gusset'));
        if (database.objectStoreNames.length === 0) {
            return kept.length;
        }
        const store = database.transaction('work', 'readwrite').objectStore('work');
        const names = await done(store.getAllKeys());
        const texts = await done(store.getAll());
        const found = names.filter((name, i) => texts[i].includes(wanted));
        await Promise.all(found.map((name) => done(store.put(change(texts[names.indexOf(name)]), name))));
        return kept.length + found.length;
    }, [word, damage]);
    await aside.close();
    return count;
}

const copiesWith = (page, word) => page.evaluate((wanted) =>
    Object.values(localStorage).filter((text) => text.includes(wanted)).length, word);

test('when every copy of what was saved last is damaged, that is said and the next older board is shown', async () => {
    const { board, page, context } = await open();
    await dragJoint(board, 'C', 60, 0);
    const older = await modelOf(board);
    await page.close();
    const newer = await boardWithLink(context, 'Newer');
    await newer.page.evaluate(() => window.gussetTest.reachedDisk?.());
    await newer.page.close(); // and stores once more
    assert.ok(await damageCopies(context, 'Newer', 'word') >= 3);
    const next = await openIn(context);
    assert.deepEqual(await modelOf(next.board), older);
    assert.match((await next.board.observe()).message, /cannot be read.*damaged.*The board before it is open/);
    assert.ok(await copiesWith(next.page, 'Never') > 0, 'it may be for a later version to read');
    await context.close();
});

for (const [name, size] of Object.entries(sizes)) {
    test(`on a ${name}, the only board kept being damaged is said: the example does not just take its place`, async () => {
        const { board, page, context } = await openBoard(shared.browser, shared.site.address, size);
        await dragJoint(board, 'C', 40, 0);
        await page.waitForFunction(() => Object.values(localStorage).some((text) => text.includes('Footbridge')));
        await page.evaluate(() => window.gussetTest.reachedDisk?.());
        await page.close();
        assert.ok(await damageCopies(context, 'Footbridge', 'beginning') >= 2);
        const later = await context.newPage();
        await later.goto(`${shared.site.address}?test`);
        const there = await boardOf(later, size);
        assert.match((await there.observe()).message, /cannot be read.*An example is open instead/);
        await screenshot(later, `damaged-${name}`);
        await openStart(there);
        const entry = later.locator('#recent-list button').first();
        await entry.waitFor({ state: 'visible' });
        const words = await entry.textContent();
        assert.match(words, /cannot be read.*time not known/);
        assert.doesNotMatch(words, /Invalid|1970|1969/);
        await screenshot(later, `damaged-recent-${name}`);
        await context.close();
    });
}

test('one whole copy of three is enough', async () => {
    const { board, page, context } = await open();
    await dragJoint(board, 'C', 60, 0);
    const kept = await modelOf(board);
    await page.evaluate(() => window.gussetTest.reachedDisk());
    await page.evaluate(() => Object.keys(localStorage).forEach((key) => localStorage.setItem(key, '12 damaged')));
    await page.evaluate(() => { Storage.prototype.setItem = () => { throw new DOMException('full'); }; });
    await page.reload();
    assert.deepEqual(await modelOf(await boardOf(page, sizes.desktop)), kept);
    await context.close();
});

test('a damaged board that the address still names is opened by it', async () => {
    const { board, page, context } = await open();
    await dragJoint(board, 'C', 60, 0);
    const kept = await modelOf(board);
    await page.waitForFunction(() => location.hash !== '');
    const address = page.url();
    await page.evaluate(() => window.gussetTest.reachedDisk());
    await page.close();
    await damageCopies(context, 'Footbridge', 'word');
    const later = await context.newPage();
    await later.goto(address);
    const there = await boardOf(later, sizes.desktop);
    assert.deepEqual(await modelOf(there), kept);
    assert.match((await there.observe()).message, /The link in the address is open instead/);
    await context.close();
});

// A browser allows an origin about five million characters: here they are really used up, not simulated.
test('a storage that is really full is said, and what was saved before stays whole', async () => {
    const { board, page, context } = await open();
    await dragJoint(board, 'C', 60, 0);
    const kept = await modelOf(board);
    await page.evaluate(() => {
        // Otherwise the third copy is kept, and there is nothing to report.
        IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); };
        for (let size = 1 << 22; size > 0; size >>= 1) {
            try {
                localStorage.setItem(`ballast.${size}`, 'x'.repeat(size));
            } catch {
                // then half of it
            }
        }
    });
    let said = '';
    for (let i = 0; i < 6 && said === ''; ++i) { // each longer by its undo step
        await dragJoint(board, 'C', i % 2 === 0 ? 25 : -25, 0);
        said = (await board.observe()).message;
    }
    assert.match(said, /file/i);
    await page.reload();
    const after = await boardOf(page, sizes.desktop);
    const { model } = await after.observe();
    assert.equal(model.joints.length, kept.joints.length, 'a whole board');
    await context.close();
});

// Each end and start takes about as long as a start of the page; KILLS=100 for a longer run.
const kills = Number(process.env.KILLS ?? 20);

test('a page that is ended in mid-drag, again and again, loses at most the gesture in hand', async () => {
    const { board, page, context } = await open();
    await dragJoint(board, 'C', 60, 0);
    const kept = await modelOf(board);
    const place = await board.joint('E');
    let current = page;
    for (let round = 0; round < kills; ++round) {
        await current.mouse.move(place.x, place.y);
        await current.mouse.down();
        await current.mouse.move(place.x + 20 + round, place.y + 30);
        await current.mouse.move(place.x + 40 + round, place.y + 10);
        if (round === 0) {
            assert.notDeepEqual(await modelOf(board), kept, 'the drag is shown');
        }
        const session = await context.newCDPSession(current);
        const next = await context.newPage();
        const closed = current.waitForEvent('close');
        session.send('Page.close').catch(() => {}); // a closed page does not answer
        await closed;
        await next.goto(`${shared.site.address}?test`);
        await firstFrame(next);
        await next.waitForFunction(() => window.gussetTest);
        const { model, undo } = await next.evaluate(() => window.gussetTest.observe());
        assert.deepEqual(model, kept, `round ${round}`);
        assert.match(undo, /Move joint C/);
        current = next;
    }
    await context.close();
});
