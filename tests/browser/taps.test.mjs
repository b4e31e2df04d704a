// How many touches a truss takes, from an empty board on a tablet. The result is asserted, the count is only
// reported.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { emptyBoard, openBoard, placing } from './board.mjs';
import { screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

//     B-----D-----F       panels of 4 m, 3 m high, 10 kN down at B, D and F: half of the 30 kN on
//    / \   / \   / \      each support
//  A∆---C-----E---○G
const lower = [[0, 0], [4, 0], [8, 0], [12, 0]];
const upper = [[2, 3], [6, 3], [10, 3]];

async function drawMembers(board, at) {
    await board.press('Member');
    // Zigzag to the far end, back along the bottom chord to the start, then the top chord.
    for (let i = 0; i < 3; ++i) {
        await board.tap(at(...lower[i]));
        await board.tap(at(...upper[i]));
    }
    for (const place of [...lower].reverse()) {
        await board.tap(at(...place));
    }
    for (const place of [...upper, upper[2]]) {
        await board.tap(at(...place));
    }
}

test('a truss of seven joints, held and loaded, is drawn on a tablet from an empty board', async (context_) => {
    const { board, context, errors } = await openBoard(shared.browser, shared.site.address, sizes.tablet);
    await emptyBoard(board);
    const at = await placing(board);
    const before = { ...board.strokes };
    await drawMembers(board, at);
    await board.press('Pin');
    await board.tap(at(...lower[0]));
    await board.press('Roller');
    await board.tap(at(...lower[3]));
    await board.press('Load');
    for (const place of upper) {
        await board.tap(at(...place)); // 10 kN down is offered and accepted
    }
    await board.page.keyboard.press('Enter');
    await board.idle();
    const taps = board.strokes.taps - before.taps;
    const drags = board.strokes.drags - before.drags;
    context_.diagnostic(`seven joints, 11 members, 2 supports, 3 loads: ${taps} taps, ${drags} drags`);

    const { model } = await board.observe();
    assert.equal(model.joints.length, 7);
    assert.equal(model.members.length, 11);
    assert.equal(model.supports.length, 2);
    assert.equal(model.loads.length, 3);
    assert.match(await board.verdict(), /determinate/i);
    const reactions = (await board.table('Reactions')).flat().join(' ');
    assert.equal(reactions.match(/\b15\b/g)?.length, 2, reactions);
    await screenshot(board.page, 'seven-joints-tablet');
    assert.deepEqual(errors, []);
    await context.close();
}, { timeout: 60000 });
