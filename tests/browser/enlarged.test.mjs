// A page zoomed to 400 %: of 1366 × 768, 342 × 192 CSS px remain, with four pixels each.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { openBoard } from './board.mjs';
import { screenshot, siteAndBrowser } from './support.mjs';

const shared = siteAndBrowser();
const enlarged = { viewport: { width: 342, height: 192 }, deviceScaleFactor: 4 };

test('enlarged four times, the page shows the board or the notebook, and each leads to the other', async () => {
    const { board, page, context, errors } = await openBoard(shared.browser, shared.site.address, enlarged);
    assert.equal(await board.has('notebook'), false);
    const at = await Promise.all(['A', 'C', 'H'].map((label) => board.joint(label)));
    const tools = (await board.find('tools')).item;
    const header = (await board.find('header')).item;
    for (const { x, y } of at) {
        assert.ok(x > 0 && x < 342 && y > header.y + header.height && y < tools.y, `${x}, ${y}`);
    }
    assert.ok(at[2].x - at[0].x > 100, 'the drawing is no dot');
    await screenshot(page, 'enlarged-board');

    await board.press('Open the notebook');
    assert.equal(await board.has('tools'), false);
    const notebook = (await board.find('notebook')).item;
    assert.equal(Math.round(notebook.y + notebook.height), 192);
    assert.ok(notebook.width >= 342);
    await screenshot(page, 'enlarged-notebook');
    await board.press('Close the notebook');
    assert.equal(await board.has('tools'), true);
    assert.deepEqual(errors, []);
    await context.close();
});
