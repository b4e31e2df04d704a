// Reading mode: on a small page the working has the page to itself, with a small picture of the truss above or
// beside it and its buttons under the thumb. Real touch events.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { openBoard } from './board.mjs';
import { linkTo, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

const upright = { viewport: { width: 768, height: 1024 }, deviceScaleFactor: 2, hasTouch: true };
const lying = { ...sizes.phone, viewport: { width: 844, height: 390 } };
const small = { phone: sizes.phone, upright, lying };

const open = (size, link) => openBoard(shared.browser, shared.site.address, size, link);

const windowOf = async (board, name) => (await board.find(name)).item;

async function stepOf(board) {
    const { step, working } = await board.observe();
    assert.ok(working);
    return step;
}

// The items of these windows that can be pressed.
async function targets(board, names) {
    const { items } = await board.observe();
    return items.filter(({ window, label }) => names.some((name) => window.startsWith(name)) &&
        !names.includes(label) && label !== 'step' && !label.startsWith('#'));
}

for (const [name, size] of Object.entries(small)) {
    const { width, height } = size.viewport;

    test(`on a ${name} page the working has most of the page, and Next is under the thumb`, async () => {
        const { board, page, context, errors } = await open(size);
        await board.press('Working');
        assert.equal(await board.has('Member'), false, 'no drawing tools');
        assert.equal(await board.has('Results'), false, 'one row of tabs');
        const text = (await board.observe()).items.find(({ label }) => label.includes('/working 0'));
        const room = name === 'lying' ? 0.6 * height : 0.5 * height;
        assert.ok(text.height >= room, `${text.height} px of ${height} for the working`);
        const next = await board.find('Next step');
        assert.ok(next.y > height - 80 && next.x > width / 2, `at ${next.x}, ${next.y}`);
        for (const { label, width: w, height: h } of await targets(board, ['header', 'reader'])) {
            assert.ok(w >= 43.5 && h >= 43.5, `${label} is ${w} × ${h} px`);
        }
        for (let i = 0; i < 4; ++i) {
            await board.press('Next step');
        }
        await screenshot(page, `reading-${name}`);
        const { joints } = await board.observe();
        const sheet = await windowOf(board, 'notebook');
        for (const joint of joints) {
            assert.ok(joint.x > 0 && joint.x < (name === 'lying' ? sheet.x : width) && joint.y > 52 &&
                joint.y < (name === 'lying' ? height : sheet.y), `joint ${joint.label} is in the picture`);
        }
        assert.equal(await stepOf(board), 4);
        assert.deepEqual(errors, []);
        await context.close();
    });

    test(`on a ${name} page one tap leads back to the board as it was`, async () => {
        const { board, context } = await open(size);
        await board.press('Model');
        await board.drag({ x: 40, y: 90 }, { x: 70, y: 110 }); // the board is moved
        const before = await board.observe();
        await board.press('Working');
        await board.press('Next step');
        await board.press('Back to the board');
        const after = await board.observe();
        assert.deepEqual(after.origin, before.origin);
        assert.equal(after.scale, before.scale);
        assert.ok(await board.has('joint.0.x'), 'the notebook is where it was');
        assert.ok(await board.has('Member'), 'the tools are back');
        await board.press('Working');
        assert.equal(await stepOf(board), 1, 'read on where one stopped');
        await context.close();
    });

    test(`on a ${name} page no stray tap changes step, page or truss`, async () => {
        const { board, page, context } = await open(size);
        await board.press('Working');
        await board.press('Next step');
        const { model, undo } = await board.observe();
        const text = (await board.observe()).items.find(({ label }) => label.includes('/working 0'));
        for (const at of [0.2, 0.5, 0.8]) {
            await board.tap({ x: text.x + text.width / 2, y: text.y + at * text.height });
        }
        const joint = await board.joint('C');
        await board.tap(joint);
        await board.drag(joint, { x: joint.x + 20, y: joint.y + 20 });
        await board.hands.down({ x: joint.x, y: joint.y + 10 });
        await page.waitForTimeout(900); // a long press
        await board.hands.up();
        await board.idle();
        const now = await board.observe();
        assert.equal(now.step, 1);
        assert.deepEqual(now.model, model);
        assert.equal(now.undo, undo);
        assert.equal(now.menu, false);
        assert.ok(await board.has('Next step'));
        await context.close();
    });
}

test('a tap on a member and Why? show how its force is found', async () => {
    const { board, page, context } = await open(sizes.phone);
    const [from, to] = [await board.joint('C'), await board.joint('E')];
    await board.tap({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 });
    await board.press('Why?');
    assert.ok(await board.has('Next step') || await board.has('shortest way'));
    await screenshot(page, 'reading-why-phone');
    const picture = await windowOf(board, 'notebook');
    await board.tap({ x: 12, y: picture.y - 12 }); // beside the truss: nothing
    assert.equal((await board.observe()).selected.members, 1);
    const [a, b] = [await board.joint('A'), await board.joint('C')];
    await board.tap({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }); // another member's force
    assert.equal((await board.observe()).selected.members, 1);
    await board.press('Back to the board');
    assert.ok(await board.has('Member'));
    await context.close();
});

// Whether the highlighted step is in the visible part of the working.
async function stepIsInView(board) {
    const { items } = await board.observe();
    const text = items.find(({ label }) => label.includes('/working 0'));
    const steps = items.filter(({ label, window }) => label === 'step' && window.includes('/working 0'));
    const last = steps.at(-1);
    return last && last.y < text.y + text.height - 20 && last.y + last.height > text.y + 20;
}

test('the step stays in view when the device is turned, the keyboard opens and bars come and go', async () => {
    const { board, page, context } = await open(sizes.phone);
    await board.press('Working');
    for (let i = 0; i < 7; ++i) {
        await board.press('Next step');
    }
    for (const [width, height] of [[844, 390], [390, 844], [390, 760], [390, 420], [390, 844], [768, 1024],
        [1024, 768], [390, 844]]) {
        await page.setViewportSize({ width, height });
        await board.idle();
        assert.equal(await stepOf(board), 7, `${width} × ${height}`);
        assert.ok(await stepIsInView(board), `${width} × ${height}: the step is in view`);
    }
    await context.close();
});

test('undo is within reach while reading', async () => {
    const { board, context } = await open(sizes.phone);
    const at = await board.joint('E');
    await board.drag(at, { x: at.x - 30, y: at.y - 30 });
    const { undo } = await board.observe();
    assert.ok(undo);
    await board.press('Working');
    const button = await board.find('#undo');
    assert.ok(button.y > 844 - 80, 'at the bottom');
    await board.tap(button);
    assert.equal((await board.observe()).undo, '');
    await context.close();
});
