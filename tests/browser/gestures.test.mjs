// Fingers in every order, and no drawing while nothing changes.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { boardOf, openBoard } from './board.mjs';
import { firstFrame, openPage, siteAndBrowser, sizes } from './support.mjs';
import { keeping } from './versions.mjs';

const shared = siteAndBrowser();

const open = (size = sizes.desktop) => openBoard(shared.browser, shared.site.address, size);
const below = (at, dy) => ({ x: at.x, y: at.y + dy });

test('forces follow a joint while it is dragged', async () => {
    const { board, context } = await open();
    const still = await board.table('Member forces');
    const start = await board.joint('E');
    await board.drag(start, below(start, -70), { release: false });
    await board.idle();
    const during = await board.observe();
    assert.equal(during.solved, true);
    assert.ok(during.model.joints.find(({ id }) => id === 'E').y > 3);
    await board.hands.up();
    await board.idle();
    assert.notDeepEqual(await board.table('Member forces'), still);
    await context.close();
});

test('a second finger takes the first one’s edit back, and the two move and zoom the board', async () => {
    const { board, context } = await open(sizes.tablet);
    const { model, scale } = await board.observe();
    const start = await board.joint('C');
    await board.drag(start, below(start, -60), { release: false });
    await board.idle();
    assert.notDeepEqual((await board.observe()).model, model);
    const a = below(start, -60);
    const b = { x: a.x + 100, y: a.y };
    await board.hands.down(a, b);
    await board.idle();
    assert.deepEqual((await board.observe()).model, model, 'taken back');
    // The fingers move from 100 to 200 px apart about the same centre.
    for (let step = 1; step <= 5; ++step) {
        await board.hands.move({ x: a.x - 10 * step, y: a.y }, { x: b.x + 10 * step, y: b.y });
    }
    await board.hands.up();
    await board.idle();
    const after = await board.observe();
    assert.deepEqual(after.model, model);
    assert.ok(Math.abs(after.scale / scale - 2) < 0.01, `zoomed by ${after.scale / scale}`);
    await context.close();
});

test('a cancelled touch leaves everything as it was', async () => {
    const { board, context } = await open(sizes.tablet);
    const { model, undo } = await board.observe();
    const start = await board.joint('C');
    await board.drag(start, below(start, -60), { release: false });
    await board.hands.cancel();
    await board.idle();
    const after = await board.observe();
    assert.deepEqual(after.model, model);
    assert.equal(after.undo, undo);
    await context.close();
});

test('the wheel zooms the board about the cursor and scrolls the notebook', async () => {
    const { board, context, page } = await open();
    const still = await board.joint('D');
    await page.mouse.move(still.x, still.y);
    const { scale } = await board.observe();
    await page.mouse.wheel(0, -200);
    await board.idle();
    const near = await board.observe();
    assert.ok(near.scale > scale * 1.2);
    const moved = await board.joint('D');
    // A wheel event gives its position in whole pixels: up to half a pixel off, times the zoom factor.
    assert.ok(Math.hypot(moved.x - still.x, moved.y - still.y) < 1);

    await page.mouse.move(1200, 600);
    await page.mouse.wheel(0, 200);
    await board.idle();
    assert.equal((await board.observe()).scale, near.scale);
    await context.close();
});

test('no frame is drawn and no timer runs while nothing changes', async () => {
    const { page, context } = await openPage(shared.browser, shared.site.address, { ...sizes.desktop, ...keeping });
    await context.addInitScript(() => {
        window.woken = 0;
        for (const name of ['setTimeout', 'setInterval', 'requestAnimationFrame']) {
            const own = window[name].bind(window);
            window[name] = (call, ...rest) => own((...given) => {
                ++window.woken;
                call(...given);
            }, ...rest);
        }
    });
    await page.goto(`${shared.site.address}?test`);
    const board = await boardOf(page, sizes.desktop);
    const state = async () =>
        [(await board.observe()).frames, await page.evaluate(() => window.woken)];
    assert.ok((await state())[1] > 0, 'what wakes the page is counted');
    // What is done once after the start takes as long as the machine is busy; what recurs would be in each part.
    const parts = [];
    for (let i = 0; i < 5 && parts.at(-1) !== 0; ++i) {
        const before = await state();
        await new Promise((done) => setTimeout(done, 10000));
        const after = await state();
        parts.push(after[0] - before[0] + after[1] - before[1]);
    }
    assert.equal(parts.at(-1), 0, `woken or drawn in parts of 10 s: ${parts}`);
    await context.close();
});

test('a frame that shows what is on the screen already is not drawn, one that differs is', async () => {
    const { board, context, page } = await open();
    await page.evaluate(() => {
        window.drawn = 0;
        const gl = WebGL2RenderingContext.prototype;
        const own = gl.drawArrays; // the paper, once per drawing
        gl.drawArrays = function draw(...given) {
            ++window.drawn;
            own.apply(this, given);
        };
    });
    const during = async (act) => {
        const before = [(await board.observe()).frames, await page.evaluate(() => window.drawn)];
        await act();
        await board.idle();
        const after = [(await board.observe()).frames, await page.evaluate(() => window.drawn)];
        return { frames: after[0] - before[0], drawn: after[1] - before[1] };
    };
    const joint = await board.joint('C');
    await board.tap(joint);
    // What comes late after the start, such as a typeface, may still draw during one of them.
    let again = await during(() => board.tap(joint));
    for (let tries = 0; again.drawn > 0 && tries < 5; ++tries) {
        again = await during(() => board.tap(joint));
    }
    assert.ok(again.frames > 0);
    assert.equal(again.drawn, 0, 'the joint is picked already');
    const elsewhere = await during(async () => board.tap(await board.joint('A')));
    assert.ok(elsewhere.drawn > 0 && elsewhere.drawn < elsewhere.frames, JSON.stringify(elsewhere));
    const look = await during(() => page.setViewportSize({ width: 1200, height: 700 }));
    assert.ok(look.drawn > 0, 'a canvas of another size is empty');
    await context.close();
});

test('a lost graphics context comes back with the same picture', async () => {
    const { board, context, page } = await open();
    const picture = await page.screenshot();
    await page.evaluate(async () => {
        const canvas = document.getElementById('board');
        const extension = canvas.getContext('webgl2').getExtension('WEBGL_lose_context');
        const happened = (event) => new Promise((resolve) =>
            canvas.addEventListener(event, resolve, { once: true }));
        const lost = happened('webglcontextlost');
        extension.loseContext();
        await lost;
        const restored = happened('webglcontextrestored');
        setTimeout(() => extension.restoreContext(), 50);
        await restored;
    });
    await board.idle();
    assert.ok(picture.equals(await page.screenshot()));
    await context.close();
});

test('without WebGL2 the page says so, and its tables answer all the same', async () => {
    const { page, context, errors } = await openPage(shared.browser, shared.site.address);
    await context.addInitScript(() => {
        HTMLCanvasElement.prototype.getContext = () => null;
    });
    await page.goto(shared.site.address);
    await firstFrame(page);
    assert.match(await page.locator('#status').textContent(), /no WebGL2/);
    const table = page.locator('#tables-content table', { hasText: 'Member forces' });
    await table.waitFor({ state: 'visible' });
    assert.equal(await table.locator('tbody tr').count(), 13);
    assert.deepEqual(errors, []);
    await context.close();
});
