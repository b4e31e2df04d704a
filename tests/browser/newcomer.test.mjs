// What somebody does who has never seen the page, by real taps and typing. The results are asserted, the taps are only
// reported.
import assert from 'node:assert/strict';
import path from 'node:path';
import { test } from 'node:test';
import { boardOf } from './board.mjs';
import { folder, keepPictures, whereWords } from './prints.mjs';
import { linkTo, openPage, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

// Counts the taps on the page's own elements; those on the board are counted by board.mjs.
function fingerOn(page) {
    const counted = { taps: 0, words: 0 };
    const tap = async (selector) => {
        ++counted.taps;
        await page.locator(selector).tap();
    };
    return {
        counted,
        tap,
        // A list of choices opens over the page by a tap, and a second one chooses.
        choose: async (selector, label) => {
            counted.taps += 2;
            await page.selectOption(selector, { label });
        },
        // A tap on a field selects what stands in it, so that typing replaces it.
        type: async (selector, text) => {
            await tap(selector);
            ++counted.words;
            await page.keyboard.insertText(text);
        },
    };
}

test('from the bare address to a solved roof of 24 m with three load cases, on paper, from a tablet', async (context_) => {
    const { page, context, errors } = await openPage(shared.browser, shared.site.address, { ...sizes.tablet, atStart: true });
    await page.goto(`${shared.site.address}?test`);
    const { counted, tap, choose, type } = fingerOn(page);
    await page.locator('#form-put:enabled').waitFor();
    await choose('#form-form', 'Howe');
    await choose('#form-panels', '6');
    await type('#form-span', '24');
    await type('#form-rise', '5');
    await tap('#form-add'); // selects the load of the case that it adds
    await page.keyboard.insertText('6');
    await tap('#form-add');
    await page.keyboard.insertText('-4');
    counted.words += 2;
    await screenshot(page, 'newcomer-form');
    await tap('#form-put');
    const board = await boardOf(page, sizes.tablet);
    await page.waitForFunction(() => window.gussetTest.observe().model.title === 'Howe truss');
    await screenshot(page, 'newcomer-roof');

    const { model } = await board.observe();
    const totals = {};
    for (const { case: name, fy } of model.loads) {
        totals[name] = (totals[name] ?? 0) - fy;
    }
    assert.deepEqual(totals, { dead: 50, snow: 30, wind: -20 }, 'five joints between the supports carry each');
    assert.match(await board.verdict(), /determinate/i);
    // The frame is symmetric: each support pushes up half of all that acts, (50 + 30 − 20)/2 kN.
    const reactions = (await board.table('Reactions')).flat().join(' ');
    assert.equal(reactions.match(/\b30\b/g)?.length, 2, reactions);

    await board.press('Share');
    await board.reveal('Tables and print');
    await board.press('Tables and print');
    await page.waitForFunction(() => document.body.classList.contains('reading'));
    await page.waitForFunction(() => document.querySelectorAll('#tables-content math').length > 10);
    await screenshot(page, 'newcomer-tables');
    await page.evaluate(() => { globalThis.print = () => { globalThis.wasPrinted = true; }; });
    await tap('#print-tables');
    await page.locator('#sheet-dialog').waitFor({ state: 'visible' });
    await screenshot(page, 'newcomer-print');
    await tap('#sheet-dialog [name=print]');
    await page.waitForFunction(() => globalThis.wasPrinted);
    const sheet = path.join(folder, 'newcomer.pdf');
    await page.pdf({ path: sheet, preferCSSPageSize: true });
    const words = whereWords(sheet);
    for (const name of ['dead', 'snow', 'wind', ...model.members.map(({ a, b }) => a + b)]) {
        assert.ok(words.has(name), `${name} is printed`);
    }
    keepPictures(sheet, 'newcomer-sheet');
    const taps = counted.taps + board.strokes.taps;
    context_.diagnostic(`a roof of 24 m with three load cases: ${taps} taps, ${counted.words} numbers typed, ` +
        `${board.strokes.drags} drags`);
    assert.deepEqual(errors, []);
    await context.close();
});

test('from a link to why a member carries what it carries, on a phone', async (context_) => {
    const { page, context, errors } = await openPage(shared.browser, shared.site.address, sizes.phone);
    await page.goto(`${shared.site.address}?test${linkTo('footbridge.json')}`);
    const board = await boardOf(page, sizes.phone);
    const [one, other] = [await board.joint('C'), await board.joint('D')];
    await board.tap({ x: (one.x + other.x) / 2, y: (one.y + other.y) / 2 });
    await board.press('Why?');
    await page.waitForFunction(() => window.gussetTest.observe().working);
    await board.idle();
    const { model } = await board.observe();
    assert.ok(model.members.some(({ a, b }) => [a, b].sort().join() === 'C,D'), 'there is such a member');
    await screenshot(page, 'newcomer-why');
    context_.diagnostic(`from a link to why a member carries its force: ${board.strokes.taps} taps`);
    assert.deepEqual(errors, []);
    await context.close();
});

//   C        the first steps, each as its line says
//  / \
// A───B
test('on the first empty board each next step is offered, and never again once all are taken', async () => {
    const { page, context, errors } = await openPage(shared.browser, shared.site.address, { ...sizes.tablet, atStart: true });
    await page.goto(`${shared.site.address}?test`);
    await page.locator('#form-put:enabled').waitFor();
    await page.locator('#home-new').tap();
    const board = await boardOf(page, sizes.tablet);
    const lesson = async () => (await board.observe()).lesson;
    assert.equal(await lesson(), 'member');
    await screenshot(page, 'lesson-member');
    const { origin, scale } = await board.observe();
    const at = (x, y) => ({ x: origin.x + x * scale, y: origin.y - y * scale });
    await board.drag(at(2, 1), at(8, 1));
    assert.equal(await lesson(), 'triangle');
    await screenshot(page, 'lesson-triangle');
    await board.drag(at(8, 1), at(5, 4));
    await board.drag(at(5, 4), at(2, 1));
    assert.equal(await lesson(), 'pin');
    await screenshot(page, 'lesson-pin');
    await board.press('Pin');
    await board.tap(await board.joint('A'));
    assert.equal(await lesson(), 'roller');
    await board.press('Roller');
    await board.tap(await board.joint('B'));
    assert.equal(await lesson(), 'load');
    await screenshot(page, 'lesson-load');
    await board.press('Load');
    await board.tap(await board.joint('C'));
    await page.keyboard.press('Enter');
    await board.idle();
    assert.equal(await lesson(), 'forces');
    await screenshot(page, 'lesson-forces');
    await board.press('Select');
    const [a, b] = [await board.joint('A'), await board.joint('B')];
    await board.tap({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
    assert.equal(await lesson(), '');
    await board.press('Start page');
    await page.locator('#form-put:enabled').waitFor();
    await page.locator('#home-new').tap();
    await page.waitForFunction(() => window.gussetTest.observe().model.joints.length === 0);
    await board.idle();
    assert.equal(await lesson(), '', 'never again in this browser');
    assert.deepEqual(errors, []);
    await context.close();
});
