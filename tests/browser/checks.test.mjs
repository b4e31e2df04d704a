// Member checks: their page of results, settings typed there, utilisation on the board, and the caution that goes
// with it.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { openBoard } from './board.mjs';
import { linkTo, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();
const caption = 'Utilisation of the members';

async function openChecks(size, example = 'farm_bridge.json') {
    const opened = await openBoard(shared.browser, shared.site.address, size, linkTo(example));
    await opened.board.reveal('Checks');
    await opened.board.press('Checks');
    return opened;
}

const caution = (page) =>
    page.locator('#tables-content', { hasText: 'Local codes and a licensed engineer decide.' }).count();

for (const [name, size] of Object.entries(sizes)) {
    test(`members are checked on a ${name}, and the caution stands beside`, async () => {
        const { board, page, context, errors } = await openChecks(size);
        const rows = await board.table(caption);
        assert.equal(rows.length, 21);
        assert.deepEqual(rows[0].slice(0, 3).map((cell) => cell.length > 0), [true, true, true]);
        assert.equal(await caution(page), 1);
        await screenshot(page, `checks-${name}`);
        assert.deepEqual(errors, []);
        await context.close();
    });
}

test('another formula is chosen, undone, and travels with the model', async () => {
    const { board, context } = await openChecks(sizes.desktop);
    const before = await board.table(caption);
    await board.reveal('EN 1993-1-1');
    await board.press('EN 1993-1-1');
    assert.deepEqual((await board.observe()).model.checks, { formula: 'EN 1993-1-1' });
    assert.equal((await board.observe()).undo, 'Change how members are checked');
    assert.notDeepEqual(await board.table(caption), before);
    await board.press('#undo');
    assert.equal((await board.observe()).model.checks, undefined);
    assert.deepEqual(await board.table(caption), before);
    await context.close();
});

test('use is put on the board from the page, and the caution stays when the page is left', async () => {
    const { board, page, context } = await openChecks(sizes.desktop);
    await board.reveal('Utilisation on the board');
    await board.press('Utilisation on the board');
    await board.press('Forces');
    assert.equal(await caution(page), 1);
    await screenshot(page, 'use-desktop');
    await board.press('View');
    await board.press('force');
    await page.keyboard.press('Escape');
    await board.idle();
    assert.equal(await caution(page), 0);
    await context.close();
});

test('the picked member has its check worked out', async () => {
    const { board, page, context } = await openChecks(sizes.desktop);
    const [a, b] = [await board.joint('A'), await board.joint('C')];
    await board.tap({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
    await page.locator('#tables-content h4', { hasText: 'Check of member AC' }).waitFor({ state: 'attached' });
    await context.close();
});

for (const [name, size] of Object.entries(sizes)) {
    test(`on a ${name} a picked member gets a K of its own, and a picked joint is let go of out of the plane`, async () => {
        const { board, page, context, errors } = await openChecks(size, 'braced_tower.json');
        const [c, d] = [await board.joint('C'), await board.joint('D')];
        await board.tap({ x: (c.x + d.x) / 2, y: (c.y + d.y) / 2 });
        await board.reveal('picked.K.in');
        await board.press('picked.K.in');
        await page.locator('#field-input').fill('0.9');
        await page.keyboard.press('Enter');
        await board.idle();
        const { model, undo } = await board.observe();
        assert.deepEqual(model.members.filter(({ K }) => K).map(({ a: from, b: to, K }) => [from, to, K]), [['C', 'D', { in: 0.9 }]]);
        assert.equal(undo, 'Change K of member CD');
        await screenshot(page, `checks-picked-${name}`);
        await board.tap(await board.joint('B'));
        await board.reveal('Held out of the plane');
        await board.press('Held out of the plane');
        const { held } = (await board.observe()).model.checks;
        assert.ok(held.length > 0 && !held.includes('B'));
        await screenshot(page, `checks-held-${name}`);
        assert.deepEqual(errors, []);
        await context.close();
    });
}
