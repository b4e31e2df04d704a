// The program fails in the page: it says so, keeps the board, offers it, and starts again by itself.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { boardOf, dragJoint, dropFile, openBoard, openStart } from './board.mjs';
import { openPage, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

const open = (fragment = '', size = sizes.desktop) =>
    openBoard(shared.browser, shared.site.address, size, fragment);

const modelOf = async (board) => (await board.observe()).model;
const bar = (page) => page.locator('#failure');

// From now on the program aborts in the frame that first derives from a model containing this text. Each instance
// counts its frames from one: the failing instance has drawn more.
const failOn = (page, text) => page.evaluate((fatal) => window.gussetTest.failOn(fatal), text);

// Waits until the bar says this and the new program has drawn.
async function returned(page, words) {
    await page.waitForFunction((wanted) =>
        !document.getElementById('failure').hidden &&
        document.getElementById('failure-text').textContent.includes(wanted), words);
    return boardOf(page, sizes.desktop);
}

// From a joint to a new one: the ninth, which is named I.
async function drawFatalMember(page, board) {
    await failOn(page, '"id":"I"');
    await board.press('Member');
    const from = await board.joint('C');
    await board.hands.down(from);
    await board.hands.move({ x: from.x - 40, y: from.y - 40 });
    await board.hands.move({ x: from.x - 80, y: from.y - 60 });
    await board.hands.up();
}

async function saved(page) {
    const [download] = await Promise.all([page.waitForEvent('download'), page.locator('#failure-save').click()]);
    return JSON.parse(readFileSync(await download.path(), 'utf8'));
}

async function copied(page, context) {
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await page.locator('#failure-copy').click();
    await page.locator('#failure-copy', { hasText: 'copied' }).waitFor();
    return page.evaluate(() => navigator.clipboard.readText());
}

test('when the program fails on an edit, the board before it comes back without a reload, and goes on', async () => {
    const { page, context, board } = await open();
    await dragJoint(board, 'C', 60, 0);
    const before = await modelOf(board);
    await page.evaluate(() => { window.sameDocument = true; });
    await drawFatalMember(page, board);
    const after = await returned(page, 'as it was last kept');
    assert.deepEqual(await modelOf(after), before);
    assert.equal(await page.evaluate(() => window.sameDocument), true, 'the same page');
    assert.equal(await page.locator('#failure-text').getAttribute('role'), 'alert');

    // It works: a joint is dragged, solved, stored, and there after a reload.
    await page.locator('#failure-close').click();
    assert.equal(await bar(page).isVisible(), false);
    await dragJoint(after, 'C', -30, 0);
    assert.equal((await after.observe()).solved, true);
    const changed = await modelOf(after);
    await page.reload();
    assert.deepEqual(await modelOf(await boardOf(page, sizes.desktop)), changed);
    await context.close();
});

test('an edit that the program fails on is not kept; the board before it is offered as file and link', async () => {
    const { page, context, board } = await open();
    await dragJoint(board, 'C', 60, 0);
    const before = await modelOf(board);
    await drawFatalMember(page, board);
    const after = await returned(page, 'as it was last kept');
    assert.deepEqual(await modelOf(after), before);
    assert.match((await after.observe()).undo, /Move joint C/, 'with its undo');

    assert.deepEqual(await saved(page), before);
    const link = await copied(page, context);
    const there = await openBoard(shared.browser, shared.site.address, sizes.desktop, link.slice(link.indexOf('#')));
    assert.deepEqual(await modelOf(there.board), before);
    await there.context.close();
    await context.close();
});

test('when the board that was kept fails again, the board before its last step comes, and redo brings it back', async () => {
    const { page, context, board } = await open();
    await dragJoint(board, 'C', 60, 0);
    const before = await modelOf(board);
    await dragJoint(board, 'E', 0, -60);
    const bad = await modelOf(board);
    const joint = JSON.stringify(bad.joints.find(({ id }) => id === 'E'));
    await failOn(page, joint);
    await page.mouse.move(300, 300); // the next frame fails, and so does the first of the next program
    const after = await returned(page, 'before its last step');
    assert.deepEqual(await modelOf(after), before);
    assert.deepEqual(await saved(page), bad, 'and what it failed on is offered');
    await failOn(page, '');
    await page.locator('#failure-close').click();
    await page.keyboard.press('Control+y');
    await after.idle();
    assert.deepEqual(await modelOf(after), bad);
    await context.close();
});

test('when it fails a third time an empty board stands there, and the bad one among the recent ones', async () => {
    const { page, context, board } = await open();
    await dragJoint(board, 'C', 60, 0);
    const bad = await modelOf(board);
    await failOn(page, bad.title);
    await page.mouse.move(300, 300);
    let after = await returned(page, 'an empty one');
    assert.deepEqual((await modelOf(after)).joints, []);
    assert.deepEqual(await saved(page), bad);
    await after.idle();

    // Edited, stored and reloaded: no further failure, and the bad board can still be fetched.
    await failOn(page, '');
    const at = { x: 300, y: 300 };
    await after.press('Member');
    await after.drag(at, { x: 500, y: 300 });
    assert.equal((await modelOf(after)).joints.length, 2);
    await page.reload();
    after = await boardOf(page, sizes.desktop);
    assert.equal((await modelOf(after)).joints.length, 2);
    assert.equal(await bar(page).isVisible(), false);
    await openStart(after);
    await page.locator('#recent-list button', { hasText: bad.title }).waitFor();
    await context.close();
});

test('a board that was only opened comes back too, and gives way to the one before it when it fails again', async () => {
    const { page, context, board } = await open();
    await dragJoint(board, 'C', 60, 0);
    const own = await modelOf(board);
    const stranger = { gusset: 1, title: 'Stranger', joints: [{ id: 'A', x: 0, y: 0 }, { id: 'B', x: 3, y: 0 }],
        members: [{ a: 'A', b: 'B' }] };
    await page.evaluate((link) => { location.hash = link; }, `#j=${encodeURIComponent(JSON.stringify(stranger))}`);
    await board.idle();
    await failOn(page, 'Stranger');
    await page.mouse.move(300, 300);
    const after = await returned(page, 'the one before it');
    assert.deepEqual(await modelOf(after), own);
    const link = await copied(page, context);
    await failOn(page, '');
    await page.waitForFunction(() => !location.hash.includes('Stranger')); // else the same hash is no change
    await page.evaluate((hash) => { location.hash = hash; }, link.slice(link.indexOf('#')));
    await after.idle();
    assert.equal((await modelOf(after)).title, 'Stranger');
    await context.close();
});

// A page whose program aborts in this many of its first frames; `window.programs` counts the programs.
async function openAborting(times, query) {
    const opened = await openPage(shared.browser, shared.site.address);
    await opened.page.addInitScript((aborts) => { Object.assign(window, { aborts, programs: 0 }); }, times);
    await opened.page.route('**/program.js', async (route) => {
        const response = await route.fetch();
        const created = 'await create(page);';
        const script = await response.text();
        assert.ok(script.includes(created));
        await route.fulfill({ response, body: script.replace(created, `${created}
            ++window.programs;
            const drawn = instance._gussetFrame;
            const frame = (...all) => (window.aborts-- > 0 ? instance._gussetAbort() : drawn(...all));
            // The module puts its own function there again when it is called first.
            Object.defineProperty(instance, '_gussetFrame', { enumerable: true, get: () => frame, set: () => {} });`) });
    });
    await opened.page.goto(`${shared.site.address}${query}`);
    return opened;
}

test('a program that fails in the first frame of all is started again, and the board can be worked on', async () => {
    const { page, context } = await openAborting(1, '?test');
    const board = await returned(page, 'as it was last kept');
    assert.equal(await page.locator('#status').isVisible(), false, 'nothing is said of WebGL2');
    const before = await modelOf(board);
    await dragJoint(board, 'C', 60, 0);
    assert.notDeepEqual(await modelOf(board), before);
    await context.close();
});

test('the program starts again without asking anybody for its file', async () => {
    const { page, context, board } = await open();
    await dragJoint(board, 'C', 60, 0);
    const before = await modelOf(board);
    await page.evaluate(() => { window.fetch = () => Promise.reject(new TypeError('no network, and no cache')); });
    await drawFatalMember(page, board);
    assert.deepEqual(await modelOf(await returned(page, 'as it was last kept')), before);
    await context.close();
});

test('a link that is opened while the program starts again is opened by the next one', async () => {
    const { page, context, board } = await open();
    await dragJoint(board, 'C', 60, 0);
    const link = `#j=${encodeURIComponent('{"gusset":1,"title":"Meanwhile","joints":[{"id":"A","x":0,"y":0}],"members":[]}')}`;
    await page.evaluate((hash) => {
        const { instantiate } = WebAssembly;
        WebAssembly.instantiate = async (...all) => {
            WebAssembly.instantiate = instantiate; // for the second part of the program
            location.hash = hash;
            await new Promise((resolve) => addEventListener('hashchange', resolve));
            return instantiate(...all);
        };
    }, link);
    await drawFatalMember(page, board);
    await returned(page, 'as it was last kept');
    await page.waitForFunction(() => window.gussetTest.observe().model.title === 'Meanwhile');
    await context.close();
});

// The page's clock runs normally, and is advanced by more than the calm time.
test('failures with a calm time between them each count as the first, and two soon after another do not', async () => {
    const { page, context } = await openAborting(0, '?test');
    await page.waitForFunction(() => document.body.classList.contains('has-board'));
    await page.clock.install();
    const failOnce = async (programs, words) => {
        await page.evaluate(() => {
            window.aborts = 1;
            dispatchEvent(new Event('resize'));
        });
        await page.waitForFunction((count) => window.programs === count, programs);
        await page.waitForFunction((wanted) => // its clock has no marks, so returned() does not work
            document.getElementById('failure-text').textContent.includes(wanted), words);
    };
    for (let programs = 2; programs <= 5; ++programs) { // the third failure in quick succession is the last
        await failOnce(programs, 'as it was last kept');
        await page.clock.fastForward(11_000);
    }
    await failOnce(6, 'as it was last kept');
    await failOnce(7, 'an empty one');
    await context.close();
});

test('a program that fails on an empty board too is left alone, and the board is offered', async () => {
    const { page, context } = await openAborting(0, '');
    await page.waitForFunction(() => document.body.classList.contains('has-board'));
    await page.evaluate(() => {
        window.aborts = Infinity;
        dispatchEvent(new Event('resize'));
    });
    await page.waitForFunction(() => document.getElementById('failure-text').textContent.includes('an empty board too'));
    assert.equal(await page.evaluate(() => window.programs), 4, 'the first, as kept, and empty twice: nothing is kept');
    assert.equal(await page.locator('#failure-again').isVisible(), true);
    await Promise.all([page.waitForEvent('load'), page.locator('#failure-again').click()]);
    await page.waitForFunction(() => document.body.classList.contains('has-board'));
    await context.close();
});

test('when there is no more memory the page says so and starts again', async () => {
    const { page, context, board } = await open();
    await dragJoint(board, 'C', 60, 0);
    await page.evaluate(() => {
        const { prototype } = WebAssembly.Memory;
        const { grow } = prototype;
        let refusals = 3; // the module asks for less each time, three times
        prototype.grow = function growLater(pages) {
            if (--refusals < 0) {
                return grow.call(this, pages);
            }
            throw new RangeError('no memory');
        };
    });
    const model = { gusset: 1, title: 'Large', joints: [], members: [], mine: 'x'.repeat(6_000_000) };
    await dropFile(page, 'large.json', JSON.stringify(model));
    const after = await returned(page, 'as it was last kept');
    assert.equal((await modelOf(after)).title, 'Large', 'this time there was enough');
    await context.close();
});

for (const [name, size] of Object.entries(sizes)) {
    test(`what is said after a failure can be read and pressed on a ${name}`, async () => {
        const { page, context, board } = await open('', size);
        await dragJoint(board, 'C', 40, 0);
        const bad = await modelOf(board);
        await failOn(page, JSON.stringify(bad.joints[2]));
        await page.evaluate(() => dispatchEvent(new Event('resize')));
        await returned(page, 'before its last step');
        for (const id of ['failure-save', 'failure-copy', 'failure-close']) {
            const box = await page.locator(`#${id}`).boundingBox();
            assert.ok(box.height >= 44 && box.x >= 0 && box.x + box.width <= size.viewport.width &&
                box.y + box.height <= size.viewport.height, `${id}: ${JSON.stringify(box)}`);
        }
        await screenshot(page, `failure-${name}`);
        await context.close();
    });
}
