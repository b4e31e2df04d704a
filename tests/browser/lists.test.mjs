// Tables of the notebook, sorted by their headings and searched: only a view, which does not affect the model.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { openBoard } from './board.mjs';
import { siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

// The numbers of the joints visible in the notebook, from top to bottom.
async function shownJoints(board) {
    const { items } = await board.observe();
    return items
        .map(({ label, y }) => ({ row: label.match(/^joint\.(\d+)\.x$/)?.[1], y }))
        .filter(({ row }) => row !== undefined)
        .sort((one, other) => one.y - other.y)
        .map(({ row }) => Number(row));
}

async function openJoints(size) {
    const opened = await openBoard(shared.browser, shared.site.address, size);
    await opened.board.press('Model');
    return opened;
}

for (const size of ['desktop', 'phone']) {
    test(`a heading orders the rows, on a ${size}: once up, then down, then as drawn`, async () => {
        const { board, context } = await openJoints(sizes[size]);
        const drawn = await board.table('Joints');
        const { item } = await board.find('Order by x, m');
        assert.ok(size === 'desktop' || item.height >= 44, `${item.height} px`);
        assert.ok(size === 'desktop' || item.width >= 44, `${item.width} px`);
        const asDrawn = await shownJoints(board);
        const x = (row) => (row < drawn.length ? Number(drawn[row][1]) : NaN); // the new row is last
        await board.press('Order by x, m');
        await board.press('Order by x, m');
        const falling = await shownJoints(board);
        assert.notDeepEqual(falling, asDrawn);
        falling.slice(1).forEach((row, i) => assert.ok(!(x(row) > x(falling[i])), `${falling}`));
        assert.match(await board.page.locator('#announcer').textContent(), /Joints ordered by x, falling/);
        assert.deepEqual(await board.table('Joints'), drawn); // the page's own tables, and the model, are unchanged
        await board.press('Order by x, m');
        assert.deepEqual(await shownJoints(board), asDrawn);
        await context.close();
    });
}

test('Enter goes to the cell that is shown below, and the row typed in goes to its place', async () => {
    const { page, board, context } = await openJoints(sizes.desktop);
    await board.press('Order by x, m');
    const rising = await shownJoints(board);
    const input = page.locator('#field-input');
    await board.press(`joint.${rising[0]}.x`);
    await input.waitFor({ state: 'visible' });
    await input.fill('100'); // moves to the end
    await page.keyboard.press('Enter');
    await board.idle();
    assert.equal(await input.inputValue(), (await board.table('Joints'))[rising[1]][1]);
    await page.keyboard.press('Escape');
    await board.idle();
    const after = await shownJoints(board);
    assert.equal(after[0], rising[1]);
    assert.equal(after.at(-2), rising[0]);
    await context.close();
});

test('rows are found by what is typed over a long table, and all of them are shown again', async () => {
    const { page, board, context } = await openJoints(sizes.desktop);
    await board.press('list.8.words'); // members: the footbridge has 13
    const input = page.locator('#field-input');
    await input.waitFor({ state: 'visible' });
    await input.fill('a');
    await page.keyboard.press('Enter');
    await board.idle();
    const { items } = await board.observe();
    const ends = items.filter(({ label }) => /^member\.\d+\.ends$/.test(label));
    assert.equal(ends.length, 3); // AB, AC, and the row for a new one
    assert.equal((await board.table('Members')).length, 13);
    await board.press('Show all');
    assert.ok((await board.observe()).items.filter(({ label }) => /\.ends$/.test(label)).length > 3);
    await context.close();
});

test('member forces are ordered by size, and stay so when the notebook is closed and opened', async () => {
    const { board, context } = await openBoard(shared.browser, shared.site.address, sizes.desktop);
    await board.press('Order by force, kN');
    const before = (await board.observe()).items.filter(({ label }) => label === 'row').length;
    await board.press('Close the notebook');
    await board.press('Open the notebook');
    assert.match(await board.page.locator('#announcer').textContent(), /ordered by force, falling/);
    assert.equal((await board.observe()).items.filter(({ label }) => label === 'row').length, before);
    await context.close();
});
