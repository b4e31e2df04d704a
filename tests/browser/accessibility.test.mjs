// The page against axe-core's rules (WCAG 2.2 A and AA), with the board and as a page to read; and its keyboard
// navigation.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { test } from 'node:test';
import { openBoard } from './board.mjs';
import { openPage, siteAndBrowser, sizes } from './support.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

const shared = siteAndBrowser();

async function violations(page) {
    await page.evaluate(axe);
    const result = await page.evaluate((tags) => window.axe.run({ runOnly: tags }), rules);
    assert.ok(result.passes.length > 10, 'the rules ran');
    return result.violations.map(({ id, nodes }) =>
        `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

for (const colorScheme of ['light', 'dark']) {
    test(`axe finds no fault with the board or the page to read, ${colorScheme}`, async () => {
        const { page, board, context } =
            await openBoard(shared.browser, shared.site.address, { ...sizes.desktop, colorScheme });
        assert.deepEqual(await violations(page), []);
        await page.locator('#skip').focus();
        await page.keyboard.press('Enter');
        await board.idle();
        assert.deepEqual(await violations(page), []);
        await context.close();
    });
}

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
    assert.match(await page.locator('#announcer').textContent(), /^Unstable: /);
    assert.match(await page.locator('#board').getAttribute('aria-label'), /1 support/);
    await context.close();
});

test('the manual is without fault by axe at a phone’s width, and none of its links or pictures is missing', async () => {
    const { page, context } = await openPage(shared.browser, shared.site.address, sizes.phone);
    const missing = [];
    page.on('response', (response) => response.ok() || missing.push(response.url()));
    await page.goto(`${shared.site.address}help/`);
    assert.deepEqual(await violations(page), []);
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
