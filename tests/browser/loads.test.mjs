// A load is one thing: its figure on the board and its row in the table mean the same; and what has no room on the board
// is counted.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { openBoard } from './board.mjs';
import { forPeople, linkOf, linkTo, root, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

const triangle = (...loads) => linkOf({ gusset: 1, title: 'Loads',
    joints: [{ id: 'A', x: 0, y: 0 }, { id: 'B', x: 6, y: 0 }, { id: 'C', x: 3, y: 4 }],
    members: [{ a: 'A', b: 'B' }, { a: 'A', b: 'C' }, { a: 'B', b: 'C' }],
    supports: [{ joint: 'A', kind: 'pin' }, { joint: 'B', kind: 'roller', reaction: 90 }], loads });

async function typeOver(board, text) {
    const input = board.page.locator('#field-input');
    await input.waitFor({ state: 'visible' });
    await input.fill(text);
    await board.page.keyboard.press('Enter');
    await board.idle();
}

const loadsOf = async (board) => (await board.observe()).model.loads;

for (const [name, size] of Object.entries(sizes)) {
    test(`a number typed over a load's figure keeps its direction, on a ${name}`, async () => {
        const { board, context, errors } = await openBoard(shared.browser, shared.site.address, size,
            triangle({ joint: 'C', fy: -5 }));
        await board.press('Load');
        const figure = (await board.observe()).figures.find(({ key }) => key.startsWith('board.load'));
        assert.ok(figure, 'the figure of the load can be tapped');
        await board.tap(figure);
        await typeOver(board, '8');
        const loads = await loadsOf(board);
        assert.equal(loads.length, 1, 'the tap made no other load');
        assert.equal(loads[0].fy, -8);
        assert.deepEqual(errors, []);
        await context.close();
    });
}

test('a row of the loads shows a size and a direction, or two parts', async () => {
    const { board, context, errors } = await openBoard(shared.browser, shared.site.address, sizes.desktop,
        triangle({ joint: 'C', size: 9, angle: 112.6 }, { joint: 'B', fx: 3, fy: -4 }));
    await screenshot(board.page, 'loads-board');
    await board.press('Model');
    await board.reveal('load.0.first');
    await screenshot(board.page, 'loads-table');
    const rows = await board.table('Loads');
    assert.deepEqual(rows.map((row) => row.slice(0, 3)), [['C', '9', '112.6°'], ['B', '→\u20093', '↓\u20094']]);
    assert.deepEqual(errors, []);
    await context.close();
});

test('what has no room on a phone is counted on the board, and a saved picture holds it', async () => {
    const dense = { gusset: 1, title: 'Dense', joints: [], members: [], supports: [], loads: [] };
    const panels = 22;
    for (let i = 0; i <= panels; ++i) {
        dense.joints.push({ id: `B${i}`, x: 3 * i, y: 0 }, { id: `T${i}`, x: 3 * i, y: 3 });
        dense.members.push({ a: `B${i}`, b: `T${i}` });
        if (i > 0) {
            dense.members.push({ a: `B${i - 1}`, b: `B${i}` }, { a: `T${i - 1}`, b: `T${i}` },
                { a: `T${i - 1}`, b: `B${i}` });
            dense.loads.push({ joint: `B${i}`, fy: -10 });
        }
    }
    dense.supports.push({ joint: 'B0', kind: 'pin' }, { joint: `B${panels}`, kind: 'roller', reaction: 90 });
    for (const [name, size] of Object.entries(sizes)) {
        const { board, context, page, errors } =
            await openBoard(shared.browser, shared.site.address, size, linkOf(dense));
        await screenshot(page, `dense-${name}`);
        await board.press('Share');
        await board.reveal('Save the board as SVG');
        const download = page.waitForEvent('download');
        await board.press('Save the board as SVG');
        const file = path.join(root, `build/screenshots/dense-${name}.svg`);
        await (await download).saveAs(file);
        const svg = readFileSync(file, 'utf8');
        for (const { id } of dense.joints) {
            assert.ok(svg.includes(`>${id}</text>`), `${id} is in the picture`);
        }
        const forces = svg.match(/>[0-9.]+ [TC]<|>0</g).length;
        assert.ok(forces >= dense.members.length, `${forces} of ${dense.members.length} forces in the picture`);
        assert.deepEqual(errors, []);
        await context.close();
    }
});

test('pictures of loads of every kind, and of examples on a phone', forPeople, async () => {
    for (const [name, size] of Object.entries(sizes)) {
        for (const example of ['chapel_roof', 'conveyor_gallery', 'hillside_shed', 'farm_bridge', 'pavilion_roof']) {
            const { context, page, errors } = await openBoard(shared.browser, shared.site.address, size,
                linkTo(`${example}.json`));
            await screenshot(page, `board-${example}-${name}`);
            assert.deepEqual(errors, []);
            await context.close();
        }
    }
});

test('news leaves by itself, when there was time to read it', async () => {
    const { board, context, page, errors } = await openBoard(shared.browser, shared.site.address, sizes.desktop,
        triangle({ joint: 'C', fy: -5 }));
    await board.press('Load');
    const { x, y } = await board.joint('A');
    await board.tap({ x: x - 60, y: y - 150 });
    assert.notEqual((await board.observe()).message, '');
    await page.waitForFunction(() => window.gussetTest.observe().message === '');
    assert.deepEqual(errors, []);
    await context.close();
});
