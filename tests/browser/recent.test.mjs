// Which boards are kept, and which of them Recent boards lists: looking at a board does not add it.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { boardOf, dragJoint, dropFile, keepBoard, openBoard, openStart } from './board.mjs';
import { beam, linkOf, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

const open = (fragment = '') => openBoard(shared.browser, shared.site.address, sizes.desktop, fragment);
const modelOf = async (board) => (await board.observe()).model;

async function goTo(page, board, fragment) {
    await page.evaluate((hash) => { location.hash = hash; }, fragment);
    await board.idle();
}

// The titles in the list, latest first. The list stays open.
async function recent(board) {
    await openStart(board);
    return board.page.locator('#recent-list button span:nth-of-type(1)').allTextContents();
}

async function chooseRecent(page, title) {
    await Promise.all([
        page.waitForEvent('load'),
        page.locator('#recent-list button', { hasText: title }).first().click(),
    ]);
    return boardOf(page, sizes.desktop);
}

test('the board that is kept stands in the list while a link is looked at, and comes back from there', async () => {
    const { board, page, context } = await open();
    await dragJoint(board, 'C', 60, 0);
    const own = await modelOf(board);
    await goTo(page, board, linkOf(beam('Looked at')));
    assert.deepEqual(await recent(board), [own.title]);
    const back = await chooseRecent(page, own.title);
    assert.deepEqual(await modelOf(back), own);
    assert.match((await back.observe()).undo, /Move joint C/);
    await back.idle();
    assert.deepEqual(await recent(back), [], 'and not the one that is on the screen');
    await context.close();
});

for (const [what, refuse] of Object.entries({
    'a link that is refused': (page) => page.evaluate(() => { location.hash = '#m=1.abc.9.xyz'; }),
    'a file that is refused': (page) => dropFile(page, 'bad.json', '{"gusset": 1, "joints": 3}'),
})) {
    test(`${what} makes no second board of the one that is there`, async () => {
        const { board, page, context } = await open();
        await dragJoint(board, 'C', 60, 0);
        await refuse(page);
        await page.waitForFunction(() => window.gussetTest.observe().message !== '');
        await dragJoint(board, 'C', -30, 0);
        assert.deepEqual(await recent(board), []);
        await context.close();
    });
}

test('a link that was only looked at, and undone, makes no second board', async () => {
    const { board, page, context } = await open();
    await dragJoint(board, 'C', 60, 0);
    const own = await modelOf(board);
    await goTo(page, board, linkOf(beam('Looked at')));
    await page.keyboard.press('Control+z');
    await board.idle();
    assert.deepEqual(await modelOf(board), own);
    await dragJoint(board, 'C', -30, 0);
    assert.deepEqual(await recent(board), []);
    await context.close();
});

test('Back from a link that was only looked at leads to the board before it, not to a copy', async () => {
    const { board, page, context } = await open();
    await dragJoint(board, 'C', 60, 0);
    const own = await modelOf(board);
    await page.waitForFunction(() => location.hash.startsWith('#m='));
    await goTo(page, board, linkOf(beam('Looked at')));
    await page.goBack();
    await page.waitForFunction(() => location.hash.startsWith('#m='));
    await board.idle();
    assert.deepEqual(await modelOf(board), own);
    await dragJoint(board, 'C', -30, 0);
    assert.deepEqual(await recent(board), []);
    await context.close();
});

test('a link that is pasted on the start page leaves the board before it in the list', async () => {
    const { board, page, context } = await open();
    await dragJoint(board, 'C', 60, 0);
    const own = await modelOf(board);
    await openStart(board);
    await page.click('#home-link-text');
    await page.keyboard.insertText(`${shared.site.address}${linkOf(beam('Pasted'))}`);
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => window.gussetTest.observe().model.title === 'Pasted');
    await board.idle();
    await dragJoint(board, 'B', 0, -60);
    await openStart(board);
    await page.locator('#recent-list button', { hasText: own.title }).waitFor();
    await context.close();
});

for (const [name, size] of Object.entries(sizes)) {
    test(`on a ${name}, the tap that opens the list presses none of its boards, and the next one does`, async () => {
        const { board, page, context } = await openBoard(shared.browser, shared.site.address, size);
        await dragJoint(board, 'C', 40, 0);
        await page.evaluate(() => { // a list that covers the place of the tap
            window.sameDocument = true;
            const [text] = Object.entries(localStorage).filter(([key]) => key.startsWith('gusset.work.'))
                .map(([, value]) => value);
            for (let i = 0; i < 7; ++i) {
                localStorage.setItem(`gusset.work.b${i}.0`, text.replace(/^\d+/, `${1700000000000 + i}`));
            }
        });
        assert.equal((await recent(board)).length, 7);
        assert.equal(await page.evaluate(() => window.sameDocument), true);
        assert.equal(await page.locator('#recent-list').isVisible(), true);
        await page.waitForFunction(() => [...document.querySelectorAll('#recent-list img')].every((one) => one.complete));
        await screenshot(page, `recent-${name}`);
        const second = page.locator('#recent-list .card').nth(1);
        await second.scrollIntoViewIfNeeded();
        const box = await second.boundingBox();
        const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
        await Promise.all([page.waitForEvent('load'), board.hands.tap(at)]);
        await context.close();
    });
}

// A program that fails when it judges a stored text containing this word.
async function failToRead(page, word) {
    await page.route('**/program.js', async (route) => {
        const response = await route.fetch();
        const script = await response.text();
        const created = 'const instance = await create';
        assert.ok(script.includes(created));
        const [head, tail] = script.split(created);
        const end = tail.indexOf('\n');
        await route.fulfill({ response, body: `${head}${created}${tail.slice(0, end)}
            const judge = instance._gussetReads;
            const reads = (saved) => (instance.UTF8ToString(saved).includes('${word}')
                ? instance._gussetAbort() : judge(saved));
            // The module puts its own function there again when it is called first.
            Object.defineProperty(instance, '_gussetReads', { enumerable: true, get: () => reads, set: () => {} });
            ${tail.slice(end)}` });
    });
}

test('a stored text that the program fails on harms no other: the board before it is open, and all are listed', async () => {
    const { board, page, context } = await open();
    await dragJoint(board, 'C', 60, 0);
    const own = await modelOf(board);
    await page.close();
    await keepBoard(context, shared.site.address, 'Other');
    await keepBoard(context, shared.site.address, 'Killer');
    const later = await context.newPage();
    await failToRead(later, 'Killer');
    await later.goto(`${shared.site.address}?test`);
    const there = await boardOf(later, sizes.desktop);
    assert.equal((await modelOf(there)).title, 'Other');
    assert.match((await there.observe()).message, /cannot be read.*The board before it is open/);
    const titles = await recent(there);
    assert.deepEqual(titles, ['A board that cannot be read', own.title]);
    assert.equal(await later.locator('#failure').isVisible(), false, 'the board on the screen goes on');
    assert.ok(await later.locator('#recent-list img').last().evaluate((image) =>
        image.decode().then(() => image.naturalWidth > 20)), 'with its picture, though one before it failed');
    await context.close();
});
