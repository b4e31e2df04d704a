// The notebook's tables with keyboard and finger: typing begins an edit, rows are pasted, the keypad has the keys
// that a field can use; the tabs stay, and each page keeps its place.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { emptyBoard, openBoard } from './board.mjs';
import { linkTo, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

const upright = { viewport: { width: 768, height: 1024 }, deviceScaleFactor: 2, hasTouch: true };
const wide = { viewport: { width: 1920, height: 1080 }, deviceScaleFactor: 1 };
const all = { ...sizes, upright, wide };

const open = (size, link) => openBoard(shared.browser, shared.site.address, size, link);

// Presses a key until that item has the focus.
async function focus(board, label, key) {
    for (let tries = 0; tries < 60; ++tries) {
        const { focus: focused } = await board.observe();
        if (focused.split('##').includes(label)) {
            return;
        }
        await board.page.keyboard.press(key);
        await board.idle();
    }
    assert.fail(`${label} never had the focus`);
}

test('what is typed on a focused cell begins its edit, and Escape leaves it as it was', async () => {
    const { board, page, context } = await open(sizes.desktop);
    await board.press('Model');
    await focus(board, 'notebook width', 'F6');
    await focus(board, 'joint.0.x', 'Tab');
    const before = (await board.observe()).model;
    await page.keyboard.type('7');
    await page.locator('#field-input').waitFor({ state: 'visible' });
    await page.keyboard.type('.25');
    assert.equal(await page.locator('#field-input').inputValue(), '7.25');
    await page.keyboard.press('Escape');
    await board.idle();
    assert.deepEqual((await board.observe()).model, before);
    await page.keyboard.type('-1.5');
    await page.keyboard.press('Enter');
    await board.idle();
    assert.equal((await board.observe()).model.joints[0].x, -1.5);
    await context.close();
});

test('three columns pasted into an empty table of joints are names and coordinates', async () => {
    const { board, page, context } = await open(sizes.desktop);
    await emptyBoard(board);
    await board.press('Model');
    await board.press('joint.0.x');
    const input = page.locator('#field-input');
    await input.waitFor({ state: 'visible' });
    await input.evaluate((element) => {
        const data = new DataTransfer();
        data.setData('text/plain', 'P\t0\t0\nQ\t4\t0\nR\t2\t3.125\n');
        element.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }));
    });
    await board.idle();
    const { model } = await board.observe();
    assert.deepEqual(model.joints.map(({ id }) => id), ['P', 'Q', 'R']);
    assert.equal(model.joints[2].y, 3.125);
    await screenshot(page, 'notebook-pasted-desktop');
    await context.close();
});

test('Tab leads from the joint of a support to its kind, which can be typed', async () => {
    const { board, page, context } = await open(sizes.desktop);
    await board.press('Model');
    await board.reveal('support.1.joint');
    await board.press('support.1.joint');
    const input = page.locator('#field-input');
    await input.waitFor({ state: 'visible' });
    await page.keyboard.press('Tab');
    await board.idle();
    assert.equal((await board.observe()).field, 'support.1.kind');
    assert.equal(await input.inputValue(), 'roller');
    await input.fill('pin');
    await page.keyboard.press('Tab');
    await board.idle();
    assert.equal((await board.observe()).model.supports[1].kind, 'pin');
    await context.close();
});

test('the keypad has a sign where a number may be negative and an @ where an angle may be typed', async () => {
    const { board, page, context } = await open(sizes.phone);
    await board.press('Model');
    await board.press('joint.0.x');
    await page.locator('#field-input').waitFor({ state: 'visible' });
    assert.equal(await page.locator('#field-sign').isVisible(), true);
    assert.equal(await page.locator('#field-angle').isVisible(), false);
    await page.keyboard.press('Escape');
    await board.idle();
    await board.reveal('load.0.first');
    await board.press('load.0.first');
    const input = page.locator('#field-input');
    await input.waitFor({ state: 'visible' });
    const key = page.locator('#field-angle');
    const { x, width, height } = await key.boundingBox();
    assert.ok(x >= 0 && width >= 44 && height >= 44);
    await input.fill('5');
    await key.tap();
    assert.equal(await input.inputValue(), '5 @ ');
    await screenshot(page, 'notebook-angle-phone');
    await page.keyboard.type('30');
    await page.keyboard.press('Enter');
    await board.idle();
    assert.equal((await board.observe()).model.loads[0].angle, 30);
    await context.close();
});

test('the tabs stay where they are, whatever has the focus on a low page', async () => {
    const { board, page, context } = await open({ ...sizes.desktop, viewport: { width: 1366, height: 420 } });
    await board.press('Model');
    const { y } = await board.find('Model');
    await page.keyboard.press('F6');
    for (let i = 0; i < 40; ++i) {
        await page.keyboard.press(i % 10 === 9 ? 'F6' : 'Tab');
        await board.idle();
        assert.equal((await board.find('Model')).y, y, `after ${i + 1} keys`);
    }
    await context.close();
});

test('each page of the notebook keeps its own place', async () => {
    const { board, page, context } = await open(sizes.phone);
    const places = {};
    for (const [tab, row] of [['Model', 'joint.2.x'], ['Results', 'row']]) {
        await board.press(tab);
        const { item } = await board.find('notebook');
        const low = { x: item.x + item.width / 2, y: item.y + item.height - 40 };
        await board.drag(low, { x: low.x, y: low.y - (tab === 'Model' ? 60 : 130) });
        places[tab] = (await board.find(row)).y;
    }
    for (const [tab, row] of [['Model', 'joint.2.x'], ['Results', 'row'], ['Model', 'joint.2.x']]) {
        await board.press(tab);
        assert.equal((await board.find(row)).y, places[tab], tab);
    }
    await screenshot(page, 'notebook-places-phone');
    await context.close();
});

for (const [name, size] of Object.entries(all)) {
    test(`on a ${name} page whatever can be pressed in header and notebook is large enough`, async () => {
        const { board, page, context, errors } = await open(size, linkTo('cottage_roof.json'));
        const pages = [['Model'], ['Results'], ['Results', 'Displacements'], ['Results', 'Envelope'],
            ['Results', 'Influence'], ['Share'], ['Working'], ['Working', 'Settings']];
        for (const steps of pages) {
            for (const step of steps) {
                if (await board.has(step)) {
                    await board.press(step);
                }
            }
            await screenshot(page, `notebook-${steps.join('-').toLowerCase()}-${name}`);
            if (size.hasTouch) {
                const { items } = await board.observe();
                const edges = items.filter(({ label }) => label === 'notebook' || label.startsWith('notebook/'))
                    .map(({ y, height }) => y + height);
                const small = items.filter(({ window, label, y, width, height }) =>
                    y + height < Math.min(...edges) - 1 && // not cut by the edge of what scrolls
                    /^(header|notebook|reader)/.test(window) && window !== label && label !== 'step' &&
                    !label.startsWith('#') && !label.includes('/') && label !== 'notebook width' &&
                    Math.min(width, height) > 0 && Math.min(width, height) < 43.5);
                assert.deepEqual(small.map(({ label, width, height }) => `${label}: ${width} × ${height}`), [],
                    steps.join(' '));
            }
        }
        assert.deepEqual(errors, []);
        await context.close();
    }, { timeout: 120000 });
}
