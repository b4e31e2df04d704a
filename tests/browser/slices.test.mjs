// Long derivations: while one is in progress the board is drawn and responds, the notebook shows the progress, and
// when it is done nothing more is drawn.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { dropFile, openBoard } from './board.mjs';
import { screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

// Panels 3 m wide and high with posts and diagonals that slope down to the middle, 10 kN down on every inner joint
// of the bottom chord: 4 panels + 1 members, statically determinate.
function pratt(panels) {
    const joints = [];
    const members = [];
    const loads = [];
    for (let i = 0; i <= panels; ++i) {
        joints.push({ id: `B${i}`, x: 3 * i, y: 0 }, { id: `T${i}`, x: 3 * i, y: 3 });
        members.push({ a: `B${i}`, b: `T${i}` });
        if (i > 0) {
            const left = 2 * i <= panels;
            members.push({ a: `B${i - 1}`, b: `B${i}` }, { a: `T${i - 1}`, b: `T${i}` },
                left ? { a: `T${i - 1}`, b: `B${i}` } : { a: `B${i - 1}`, b: `T${i}` });
        }
        if (i > 0 && i < panels) {
            loads.push({ joint: `B${i}`, fx: 0, fy: -10 });
        }
    }
    return {
        gusset: 1, title: `Bridge of ${panels} panels`, joints, members, loads,
        supports: [{ joint: 'B0', kind: 'pin' }, { joint: `B${panels}`, kind: 'roller', reaction: 90 }],
    };
}

async function openWorkingOf(model, options) {
    const opened = await openBoard(shared.browser, shared.site.address, options);
    await opened.board.press('Working');
    await dropFile(opened.page, 'bridge.json', JSON.stringify(model));
    await opened.page.waitForFunction((title) => window.gussetTest.observe().model.title === title, model.title);
    return opened;
}

const atWork = (page) => page.waitForFunction(() => {
    const { working, workingShare } = window.gussetTest.observe();
    return !working && workingShare > 0;
});

test('while the working of 2,001 members is at work frames are drawn and a tap picks something', async () => {
    const { board, page, context, errors } = await openWorkingOf(pratt(500), sizes.desktop);
    // Once it is in progress: what each browser frame finds from then on, and where to tap.
    const place = await page.waitForFunction(() => {
        const { working, workingShare, joints } = window.gussetTest.observe();
        if (working || workingShare === 0) {
            return null;
        }
        window.seen = [];
        const look = () => {
            const { frames, working: there, workingShare: share, selected } = window.gussetTest.observe();
            window.seen.push({ frames, working: there, share, picked: selected.joints + selected.members });
            if (!there) {
                requestAnimationFrame(look);
            }
        };
        look();
        const { x, y } = joints[Math.floor(joints.length / 2)];
        return { x, y };
    });
    const { x, y } = await place.jsonValue();
    await page.mouse.click(x, y);
    await page.waitForFunction(() => window.gussetTest.observe().working, null, { timeout: 200000 });
    await board.idle();
    const seen = await page.evaluate(() => window.seen);
    const busy = seen.filter(({ working }) => !working);
    assert.ok(new Set(busy.map(({ frames }) => frames)).size >= 5, `${busy.length} looks while it was at work`);
    for (let i = 1; i < busy.length; ++i) {
        assert.ok(busy[i].share >= busy[i - 1].share, 'progress fell');
    }
    assert.ok(busy.some(({ picked }) => picked === 1), 'the tap was answered only afterwards');
    const before = (await board.observe()).frames;
    await board.idle(); // three browser frames without a drawing
    assert.equal((await board.observe()).frames, before);
    assert.deepEqual(errors, []);
    await context.close();
}, { timeout: 240000 });

test('a joint of a large truss is dragged with the working open: forces in each frame, the working when it rests',
    async () => {
        const { board, page, context, errors } = await openWorkingOf(pratt(100), sizes.desktop);
        await page.waitForFunction(() => window.gussetTest.observe().working);
        await board.idle();
        const { x, y } = await board.joint('T50');
        await board.hands.down({ x, y });
        let revision = (await board.observe()).revision;
        for (let step = 1; step <= 6; ++step) {
            await board.hands.move({ x, y: y - 30 * step });
            await page.waitForFunction((last) => window.gussetTest.observe().revision > last, revision);
            const now = await board.observe();
            revision = now.revision;
            assert.equal(now.solvedRevision, revision);
            assert.equal(now.solved, true);
        }
        await page.waitForFunction(() => window.gussetTest.observe().working); // at rest, the button still down
        await board.hands.up();
        await page.waitForFunction(() => window.gussetTest.observe().working);
        await board.idle();
        assert.equal((await board.observe()).undo, 'Move joint T50');
        assert.deepEqual(errors, []);
        await context.close();
    }, { timeout: 240000 });

test('an edit abandons the working that is at work; the one that follows is of the truss as it is', async () => {
    const { board, page, context, errors } = await openWorkingOf(pratt(250), sizes.desktop);
    await atWork(page);
    await page.keyboard.press('Control+z'); // back to the previous board
    await page.waitForFunction(() => window.gussetTest.observe().working);
    await board.idle();
    assert.notEqual((await board.observe()).model.title, 'Bridge of 250 panels');
    assert.deepEqual(errors, []);
    await context.close();
}, { timeout: 240000 });

for (const [name, size] of Object.entries(sizes)) {
    for (const theme of ['paper', 'dark', 'sun']) {
        test(`on a ${name} in the ${theme} theme the notebook tells how far a long working is`, async () => {
            const look = {
                ...size,
                ...(theme === 'dark' ? { colorScheme: 'dark' } : {}),
                ...(theme === 'sun' ? { contrast: 'more' } : {}),
            };
            const { page, context, errors } = await openWorkingOf(pratt(250), look);
            await atWork(page);
            await screenshot(page, `progress-${name}-${theme}`);
            assert.deepEqual(errors, []);
            await context.close();
        }, { timeout: 240000 });
    }
}
