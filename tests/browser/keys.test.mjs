// The page by keyboard only: into the panels, around in them, and out again.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { dragJoint, openBoard } from './board.mjs';
import { screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

async function open() {
    const opened = await openBoard(shared.browser, shared.site.address, sizes.desktop);
    const { page, board } = opened;
    await page.evaluate(() => document.getElementById('board').focus());
    const focus = async () => (await board.observe()).focus;
    const strike = async (key) => {
        await page.keyboard.press(key);
        await board.idle();
        return focus();
    };
    // Until the item has the focus; fails if the focus cycles without reaching it.
    const strikeUntil = async (key, label) => {
        const seen = [];
        for (let i = 0; i < 120; ++i) {
            const now = await strike(key);
            if (now.split('##').some((part) => part === label || part.startsWith(`${label}:`))) {
                return;
            }
            seen.push(now);
        }
        assert.fail(`${key} never came to "${label}": ${[...new Set(seen)].join(' | ')}`);
    };
    return { ...opened, focus, strike, strikeUntil };
}

test('F6 leads from the board through the panels and back to it', async () => {
    const { board, strike, focus, context } = await open();
    assert.equal(await focus(), '', 'the board has the keys');
    const first = await strike('F6');
    assert.notEqual(first, '');
    const seen = new Set([first]);
    for (let i = 0; i < 6 && (await strike('F6')) !== ''; ++i) {
        seen.add(await focus());
    }
    assert.ok(seen.size >= 3, `header, tools, notebook: ${[...seen].join(' | ')}`);
    assert.equal(await focus(), '');
    assert.ok((await board.observe()).solved);
    await context.close();
});

test('a move is undone, a tool chosen, a tab opened and a number typed without a pointer', async () => {
    const { page, board, strike, strikeUntil, context, errors } = await open();
    const before = (await board.observe()).model;
    await dragJoint(board, 'C', 60, 0);
    await strike('F6');
    await strikeUntil('Tab', 'Undo');
    await strike('Enter');
    assert.deepEqual((await board.observe()).model, before);
    await strikeUntil('F6', 'Select');
    await strikeUntil('Tab', 'Member');
    await strike('Enter');
    assert.equal((await board.observe()).tool, 1);
    await strikeUntil('F6', 'notebook width');
    await strikeUntil('Tab', 'Model');
    await strike('Enter');
    await strikeUntil('Tab', 'joint.1.x');
    await screenshot(page, 'keys-desktop');
    await strike('Enter');
    await page.locator('#field-input').waitFor({ state: 'visible' });
    await page.keyboard.type('4.5');
    await page.keyboard.press('Enter');
    await board.idle();
    assert.equal((await board.observe()).model.joints[1].x, 4.5);
    assert.deepEqual(errors, []);
    await context.close();
});

test('Escape goes back to the board, and Tab leaves it for the rest of the page', async () => {
    const { page, board, strike, focus, context } = await open();
    await strike('F6');
    await strike('Tab');
    await strike('Escape');
    assert.equal(await focus(), '');
    await page.keyboard.press('Tab');
    assert.notEqual(await page.evaluate(() => document.activeElement.id), 'board', 'nobody is caught');
    await page.keyboard.press('Shift+Tab');
    assert.equal(await page.evaluate(() => document.activeElement.id), 'board');
    await page.keyboard.press('Control+a');
    await board.idle();
    await page.keyboard.press('ArrowRight');
    await board.idle();
    assert.match((await board.observe()).undo, /Move/, 'the board’s own keys work again');
    await context.close();
});
