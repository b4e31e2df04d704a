// Large trusses and long use: drawing takes the same number of calls whatever the size, and nothing accumulates.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { boardOf, dragJoint, dropFile, openBoard } from './board.mjs';
import { siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

// A strip of panels with one diagonal each: 4 panels + 1 members, supported as a beam.
function strip(panels) {
    const joints = [];
    const members = [];
    for (let i = 0; i <= panels; ++i) {
        joints.push({ id: `L${i}`, x: 2 * i, y: 0 }, { id: `U${i}`, x: 2 * i, y: 2 });
        members.push({ a: `L${i}`, b: `U${i}` });
        if (i > 0) {
            members.push({ a: `L${i - 1}`, b: `L${i}` }, { a: `U${i - 1}`, b: `U${i}` },
                { a: `L${i - 1}`, b: `U${i}` });
        }
    }
    return {
        gusset: 1, title: `Strip of ${panels} panels`, joints, members,
        supports: [{ joint: 'L0', kind: 'pin' }, { joint: `L${panels}`, kind: 'roller', reaction: 90 }],
        loads: [{ joint: `U${Math.floor(panels / 2)}`, fx: 0, fy: -10 }],
    };
}

async function drop(page, model) {
    await dropFile(page, 'strip.json', JSON.stringify(model));
    await page.waitForFunction((title) => window.gussetTest.observe().model.title === title, model.title);
}

// Counts the drawing's own calls; those of the panels (drawElements) depend on what the notebook shows. Each
// drawing starts with the paper, one drawArrays; a frame identical to the screen is not drawn.
function countCalls() {
    window.calls = 0;
    window.drawings = 0;
    const context = WebGL2RenderingContext.prototype;
    for (const name of ['drawArrays', 'drawArraysInstanced', 'drawElementsInstanced']) {
        const draw = context[name];
        context[name] = function counted(...all) {
            window.calls += 1;
            window.drawings += name === 'drawArrays' ? 1 : 0;
            return draw.apply(this, all);
        };
    }
}

async function openCounted() {
    const opened = await openBoard(shared.browser, shared.site.address, sizes.desktop);
    await opened.page.addInitScript(countCalls);
    await opened.page.reload();
    return { ...opened, board: await boardOf(opened.page, sizes.desktop) };
}

test('a truss of 201 members costs as many draw calls a drawing as one of 13, also in a drag', async () => {
    const { page, board, context } = await openCounted();
    const callsIn = async (act) => {
        const counts = () => page.evaluate(() => ({
            calls: window.calls, drawings: window.drawings, frames: window.gussetTest.observe().frames,
        }));
        const before = await counts();
        await act();
        await board.idle();
        const after = await counts();
        const drawings = after.drawings - before.drawings;
        assert.ok(drawings > 0);
        return { each: (after.calls - before.calls) / drawings, frames: after.frames - before.frames };
    };
    await board.press('Results'); // a working would continue in frames of its own
    const small = await callsIn(() => dragJoint(board, 'C', 40, 0));
    await drop(page, strip(50));
    await board.idle();
    assert.equal((await board.observe()).model.members.length, 201);
    const large = await callsIn(() => dragJoint(board, 'U25', 0, -30));
    assert.ok(small.each >= 1, `${small.each} calls a drawing`);
    assert.equal(large.each, small.each);
    // Seven events (hover, down, four moves, up), each with its own frame and three more if the events come far
    // apart, as on a busy machine; the change at the end asks for one more.
    assert.ok(large.frames <= 7 * 4 + 1, `${large.frames} frames for one drag`);
    assert.equal((await board.observe()).solved, true);
    await context.close();
});

test('a model of 2,001 members opens, is solved, pans and zooms', async () => {
    const { page, board, context, errors } =
        await openBoard(shared.browser, shared.site.address, sizes.desktop);
    await drop(page, strip(500));
    await board.idle();
    const before = await board.observe();
    assert.equal(before.model.members.length, 2001);
    assert.equal(before.solved, true);
    await page.mouse.move(400, 400);
    await page.mouse.down({ button: 'middle' });
    await page.mouse.move(500, 400);
    await page.mouse.up({ button: 'middle' });
    await page.mouse.wheel(0, -400);
    await board.idle();
    const after = await board.observe();
    assert.ok(after.scale > before.scale);
    assert.deepEqual(after.model, before.model);
    assert.deepEqual(errors, []);
    await context.close();
});

// What a person does in a minute, repeated; ROUNDS=100 takes well over an hour. Undo restores the model and its
// history each time, so that the memory in use afterwards must be the same as before.
const rounds = Number(process.env.ROUNDS ?? 5);

async function oneRound(board, page) {
    await dragJoint(board, 'C', 30, 0);
    await dragJoint(board, 'E', 0, -30);
    await board.press('Results');
    await board.press('Working');
    for (let step = 0; step < 3; ++step) {
        await page.keyboard.press('PageDown');
    }
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await board.press('Model');
    await page.mouse.move(300, 300);
    await page.mouse.wheel(0, -100);
    await page.mouse.wheel(0, 100);
    await page.keyboard.press('Home');
    await board.idle();
}

test('nothing piles up in long use', async () => {
    const { page, board, context } = await openBoard(shared.browser, shared.site.address, sizes.desktop);
    for (let round = 0; round < 2; ++round) { // until every panel has allocated its memory
        await oneRound(board, page);
    }
    const before = (await board.observe()).bytes;
    for (let round = 0; round < rounds; ++round) {
        await oneRound(board, page);
    }
    const after = (await board.observe()).bytes;
    console.log(`${before} bytes in use, after ${rounds} rounds more ${after}`);
    assert.ok(after - before < 0.002 * before, `${after - before} bytes more after ${rounds} rounds`);
    await context.close();
});
