// Work is not lost: two tabs, recent boards, and a page that ends in the middle of a gesture.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { boardOf, dragJoint, openBoard } from './board.mjs';
import { firstFrame, siteAndBrowser, sizes } from './support.mjs';

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
        await from.press('Share');
        await from.reveal('Recent boards');
        await from.press('Recent boards');
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

// Each end and beginning takes about as long as a start of the page; KILLS=100 for a longer trial.
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
        session.send('Page.close').catch(() => {}); // no answer comes from a page that is gone
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
