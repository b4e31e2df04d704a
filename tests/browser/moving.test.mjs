// Influence lines and envelopes: opened from an example, read by dragging, loads typed and removed.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import path from 'node:path';
import { openBoard } from './board.mjs';
import { root, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

const linkTo = (example) =>
    '#j=' + encodeURIComponent(readFileSync(path.join(root, 'site/examples', example), 'utf8').trim());

async function openPage(size, example, page) {
    const opened = await openBoard(shared.browser, shared.site.address, size, linkTo(example));
    await opened.board.press(page);
    return opened;
}

// The line's value at the chosen place, as a screen reader gets it.
const reading = (page) =>
    page.locator('#tables-content p', { hasText: /^Load / }).first().textContent();

// The plot's box, and a point on it by the fraction of the path: its margins are 30 px.
async function onPlot(board, share) {
    const { item } = await board.find('influence line');
    return { x: item.x + 30 + share * (item.width - 60), y: item.y + item.height / 2 };
}

for (const [name, size] of Object.entries(sizes)) {
    test(`an influence line is read off by a drag on a ${name}`, async () => {
        const { board, page, context, errors } = await openPage(size, 'siding_bridge.json', 'Influence lines');
        // The reaction at A falls from 1 at A to 0 at P, 24 m away.
        assert.equal(await reading(page), 'Load on A: +1');
        await board.reveal('influence line');
        await board.drag(await onPlot(board, 0), await onPlot(board, 0.25));
        // 6 m is halfway between B and E: 1 − 6/24; a pixel is 0.08 m at the most.
        assert.match(await reading(page), /^Load (5\.9\d+|6(\.0\d+)?)\u2009m from A: \+0\.7[45]/);
        assert.equal(await page.locator('#announcer').textContent(), await reading(page));
        await board.drag(await onPlot(board, 0.25), await onPlot(board, 1 / 3));
        assert.equal(await reading(page), 'Load on E, 8\u2009m from A: +2/3 \u2248 +0.6667');
        const table = await board.table('Influence line of the vertical reaction at A');
        assert.deepEqual(table[3].slice(0, 3), ['H', '12', '+0.5']);
        assert.equal(table[1][3], '+5/6');
        assert.deepEqual(errors, []);
        await screenshot(page, `influence-${name}`);
        await context.close();
    });
}

test('a member tapped on the board shows its own line, and lights on it', async () => {
    const { board, page, context } = await openPage(sizes.desktop, 'siding_bridge.json', 'Influence lines');
    const [h, i] = [await board.joint('G'), await board.joint('I')];
    await board.tap({ x: (h.x + i.x) / 2, y: (h.y + i.y) / 2 });
    assert.ok(await board.table('Influence line of the force in GI'));
    await context.close();
});

test('a load that moves is added, placed, and taken back', async () => {
    const { board, page, context } = await openPage(sizes.desktop, 'siding_bridge.json', 'Influence lines');
    await board.reveal('Add a load that moves here');
    await board.press('Add a load that moves here');
    assert.equal((await board.observe()).undo, 'Add moving load vehicle 1');
    // One axle of 40 kN, the size of the joints' own loads: the reaction is largest with it at A.
    await page.locator('#tables-content p', { hasText: /^vehicle 1: 40/ }).waitFor({ state: 'attached' });
    await board.press('#undo');
    assert.equal((await board.observe()).model.moving, undefined);
    await context.close();
});

test('the envelope of two cases stands in a table, and its rows light their members', async () => {
    const { board, page, context } = await openPage(sizes.phone, 'farm_bridge.json', 'Envelope');
    await board.press('cases'); // rather than the one combination
    const rows = await board.table('Greatest tension and compression of each member under the cases');
    assert.equal(rows.length, 21);
    assert.equal(rows[0][2], 'deck', 'the deck weighs more than the truss');
    await screenshot(page, 'envelope-phone');
    await context.close();
});
