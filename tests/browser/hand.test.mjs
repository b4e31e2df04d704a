// Input beyond drawing: selecting several things, long presses, typing what is drawn, dimensions, the loupe, and a
// pen used together with fingers. Real events, by mouse on the desktop and by touch on a tablet and a phone.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { emptyBoard, openBoard, placing } from './board.mjs';
import { screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

const open = (size) => openBoard(shared.browser, shared.site.address, size);

// The box of all joints, CSS px, with a margin.
async function boxOfJoints(board, air) {
    const { joints } = await board.observe();
    const xs = joints.map(({ x }) => x);
    const ys = joints.map(({ y }) => y);
    return {
        left: Math.max(Math.min(...xs) - air, 4),
        right: Math.max(...xs) + air,
        top: Math.min(...ys) - air,
        bottom: Math.max(...ys) + air,
    };
}

async function type(board, text) {
    await board.page.locator('#field-input').waitFor({ state: 'visible' });
    await board.page.locator('#field-input').fill(text);
    await board.page.keyboard.press('Enter');
    await board.idle();
}

// Every pressable item on the screen is large enough and wholly visible.
async function assertReachable(board, size, windowName) {
    const { items } = await board.observe();
    const own = items.filter(({ window, label }) => window.startsWith(windowName) && label !== windowName);
    assert.ok(own.length > 0, `nothing in ${windowName}`);
    for (const { label, x, y, width, height } of own) {
        assert.ok(x >= 0 && y >= 0 && x + width <= size.viewport.width + 1 &&
            y + height <= size.viewport.height + 1, `${label} is off the screen`);
        if (size.hasTouch) {
            assert.ok(height >= 43.5, `${label} is ${height} px high`);
        }
    }
}

async function selectAll(board, size) {
    const { left, right, top, bottom } = await boxOfJoints(board, 16);
    const corners = [{ x: left, y: top }, { x: right, y: bottom }];
    if (!size.hasTouch) {
        await board.page.keyboard.down('Shift');
        await board.stroke(corners);
        await board.page.keyboard.up('Shift');
        return;
    }
    await board.hold(corners[0], { release: false });
    for (let part = 1; part <= 4; ++part) {
        await board.hands.move({
            x: left + ((right - left) * part) / 4,
            y: top + ((bottom - top) * part) / 4,
        });
    }
    await board.hands.up();
    await board.idle();
}

for (const [name, size] of Object.entries(sizes)) {
    test(`on a ${name} several things are enclosed, moved and mirrored, each as one step`, async () => {
        const { board, context, errors } = await open(size);
        const { model } = await board.observe();
        await selectAll(board, size);
        const { selected } = await board.observe();
        assert.deepEqual(selected, { joints: model.joints.length, members: model.members.length });
        await screenshot(board.page, `several-${name}`);
        await assertReachable(board, size, 'several');
        await board.press('Move…');
        await type(board, '0, 1.5');
        const moved = await board.observe();
        assert.equal(moved.undo, `Move ${model.joints.length} joints`);
        assert.equal(moved.model.joints[0].y, (model.joints[0].y ?? 0) + 1.5);
        await board.press('Mirror…');
        await screenshot(board.page, `mirror-${name}`);
        await board.press('To the right');
        const mirrored = await board.observe();
        assert.equal(mirrored.undo, `Mirror ${model.joints.length} joints`);
        assert.ok(mirrored.model.joints.length > model.joints.length);
        assert.deepEqual(errors, []);
        await context.close();
    }, { timeout: 60000 });

    test(`on a ${name} a long press or the right button opens a menu of what can be done there`, async () => {
        const { board, context, errors } = await open(size);
        const { model, undo } = await board.observe();
        await board.press('Erase'); // a tool that acts at once
        await board.hold(await board.joint('C'));
        const opened = await board.observe();
        assert.equal(opened.menu, true);
        assert.deepEqual(opened.model, model);
        assert.equal(opened.undo, undo);
        await screenshot(board.page, `menu-${name}`);
        await assertReachable(board, size, 'board menu');
        await board.press('Remove the joint');
        const after = await board.observe();
        assert.equal(after.menu, false);
        assert.equal(after.undo, 'Remove joint C');
        await board.hold(await board.joint('A'));
        await board.page.keyboard.press('Escape');
        await board.idle();
        assert.equal((await board.observe()).menu, false);
        await board.hold(await board.joint('A'));
        await board.press('Pin'); // outside the menu, which closes and does nothing else
        const closed = await board.observe();
        assert.equal(closed.menu, false);
        assert.equal(closed.tool, after.tool);
        assert.deepEqual(errors, []);
        await context.close();
    }, { timeout: 60000 });

    test(`on a ${name} a tapped dimension is typed, and a bad value is refused`, async () => {
        const { board, context, errors } = await open(size);
        const { figures, model } = await board.observe();
        const figure = figures.find(({ key }) => key.startsWith('board.dimension'));
        assert.ok(figure, 'a dimension is drawn');
        await board.tap(figure);
        await board.page.locator('#field-input').waitFor({ state: 'visible' });
        await screenshot(board.page, `dimension-${name}`);
        const before = Number(figure.text);
        await type(board, String(before + 1));
        const after = await board.observe();
        assert.match(after.undo, /^Dimension of/);
        assert.match(after.message, /moved by 1/);
        assert.notDeepEqual(after.model, model);
        const again = after.figures.find(({ key }) => key.startsWith('board.dimension'));
        await board.tap(again);
        await type(board, 'wide');
        const refused = await board.observe();
        assert.deepEqual(refused.model, after.model);
        assert.notEqual(refused.message, after.message);
        assert.deepEqual(errors, []);
        await context.close();
    }, { timeout: 60000 });

    if (size.hasTouch) {
        test(`on a ${name} a loupe stands over the finger that drags, and the figure of a stroke is typed`, async () => {
            const { board, context, errors } = await open(size);
            const start = await board.joint('E');
            await board.drag(start, { x: start.x + 20, y: start.y - 30 }, { release: false });
            await board.page.waitForFunction(() => window.gussetTest.observe().loupe);
            await screenshot(board.page, `loupe-${name}`);
            await board.hands.up();
            await board.idle();
            assert.equal((await board.observe()).loupe, false);
            await emptyBoard(board);
            const at = await placing(board);
            await board.press('Member');
            await board.drag(at(0, 0), at(4, 0));
            const { figures } = await board.observe();
            const figure = figures.find(({ key }) => key === 'board.drawn');
            assert.ok(figure);
            await screenshot(board.page, `drawn-figure-${name}`);
            await board.tap(figure);
            await type(board, '3.25');
            const { model } = await board.observe();
            assert.equal(model.joints.length, 2);
            assert.equal(model.joints[1].x - (model.joints[0].x ?? 0), 3.25);
            assert.deepEqual(errors, []);
            await context.close();
        }, { timeout: 60000 });
    }
}

test('with a mouse a line around things selects what lies inside it', async () => {
    const { board, context } = await open(sizes.desktop);
    const at = await board.joint('A');
    await board.page.keyboard.down('Shift');
    await board.stroke([
        { x: at.x - 20, y: at.y - 20 },
        { x: at.x + 20, y: at.y - 20 },
        { x: at.x + 20, y: at.y + 20 },
        { x: at.x - 20, y: at.y + 20 },
    ]);
    await board.page.keyboard.up('Shift');
    assert.deepEqual((await board.observe()).selected, { joints: 1, members: 0 });
    await context.close();
});

test('figures typed while a member is drawn give its end, and a press meanwhile draws nothing', async () => {
    const { board, context, page } = await open(sizes.desktop);
    await emptyBoard(board);
    const at = await placing(board);
    await board.press('Member');
    await board.tap(at(0, 0));
    await page.mouse.move(at(2, 0).x, at(2, 0).y);
    await page.keyboard.type('2.5');
    await board.idle();
    await screenshot(page, 'typed-member-desktop');
    assert.equal(await page.locator('#field-input').inputValue(), '2.5');
    await page.keyboard.press('Enter');
    await board.idle();
    const first = await board.observe();
    assert.equal(first.model.joints.length, 2);
    assert.equal(first.model.joints[1].x - (first.model.joints[0].x ?? 0), 2.5);
    await page.keyboard.type('3 @ 90');
    await board.tap(at(6, 3)); // ends typing as Enter does, and draws no third member
    const second = await board.observe();
    assert.equal(second.model.members.length, 2);
    assert.ok(Math.abs(second.model.joints[2].y - (first.model.joints[1].y ?? 0) - 3) < 1e-9);
    await page.keyboard.press('Escape');
    await page.keyboard.type('7');
    assert.ok(await page.locator('#field').isHidden(), 'nothing is drawn, so nothing is typed');
    await context.close();
});

test('a drag with the right button moves the board and opens no menu', async () => {
    const { board, context, page } = await open(sizes.desktop);
    const before = await board.joint('A');
    await page.mouse.move(before.x + 60, before.y - 40);
    await page.mouse.down({ button: 'right' });
    await page.mouse.move(before.x + 100, before.y - 40, { steps: 4 });
    await page.mouse.up({ button: 'right' });
    await board.idle();
    const after = await board.joint('A');
    assert.ok(Math.abs(after.x - before.x - 40) < 9, `moved by ${after.x - before.x}`);
    assert.equal((await board.observe()).menu, false);
    await context.close();
});

// A pen through the browser's debugging protocol.
async function penOf(page) {
    const session = await page.context().newCDPSession(page);
    return (type, at) =>
        session.send('Input.dispatchMouseEvent', {
            type, x: at.x, y: at.y, button: 'left', buttons: type === 'mouseReleased' ? 0 : 1,
            clickCount: 1, pointerType: 'pen',
        });
}

test('once a pen draws, fingers move the board, and a palm beside it does nothing', async () => {
    const { board, context, page } = await open(sizes.tablet);
    const pen = await penOf(page);
    const { model } = await board.observe();
    const joint = await board.joint('E');
    await pen('mousePressed', joint);
    await pen('mouseMoved', { x: joint.x, y: joint.y - 30 });
    await board.hands.down({ x: joint.x + 40, y: joint.y + 120 }); // the palm
    await board.hands.move({ x: joint.x + 60, y: joint.y + 150 });
    await board.hands.up();
    await pen('mouseMoved', { x: joint.x, y: joint.y - 60 });
    await pen('mouseReleased', { x: joint.x, y: joint.y - 60 });
    await board.idle();
    const drawn = await board.observe();
    assert.equal(drawn.undo, 'Move joint E');
    assert.notDeepEqual(drawn.model, model);
    assert.match(drawn.message, /pen/);
    const place = await board.joint('E');
    await board.drag(place, { x: place.x + 30, y: place.y + 30 });
    const panned = await board.observe();
    assert.deepEqual(panned.model, drawn.model);
    assert.ok(Math.abs((await board.joint('E')).x - place.x - 30) < 1);
    await board.press('View');
    await screenshot(page, 'finger-draws-tablet');
    await board.press('Finger draws');
    await board.tap({ x: 60, y: 400 }); // closes the menu
    const again = await board.joint('E');
    await board.drag(again, { x: again.x, y: again.y + 40 });
    assert.notDeepEqual((await board.observe()).model, drawn.model);
    await context.close();
});

test('the menu key opens the menu of what is picked, and arrows and Enter choose from it', async () => {
    const { board, context, page } = await open(sizes.desktop);
    await board.tap(await board.joint('C'));
    await page.keyboard.press('ContextMenu');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Enter');
    await board.idle();
    assert.equal((await board.observe()).undo, 'Remove joint C');
    await context.close();
});
