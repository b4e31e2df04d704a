// The start page: what a stranger meets first, the way to every board, and Back and Forward between the page's views.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import path from 'node:path';
import { arriveAtStart, boardOf, dragJoint, keepBoard, openBoard, openStart } from './board.mjs';
import { faultsByAxe } from './judged.mjs';
import { beam, firstFrame, linkOf, linkTo, openPage, root, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();
const { examples } = JSON.parse(readFileSync(path.join(root, 'site/examples/index.json'), 'utf8'));

const arrive = (...all) => arriveAtStart(shared, ...all);
const isAtStart = (page) => page.locator('#home').isVisible();
const titleOnBoard = async (page) => (await page.evaluate(() => window.gussetTest.observe().model.title));
const waitForTitle = (page, title) =>
    page.waitForFunction((wanted) => window.gussetTest?.observe().model.title === wanted, title);
const chooseExample = async (page, title) => {
    await page.locator('#home-examples button', { hasText: title }).click();
    await waitForTitle(page, title);
};

for (const [name, size] of Object.entries(sizes)) {
    test(`on a ${name} a stranger meets the name, what it is for, and what can be done`, async () => {
        const { page, context, errors, strangers } = await arrive(size);
        assert.equal(await page.locator('h1:visible').innerText(), 'Gusset');
        assert.match(await page.locator('#home header').innerText(), /Draw a plane truss, find its forces/);
        await firstFrame(page);
        await page.locator('#home-examples button').last().waitFor();
        await page.locator('#home-form:not([aria-busy])').waitFor({ state: 'attached' });
        const headings = await page.locator('h2:visible').allInnerTexts();
        assert.deepEqual(headings, ['New', 'Open', 'Recent boards', 'Examples']);
        assert.equal(await page.locator('#home-go').isVisible(), false, 'no board is anybody’s yet');
        const small = await page.locator('#home :is(a, button, input, select, summary):visible').evaluateAll((all) => all
            .filter((one) => one.getBoundingClientRect().height < 44 || one.getBoundingClientRect().width < 44)
            .map((one) => one.outerHTML.slice(0, 80)));
        assert.deepEqual(small, [], 'targets under 44 px');
        const wide = await page.locator('#home').evaluate((home) => home.scrollWidth - home.clientWidth);
        assert.ok(wide <= 0, `${wide} px wider than the page`);
        await screenshot(page, `home-${name}`);
        await page.locator('#home-examples button').nth(7).scrollIntoViewIfNeeded();
        await screenshot(page, `home-examples-${name}`);
        assert.deepEqual(errors, []);
        assert.deepEqual(strangers, []);
        await context.close();
    });
}

test('every example has its picture, in the colours of the theme', async () => {
    for (const scheme of ['light', 'dark']) {
        const { page, context } = await arrive(sizes.desktop, '?test', { colorScheme: scheme });
        await firstFrame(page);
        await page.locator('#home-examples img').last().waitFor();
        const pictures = await page.locator('#home-examples img').evaluateAll((all) => Promise.all(all.map(async (image) => {
            image.scrollIntoView();
            await image.decode();
            const sheet = new OffscreenCanvas(image.naturalWidth, image.naturalHeight);
            const pen = sheet.getContext('2d');
            pen.drawImage(image, 0, 0);
            const { data } = pen.getImageData(0, 0, sheet.width, sheet.height);
            const inked = data.filter((_, i) => i % 4 === 0 && Math.abs(data[i] - data[0]) > 60).length;
            return { paper: data[0], inked };
        })));
        assert.equal(pictures.length, examples.length);
        for (const { paper, inked } of pictures) {
            assert.ok(scheme === 'light' ? paper > 200 : paper < 60, `paper ${paper} in the ${scheme} theme`);
            assert.ok(inked > 100, `${inked} px of ink`);
        }
        await screenshot(page, `home-${scheme}`);
        await context.close();
    }
});

test('the start page can be read before the program is there', async () => {
    const { page, context } = await openPage(shared.browser, shared.site.address, { ...sizes.phone, atStart: true });
    let letGo;
    const held = new Promise((resolve) => { letGo = resolve; });
    await page.route('**/gusset.wasm', async (route) => {
        await held;
        await route.continue();
    });
    await page.goto(`${shared.site.address}?test`);
    await page.locator('#home-examples img').first().waitFor();
    const { title } = examples[1];
    await page.locator('#home-examples button', { hasText: title }).click();
    letGo();
    await waitForTitle(page, title);
    assert.equal(await isAtStart(page), false);
    await context.close();
});

test('a link opens the board directly, and so does a browser that keeps a board', async () => {
    const { page, context, board } = await openBoard(shared.browser, shared.site.address, sizes.desktop,
        linkTo('cottage_roof.json'));
    assert.equal(await isAtStart(page), false);
    await dragJoint(board, 'C', 40, 0);
    const { model } = await board.observe();
    await page.evaluate(() => window.gussetTest.reachedDisk());
    await page.close();
    const later = await context.newPage();
    await later.addInitScript(() => history.replaceState(null, '')); // as a new tab has it
    await later.goto(`${shared.site.address}?test`);
    const there = await boardOf(later, sizes.desktop);
    assert.equal(await isAtStart(later), false);
    assert.deepEqual((await there.observe()).model, model);
    await openStart(there);
    assert.match(await later.locator('#home-go').innerText(), new RegExp(`Go on\\s+${model.title}`));
    await later.locator('#home-go-card button').click();
    assert.equal(await isAtStart(later), false);
    assert.deepEqual((await there.observe()).model, model);
    await context.close();
});

test('Back leads from the tables to the board and from the board to the start page, and Forward again', async () => {
    const { page, context } = await arrive();
    await firstFrame(page);
    const [one, other] = examples.slice(1).map(({ title }) => title);
    await chooseExample(page, one);
    const board = await boardOf(page, sizes.desktop);
    await page.waitForFunction(() => location.hash.startsWith('#m='));
    await page.locator('#skip').focus();
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.body.classList.contains('reading'));
    await page.goBack();
    await page.waitForFunction(() => !document.body.classList.contains('reading'));
    assert.equal(await isAtStart(page), false);
    await dragJoint(board, 'C', 30, 0);
    const changed = (await board.observe()).model;
    await page.goBack(); // at once: the address of the board need not have followed
    await page.locator('#home-title').waitFor({ state: 'visible' });
    assert.equal(new URL(page.url()).hash, '');
    await page.goForward();
    await page.waitForFunction(() => !document.body.classList.contains('at-start'));
    await board.idle();
    assert.deepEqual((await board.observe()).model, changed, 'with the last change');

    const lengths = [];
    for (let round = 0; round < 3; ++round) { // there and back again
        await board.press('Start page');
        await page.locator('#home-go-card button').waitFor();
        await page.locator('#home-go-card button').click();
        await page.waitForFunction(() => history.state.view === 'board');
        lengths.push(await page.evaluate(() => history.length));
    }
    assert.deepEqual(lengths, [lengths[0], lengths[0], lengths[0]], 'nothing piles up');

    await board.press('Start page');
    await page.waitForFunction(() => history.state.view === 'start');
    await chooseExample(page, other);
    await page.goBack();
    await page.locator('#home-title').waitFor({ state: 'visible' });
    await context.close();
});

test('from a linked board the start page is one entry on, and Back leads to the board as it was left', async () => {
    const { page, context, board } = await openBoard(shared.browser, shared.site.address, sizes.desktop,
        linkTo('cottage_roof.json'));
    await dragJoint(board, 'C', 30, 0);
    const { model } = await board.observe();
    await openStart(board);
    await chooseExample(page, examples[0].title);
    await page.goBack();
    await page.locator('#home-title').waitFor({ state: 'visible' });
    await page.goBack();
    await waitForTitle(page, model.title);
    assert.deepEqual((await board.observe()).model, model);
    await context.close();
});

test('a reload stays where it was: on the start page, on the board, on the tables', async () => {
    const { page, context } = await arrive();
    await firstFrame(page);
    await page.reload();
    await page.locator('#home-title').waitFor({ state: 'visible' });
    await firstFrame(page);
    await page.locator('#form-put:enabled').click();
    await page.waitForFunction(() => window.gussetTest.observe().model.title === 'Pratt truss');
    await page.reload();
    const board = await boardOf(page, sizes.desktop);
    assert.equal(await titleOnBoard(page), 'Pratt truss');
    await board.press('Share');
    await board.reveal('Tables and print');
    await board.press('Tables and print');
    await page.reload();
    await firstFrame(page);
    assert.equal(await page.evaluate(() => document.body.classList.contains('reading')), true);
    await page.locator('#close-tables').click();
    assert.equal(await page.evaluate(() => document.body.classList.contains('reading')), false);
    assert.equal(await isAtStart(page), false);
    await context.close();
});

test('Escape goes back to the board, and the keys go where they are seen', async () => {
    const { page, context, board } = await openBoard(shared.browser, shared.site.address, sizes.desktop,
        linkTo('footbridge.json'));
    await openStart(board);
    assert.equal(await page.evaluate(() => document.activeElement.id), 'home-title');
    const { model } = await board.observe();
    await page.keyboard.press('Control+a');
    await page.keyboard.press('Delete');
    assert.deepEqual((await board.observe()).model, model, 'not to the board beneath');
    await page.keyboard.press('Tab');
    assert.equal(await page.evaluate(() => document.activeElement.textContent), 'Help');
    await page.keyboard.press('Escape');
    assert.equal(await isAtStart(page), false);
    assert.equal(await page.evaluate(() => document.activeElement.id), 'board');
    await context.close();
});

test('what is refused is said on the start page, which stays', async () => {
    const { page, context, board } = await openBoard(shared.browser, shared.site.address, sizes.desktop,
        linkTo('footbridge.json'));
    await openStart(board);
    await page.fill('#home-link-text', 'https://example.org/#m=1.abc.9.xyz');
    await page.locator('#home-link button').click();
    await page.locator('#home-says:not(:empty)').waitFor();
    assert.match(await page.locator('#home-says').innerText(), /link/i);
    assert.equal(await isAtStart(page), true);
    await page.fill('#home-link-text', `see ${shared.site.address}${linkOf(beam('Sent'))}`.slice(4));
    await page.locator('#home-link button').click();
    await waitForTitle(page, 'Sent');
    assert.equal(await isAtStart(page), false);
    await context.close();
});

test('a recent board is named anew, removed, and brought back', async () => {
    const { page, context, board } = await openBoard(shared.browser, shared.site.address, sizes.desktop,
        linkTo('footbridge.json'));
    await keepBoard(context, shared.site.address, 'First');
    await keepBoard(context, shared.site.address, 'Second');
    await openStart(board);
    const titles = () => page.locator('#recent-list .title').allInnerTexts();
    assert.deepEqual(await titles(), ['Second', 'First']);
    await page.getByRole('button', { name: 'Rename First' }).click();
    await page.keyboard.type('Porch');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Remove Porch' }).waitFor();
    assert.deepEqual(await titles(), ['Second', 'Porch'], 'in its old place');
    await page.getByRole('button', { name: 'Rename Second' }).click();
    await page.keyboard.press('Escape');
    assert.deepEqual(await titles(), ['Second', 'Porch']);
    assert.equal(await isAtStart(page), true);
    const bringBack = page.getByRole('button', { name: 'Bring it back' });
    await page.getByRole('button', { name: 'Remove Second' }).click();
    await bringBack.waitFor();
    assert.deepEqual(await titles(), ['Porch']);
    await bringBack.click();
    await page.getByRole('button', { name: 'Remove Second' }).waitFor();
    assert.deepEqual(await titles(), ['Second', 'Porch']);
    await screenshot(page, 'home-recent-desktop');
    await page.getByRole('button', { name: 'Remove Second' }).click();
    await bringBack.waitFor();
    await page.locator('#home-go-card button').click();
    await openStart(board);
    assert.deepEqual(await titles(), ['Porch'], 'removed for good');
    await Promise.all([page.waitForEvent('load'), page.locator('#recent-list .card').click()]);
    await boardOf(page, sizes.desktop);
    assert.equal(await titleOnBoard(page), 'Porch');
    assert.equal(await isAtStart(page), false);
    await page.goBack();
    await page.locator('#home-title').waitFor({ state: 'visible' });
    await context.close();
});

test('a board that another tab has open is neither removed nor renamed', async () => {
    const { page, context, board } = await openBoard(shared.browser, shared.site.address, sizes.desktop,
        linkTo('footbridge.json'));
    const other = await context.newPage();
    await other.goto(`${shared.site.address}?test&other${linkOf(beam('Elsewhere'))}`);
    await dragJoint(await boardOf(other, sizes.desktop), 'B', 0, -60);
    await other.evaluate(() => window.gussetTest.reachedDisk());
    await page.bringToFront();
    await openStart(board);
    await page.getByRole('button', { name: 'Remove Elsewhere' }).click();
    await page.locator('#home-says', { hasText: 'another tab' }).waitFor();
    assert.deepEqual(await page.locator('#recent-list .title').allInnerTexts(), ['Elsewhere']);
    await context.close();
});

test('the start page has no fault against WCAG 2.2 AA in any theme', async () => {
    for (const [colorScheme, contrast] of [['light', null], ['dark', null], ['light', 'more']]) {
        const { page, context } = await arrive(sizes.phone, '?test', { colorScheme, contrast });
        await firstFrame(page);
        await page.locator('#home-form-title').click();
        await page.locator('#form-put:enabled').waitFor();
        await page.locator('#form-add').click();
        await page.locator('#home-examples img').last().waitFor();
        assert.deepEqual(await faultsByAxe(page), [], colorScheme);
        await screenshot(page, `home-phone-${colorScheme}-${contrast ?? 'usual'}`);
        await context.close();
    }
});

test('the button of the start page is at the left of the header, large enough', async () => {
    for (const size of Object.values(sizes)) {
        const { page, context, board } = await openBoard(shared.browser, shared.site.address, size,
            linkTo('footbridge.json'));
        const { item } = await board.find('Start page');
        assert.ok(item.width >= 44 && item.height >= 44 && item.x < 16, JSON.stringify(item));
        await board.press('Start page');
        await page.locator('#home-title').waitFor({ state: 'visible' });
        await context.close();
    }
});

test('the title is edited where it stands, by a tap and by the keyboard', async () => {
    for (const [size, open] of [
        [sizes.phone, async (board) => board.press('title')],
        [sizes.desktop, async ({ page, idle, observe }) => {
            await page.focus('#board');
            await page.keyboard.press('F6'); // into the header, at its first button
            await idle();
            for (let steps = 0; steps < 3 && !/^title/.test((await observe()).focus); ++steps) {
                await page.keyboard.press('Tab');
                await idle();
            }
            await page.keyboard.press('Enter');
        }],
    ]) {
        const { page, context, board } = await openBoard(shared.browser, shared.site.address, size,
            linkTo('footbridge.json'));
        const { item } = await board.find('title');
        assert.ok(item.height >= 44 && item.width >= 100, JSON.stringify(item));
        await open(board);
        await page.locator('#field-input').waitFor({ state: 'visible' });
        assert.equal(await page.locator('#field-input').inputValue(), examples[0].title, 'whole, as it is');
        await page.locator('#field-input').fill('Bridge at the weir');
        await page.keyboard.press('Enter');
        await waitForTitle(page, 'Bridge at the weir');
        await context.close();
    }
});
