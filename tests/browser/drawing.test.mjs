// A truss is drawn by hand at each page size, and its forces are read from the page's own tables.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { emptyBoard, openBoard, placing } from './board.mjs';
import { screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

//        C         A triangle 6 wide and 4 high, a pin at A, a roller at B, 10 kN down at C:
//       / \        half the load on each support; the legs rise 4 over 3 and are 5 long, so that
//   A ∆-----B ○    AC = BC = 5·5/4 = 6.25 kN in compression, AB = 6.25·3/5 = 3.75 kN in tension.
const forces = [
    ['AB', '3.75', 'T'],
    ['BC', '−6.25', 'C'],
    ['CA', '−6.25', 'C'], // as it was drawn, from C to A
];

async function drawTriangle(board) {
    await emptyBoard(board);
    const at = await placing(board);
    await board.press('Member');
    await board.drag(at(0, 0), at(6, 0));
    await board.drag(at(6, 0), at(3, 4));
    await board.drag(at(3, 4), at(0, 0));
    await board.press('Pin');
    await board.tap(at(0, 0));
    await board.press('Roller');
    await board.tap(at(6, 0));
}

// Dragged roughly, then typed exactly into the field opened by a tap on the arrow.
async function loadTheTop(board) {
    const top = await board.joint('C');
    await board.press('Load');
    await board.drag(top, { x: top.x, y: top.y + 60 });
    const { model } = await board.observe();
    assert.equal(model.loads.length, 1, 'a drag from a joint makes a load');
    await board.tap({ x: top.x, y: top.y - 45 }); // the arrow of a load that pushes is above its joint
    await board.page.locator('#field-input').waitFor({ state: 'visible' });
    await board.page.keyboard.type('0, -10');
    await board.page.keyboard.press('Enter');
    await board.idle();
}

async function forceTable(board) {
    const rows = await board.table('Member forces');
    return rows?.map(([name, value, sense]) => [name, value, sense[0].toUpperCase()]);
}

for (const [name, size] of Object.entries(sizes)) {
    test(`on a ${name} a truss is drawn, held, loaded and solved by hand`, async () => {
        const { board, context, errors, strangers } = await openBoard(shared.browser, shared.site.address, size);
        await drawTriangle(board);
        assert.match(await board.verdict(), /determinate/i);
        await loadTheTop(board);
        await screenshot(board.page, `drawn-${name}`);
        assert.deepEqual(await forceTable(board), forces);
        assert.deepEqual(errors, []);
        assert.deepEqual(strangers, []);
        await context.close();
    }, { timeout: 60000 });
}
