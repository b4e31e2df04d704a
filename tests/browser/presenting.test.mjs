// In front of a class: large type, one step at a time, and nothing that needs a hovering pointer.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { openBoard } from './board.mjs';
import { screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

async function present(size) {
    const opened = await openBoard(shared.browser, shared.site.address, sizes[size]);
    const { board } = opened;
    await board.press('View');
    await board.press('Present in large type');
    await board.page.keyboard.press('Escape'); // closes the menu
    await board.idle();
    await board.press('Working');
    return opened;
}

const step = async (board) => (await board.observe()).step;

for (const size of ['tablet', 'phone']) {
    test(`presenting on a ${size}, a finger drawn across the notebook leafs through the working`, async () => {
        const { board, page, context, errors } = await present(size);
        const { item } = await board.find('notebook');
        const right = { x: item.x + 0.8 * item.width, y: item.y + 0.7 * item.height };
        const left = { x: item.x + 0.2 * item.width, y: right.y - 4 };
        assert.equal(await step(board), 0);
        await board.drag(right, left);
        await board.drag(right, left);
        assert.equal(await step(board), 2);
        await board.drag(left, right);
        assert.equal(await step(board), 1);
        await board.drag(right, { x: right.x - 20, y: right.y }); // too short to be a swipe
        await board.drag(right, { x: right.x - 60, y: right.y - 100 }); // scrolls
        assert.equal(await step(board), 1);
        await screenshot(page, `presenting-${size}`);
        assert.deepEqual(errors, []);
        await context.close();
    });
}

test('presenting at a desk, a clicker and the arrows leaf, the column is wide, a ring follows the pointer', async () => {
    const { board, page, context, errors } = await present('desktop');
    const { item } = await board.find('notebook');
    assert.ok(item.width > 0.44 * sizes.desktop.viewport.width, `${item.width} px`);
    for (const key of ['PageDown', 'ArrowRight', 'ArrowRight', 'ArrowLeft']) {
        await page.keyboard.press(key);
        await board.idle();
    }
    assert.equal(await step(board), 2);
    const { model } = await board.observe();
    await page.mouse.move(300, 300);
    await page.mouse.move(320, 320);
    assert.equal(await page.locator('#pointer-halo').isVisible(), true);
    await screenshot(page, `presenting-desktop`);
    assert.deepEqual((await board.observe()).model, model);
    assert.deepEqual(errors, []);
    await context.close();
});

for (const size of ['desktop', 'tablet']) {
    test(`leaving the presentation on a ${size} brings back the view, the notebook and its place`, async () => {
        const { board, page, context, errors } = await openBoard(
            shared.browser, shared.site.address, sizes[size]);
        await board.press('Model');
        const { item } = await board.find('notebook');
        const middle = { x: item.x + item.width / 2, y: item.y + item.height / 2 };
        await board.drag({ x: 60, y: 120 }, { x: 90, y: 150 }); // the board is moved
        if (size === 'desktop') {
            await page.mouse.move(middle.x, middle.y);
            await page.mouse.wheel(0, 180);
            await board.idle();
        } else {
            await board.drag(middle, { x: middle.x, y: middle.y - 180 });
        }
        const places = async () => {
            const { items, origin, scale } = await board.observe();
            const { item: sheet } = await board.find('notebook');
            const rows = items.filter(({ label }) => /^(joint|member)\.\d+\.(x|ends)$/.test(label));
            return { origin, scale, width: sheet.width, rows: rows.map(({ label, y }) => [label, y]) };
        };
        const before = await places();
        const turnPresenting = async () => {
            await board.press('View');
            await board.press('Present in large type');
            await page.keyboard.press('Escape'); // closes the menu
            await board.idle();
        };
        await turnPresenting();
        await board.press('Working');
        await board.press('Next step');
        await turnPresenting();
        assert.deepEqual(await places(), before);
        assert.deepEqual(errors, []);
        await context.close();
    });
}
