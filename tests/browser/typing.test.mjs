// Text typed on a touch screen: the sign key that decimal keypads lack, and the field above the keyboard.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { openBoard } from './board.mjs';
import { siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

async function openCell(size, before) {
    const opened = await openBoard(shared.browser, shared.site.address, size);
    await before?.(opened.page);
    await opened.board.press('Model');
    await opened.board.press('joint.0.x');
    await opened.page.locator('#field-input').waitFor({ state: 'visible' });
    return opened;
}

test('the ± key turns the sign and turns it back, without ending the typing', async () => {
    const { page, board, context } = await openCell(sizes.phone);
    const input = page.locator('#field-input');
    await input.fill('2.5');
    assert.equal(await input.getAttribute('aria-label'), 'x of joint A', 'who hears the field hears words');
    const key = await page.locator('#field-sign').boundingBox();
    assert.ok(key.width >= 44 && key.height >= 44, 'large enough for a thumb');
    const { width } = page.viewportSize();
    assert.ok(key.x >= 0 && key.x + key.width <= width, 'on the screen');
    await page.locator('#field-sign').tap();
    assert.equal(await input.inputValue(), '-2.5');
    await page.locator('#field-sign').tap();
    assert.equal(await input.inputValue(), '2.5');
    await page.locator('#field-sign').tap();
    assert.equal(await page.evaluate(() => document.activeElement.id), 'field-input');
    await page.keyboard.press('Enter');
    await board.idle();
    assert.equal((await board.observe()).model.joints[0].x, -2.5);
    await context.close();
});

test('with a mouse there is no such key', async () => {
    const { page, context } = await openCell(sizes.desktop);
    assert.equal(await page.locator('#field-sign').isVisible(), false);
    await context.close();
});

// A headless browser opens no on-screen keyboard; its effect on the page, a smaller visual viewport, is simulated
// here.
test('when a keyboard covers the lower half the field is lifted above it, and goes back after', async () => {
    const { page, board, context } = await openCell(sizes.phone);
    const before = await page.locator('#field-input').boundingBox();
    const shown = await page.evaluate((bottom) => {
        const view = window.visualViewport;
        const height = bottom - 40;
        Object.defineProperty(view, 'height', { configurable: true, get: () => height });
        view.dispatchEvent(new Event('resize'));
        return height;
    }, before.y + before.height);
    const lifted = await page.locator('#field-input').boundingBox();
    assert.ok(lifted.y + lifted.height <= shown, `${lifted.y + lifted.height} of ${shown}`);
    assert.ok(lifted.y > 0);
    await page.keyboard.press('Escape');
    await board.idle();
    assert.equal(await page.evaluate(() => document.getElementById('stage').style.transform), '');
    await context.close();
});

test('a tap elsewhere ends the typing and keeps what was typed', async () => {
    const { page, board, context } = await openCell(sizes.phone);
    await page.locator('#field-input').fill('1.5');
    await board.tap({ x: 195, y: 160 });
    assert.equal((await board.observe()).model.joints[0].x, 1.5);
    await context.close();
});

test('the device turned while typing keeps the text, and the field where its cell is', async () => {
    const { page, board, context } = await openCell(sizes.phone);
    await page.locator('#field-input').fill('1.25');
    await page.setViewportSize({ width: 844, height: 390 });
    await board.idle();
    if (await page.locator('#field-input').isVisible()) {
        assert.equal(await page.locator('#field-input').inputValue(), '1.25');
        await page.keyboard.press('Enter');
        await board.idle();
    }
    assert.equal((await board.observe()).model.joints[0].x, 1.25);
    await context.close();
});

// A roof with a decimal comma, and a coordinate that needs one.
function withComma() {
    const model = {
        gusset: 1,
        joints: [['A', 0, 0], ['B', 6.5, 0], ['C', 3.25, 4]].map(([id, x, y]) => ({ id, x, y })),
        members: [['A', 'B'], ['B', 'C'], ['C', 'A']].map(([a, b]) => ({ a, b })),
        supports: [{ joint: 'A', kind: 'pin' }, { joint: 'B', kind: 'roller', reaction: 90 }],
        loads: [{ joint: 'C', fx: 0, fy: -10.5 }],
        class: { numbers: { sign: ',' } },
    };
    return `#j=${encodeURIComponent(JSON.stringify(model))}`;
}

test('a class that writes a decimal comma types one too, in the notebook and in the page’s tables', async () => {
    const { page, board, context } = await openBoard(
        shared.browser, shared.site.address, sizes.desktop, withComma());
    await board.press('Model');
    await board.press('joint.2.x');
    const input = page.locator('#field-input');
    await input.waitFor({ state: 'visible' });
    assert.equal(await input.inputValue(), '3,25');
    await input.fill('2,753');
    await page.keyboard.press('Tab');
    await board.idle();
    assert.equal((await board.observe()).model.joints[2].x, 2.753);
    await page.keyboard.press('Escape');
    await page.locator('#skip').press('Enter');
    assert.equal(await page.locator('[data-cell="page.joint.1.x"]').getAttribute('data-text'), '6,5');
    await context.close();
});
