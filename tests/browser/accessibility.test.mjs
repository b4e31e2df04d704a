// The page against axe-core's rules (WCAG 2.2 A and AA), with the board and as a page to read; and its keyboard
// navigation.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { openBoard, openStart } from './board.mjs';
import { faultsByAxe } from './judged.mjs';
import { linkTo, openPage, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

async function readTables({ page, board }) {
    await page.locator('#skip').focus();
    await page.keyboard.press('Enter');
    await board.idle();
    await page.locator('#tables-content nav').waitFor();
}

for (const colorScheme of ['light', 'dark']) {
    test(`axe finds no fault with the board or the page to read, ${colorScheme}`, async () => {
        const opened = await openBoard(shared.browser, shared.site.address, { ...sizes.desktop, colorScheme });
        const { page, context } = opened;
        assert.deepEqual(await faultsByAxe(page), []);
        await readTables(opened);
        assert.deepEqual(await faultsByAxe(page), []);
        await context.close();
    });
}

// Every part of the page shown, each working (a tablet shows it as a desktop does), a cell being typed in and one that
// is refused.
for (const [at, [name, size]] of Object.entries(sizes).entries()) {
    const theme = ['paper', 'dark', 'sun'][at];
    test(`axe finds no fault with any state of the tables’ page on a ${name}, ${theme}`, async () => {
        const opened = await openBoard(shared.browser, shared.site.address, size, linkTo('farm_bridge.json'));
        const { page, board, context, errors } = opened;
        await readTables(opened);
        await page.evaluate((look) => { document.documentElement.dataset.theme = look; }, theme);
        for (const part of [0, 1, 2, 3, 4, 5]) {
            await page.locator(`[data-press="page.show.${part}"]`).click();
            await board.idle();
        }
        assert.deepEqual(await faultsByAxe(page), []);
        await screenshot(page, `tables-page-${name}`);
        for (const working of name === 'tablet' ? [] : ['1', '2', '3']) {
            await page.locator('[data-ask="page.ask.8"]').selectOption(working);
            await board.idle();
            assert.deepEqual(await faultsByAxe(page), [], `working ${working}`);
        }
        const levels = await page.locator('#page :is(h1, h2, h3, h4, h5, h6)').evaluateAll((all) =>
            all.map(({ tagName }) => Number(tagName[1])));
        levels.forEach((level, i) => assert.ok(level <= (levels[i - 1] ?? 0) + 1, `h${level} after h${levels[i - 1]}`));
        await page.locator('[data-cell="page.joint.1.x"]').click();
        await page.keyboard.type('about three');
        await page.keyboard.press('Enter');
        assert.deepEqual(await faultsByAxe(page), [], 'a refused text');
        assert.deepEqual(errors, []);
        await context.close();
    });
}

test('beside the board nothing of the page takes the focus, and the board shows that it has it', async () => {
    const { page, board, context } = await openBoard(shared.browser, shared.site.address, sizes.desktop);
    for (const id of ['skip', 'skip-start', 'board']) {
        await page.keyboard.press('Tab');
        assert.equal(await page.evaluate(() => document.activeElement.id), id);
    }
    const ring = await page.locator('#board').evaluate((one) => getComputedStyle(one).outlineStyle);
    assert.equal(ring, 'solid');
    await screenshot(page, 'focus-board');
    for (let i = 0; i < 4; ++i) {
        await page.keyboard.press('Tab');
        const inPage = await page.evaluate(() => document.getElementById('page').contains(document.activeElement));
        assert.equal(inPage, false);
    }
    assert.deepEqual(await page.evaluate(() => [scrollX, scrollY, document.getElementById('page').scrollTop]), [0, 0, 0]);
    await board.idle();
    await context.close();
});

test('everything that takes the focus on the tables’ page shows it', async () => {
    const opened = await openBoard(shared.browser, shared.site.address, sizes.desktop);
    const { page, context } = opened;
    await readTables(opened);
    const bare = await page.evaluate(() => {
        const all = [...document.querySelectorAll('#page :is(a, button, select, summary, input)')];
        return all.filter((one) => {
            one.focus({ focusVisible: true });
            const { outlineStyle, borderStyle } = getComputedStyle(one);
            return outlineStyle === 'none' && one.tagName !== 'INPUT' && borderStyle;
        }).map((one) => one.outerHTML.slice(0, 80));
    });
    assert.deepEqual(bare, []);
    await context.close();
});

test('the contents lead to each part of the page', async () => {
    const opened = await openBoard(shared.browser, shared.site.address, sizes.phone);
    const { page, context } = opened;
    await readTables(opened);
    const names = await page.locator('#tables-content > h3').allTextContents();
    assert.ok(names.length > 6, names.join(', '));
    assert.deepEqual(await page.locator('nav button').allTextContents(), names);
    await page.locator('nav button', { hasText: 'The working' }).click();
    assert.equal(await page.evaluate(() => document.activeElement.textContent), 'The working');
    const top = await page.evaluate(() => document.activeElement.getBoundingClientRect().top);
    assert.ok(top > -1 && top < 400, `${top} px from the top`);
    await context.close();
});

test('a dialog gives the focus back to the board', async () => {
    const { page, board, context } = await openBoard(shared.browser, shared.site.address, sizes.desktop);
    await openStart(board);
    await page.keyboard.press('Escape');
    assert.equal(await page.evaluate(() => document.activeElement.id), 'board');
    await context.close();
});

test('the keyboard goes from the skip link to the tables with the working, and back', async () => {
    const { page, board, context } = await openBoard(shared.browser, shared.site.address, sizes.desktop);
    await page.evaluate(() => document.activeElement.blur());
    await page.keyboard.press('Tab');
    assert.equal(await page.evaluate(() => document.activeElement.id), 'skip');
    await page.keyboard.press('Enter');
    await board.idle();
    assert.ok(await page.locator('#tables-content table').first().isVisible());
    assert.ok((await page.locator('#tables-content math').count()) > 10, 'the working is in MathML');
    assert.equal(new URL(page.url()).hash, '', 'the fragment stays the model’s');
    await page.keyboard.press('Escape');
    assert.equal(await page.evaluate(() => document.activeElement.id), 'board');
    await context.close();
});

test('what changed is announced, and the canvas says what it shows', async () => {
    const { page, board, context } = await openBoard(shared.browser, shared.site.address, sizes.desktop);
    assert.match(await page.locator('#board').getAttribute('aria-label'), /8 joints, 13 members/);
    const joint = await board.joint('A');
    await board.press('Erase');
    await board.tap({ x: joint.x, y: joint.y + 18 }); // the support below it
    assert.match(await page.locator('#announcer').textContent(), /^Done: Remove support.*Unstable: /);
    assert.match(await page.locator('#board').getAttribute('aria-label'), /1 support/);
    await context.close();
});

test('the manual is without fault by axe at a phone’s width, and none of its links or pictures is missing', async () => {
    const { page, context } = await openPage(shared.browser, shared.site.address, sizes.phone);
    const missing = [];
    page.on('response', (response) => response.ok() || missing.push(response.url()));
    await page.goto(`${shared.site.address}help/`);
    assert.deepEqual(await faultsByAxe(page), []);
    assert.deepEqual(missing, []);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    assert.ok(wide <= 0, `${wide} px scroll sideways`);
    const links = await page.locator('a').evaluateAll((all) => all.map((one) => one.href));
    for (const link of links) {
        const [address, fragment] = link.split('#');
        assert.equal((await page.request.get(address)).status(), 200, link);
        if (fragment) {
            assert.equal(await page.locator(`[id="${fragment}"]`).count(), 1, link);
        }
    }
    await context.close();
});
