// The graphics context is lost and not restored: the board remains usable as tables.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { dragJoint, openBoard } from './board.mjs';
import { screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

const lose = (page) => page.evaluate(() => {
    const context = document.getElementById('board').getContext('webgl2');
    window.loss = context.getExtension('WEBGL_lose_context');
    window.loss.loseContext();
});

for (const [name, size] of Object.entries(sizes)) {
    test(`on a ${name} the tables are offered in words, can be changed, and the board comes back`, async () => {
        const { page, context, board } = await openBoard(shared.browser, shared.site.address, size);
        await dragJoint(board, 'C', 40, 0);
        const hadNotebook = await board.has('Close the notebook');
        await lose(page);
        const status = page.locator('#status', { hasText: 'The board is safe' });
        await status.waitFor({ state: 'visible' });
        assert.match(await status.textContent(), /tables below/);
        const cell = page.locator('[data-cell]').nth(2);
        assert.equal(await cell.isVisible(), true);
        await screenshot(page, `lost-drawing-${name}`);

        // A member's load is changed in the table, without a drawing.
        const before = await board.table('Member forces');
        const { model } = await board.observe();
        const row = page.locator('#tables-content table', { hasText: 'Joints' }).first().locator('tbody tr').nth(1);
        await row.locator('[data-cell]').nth(1).click();
        await page.keyboard.type('3.5');
        await page.keyboard.press('Enter');
        await page.waitForFunction((joints) =>
            JSON.stringify(window.gussetTest.observe().model.joints) !== joints, JSON.stringify(model.joints));
        await board.idle();
        assert.notDeepEqual(await board.table('Member forces'), before);

        await page.evaluate(() => window.loss.restoreContext());
        await page.waitForFunction(() => document.body.classList.contains('has-board'));
        assert.equal(await page.locator('#status').isVisible(), false);
        await board.idle();
        assert.equal(await board.has('Close the notebook'), hadNotebook);
        const moved = (await board.observe()).model;
        await dragJoint(board, 'C', 0, -60);
        assert.notDeepEqual((await board.observe()).model, moved, 'it is drawn and dragged as before');
        await screenshot(page, `drawing-back-${name}`);
        await context.close();
    });
}

test('a context that comes back soon is no loss', async () => {
    const { page, context } = await openBoard(shared.browser, shared.site.address, sizes.desktop);
    await lose(page);
    await page.evaluate(() => window.loss.restoreContext());
    await page.waitForFunction(() => !document.getElementById('board').getContext('webgl2').isContextLost());
    assert.equal(await page.locator('#status').isVisible(), false);
    await context.close();
});
