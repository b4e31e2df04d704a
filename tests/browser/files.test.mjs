// Files in and out, and a refused clipboard.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import path from 'node:path';
import { boardOf, dragJoint, dropFile, emptyBoard, openBoard, openStart } from './board.mjs';
import { openPage, root, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

const open = (size = sizes.desktop) => openBoard(shared.browser, shared.site.address, size);
const example = path.join(root, 'site/examples/farm_bridge.json');
const titleOf = (file) => JSON.parse(readFileSync(file, 'utf8')).title;

async function chooseFile(board) {
    await openStart(board);
    const [chooser] = await Promise.all([board.page.waitForEvent('filechooser'), board.page.click('#home-file')]);
    return chooser;
}

test('a file is chosen and opened, saved, and opened again the same', async () => {
    const { page, board, context } = await open();
    const chooser = await chooseFile(board);
    await chooser.setFiles(example);
    await page.waitForFunction((title) => window.gussetTest.observe().model.title === title, titleOf(example));
    const { model } = await board.observe();
    await board.press('Share');
    await board.reveal('Save as a file');
    const [download] = await Promise.all([page.waitForEvent('download'), board.press('Save as a file')]);
    assert.equal(download.suggestedFilename(), `${titleOf(example)}.json`);
    const saved = await download.path();
    await emptyBoard(board);
    const again = await chooseFile(board);
    await again.setFiles({ name: 'again.json', mimeType: 'application/json', buffer: readFileSync(saved) });
    await page.waitForFunction(() => window.gussetTest.observe().model.joints.length > 0);
    assert.deepEqual((await board.observe()).model, model);
    await context.close();
});

test('a file that is dropped on the board is opened; one that is no model is refused in words', async () => {
    const { page, board, context, errors } = await open();
    await dropFile(page, 'bridge.json', readFileSync(example, 'utf8'));
    await page.waitForFunction((title) => window.gussetTest.observe().model.title === title, titleOf(example));
    const { model } = await board.observe();
    await dropFile(page, 'holiday.json', '{"photos": 12}');
    await page.waitForFunction(() => window.gussetTest.observe().message !== '');
    await board.idle();
    const after = await board.observe();
    assert.deepEqual(after.model, model);
    assert.match(after.message, /\w+ \w+/);
    await page.keyboard.press('Control+z');
    await board.idle();
    assert.notDeepEqual((await board.observe()).model, model, 'and can be undone');
    assert.deepEqual(errors, []);
    await context.close();
});

test('a file that the system opens the page with is on the board', async () => {
    const { page, context } = await openPage(shared.browser, shared.site.address);
    await page.addInitScript((text) => {
        const handle = { getFile: async () => new File([text], 'bridge.json') };
        Object.defineProperty(window, 'launchQueue', {
            value: { setConsumer: (consume) => { window.launchWith = () => consume({ files: [handle] }); } },
        });
    }, readFileSync(example, 'utf8'));
    await page.goto(`${shared.site.address}?test`);
    await page.waitForFunction(() => window.gussetTest);
    await page.evaluate(() => window.launchWith());
    await page.waitForFunction((title) => window.gussetTest.observe().model.title === title, titleOf(example));
    await context.close();
});

test('a file given before the program is there waits for it, and a reload does not bring it again', async () => {
    const { page, context } = await openPage(shared.browser, shared.site.address);
    await page.addInitScript((text) => { // as the system delivers it, at each load
        const handle = { getFile: async () => new File([text], 'bridge.json') };
        Object.defineProperty(window, 'launchQueue', {
            value: { setConsumer: (consume) => { consume({ files: [handle] }); } },
        });
    }, readFileSync(example, 'utf8'));
    await page.goto(`${shared.site.address}?test`);
    const board = await boardOf(page, sizes.desktop);
    await page.waitForFunction((title) => window.gussetTest.observe().model.title === title, titleOf(example));
    await board.idle();
    const { id } = (await board.observe()).model.joints.at(-1);
    await dragJoint(board, id, 0, -60);
    const { model } = await board.observe();
    await page.reload();
    const again = await boardOf(page, sizes.desktop);
    assert.deepEqual((await again.observe()).model, model);
    assert.match((await again.observe()).undo, /Move joint/);
    await context.close();
});

test('where the clipboard is refused the link stands selected, to be copied by hand', async () => {
    const { page, board, context } = await open();
    await page.evaluate(() => {
        Object.defineProperty(navigator, 'clipboard', {
            value: { writeText: () => Promise.reject(new DOMException('no', 'NotAllowedError')) },
        });
    });
    await board.press('Copy link');
    await page.locator('#copy-dialog').waitFor({ state: 'visible' });
    const selected = await page.evaluate(() => {
        const box = document.getElementById('copy-text');
        return { text: box.value, picked: box.value.slice(box.selectionStart, box.selectionEnd) };
    });
    assert.match(selected.text, /#m=1\./);
    assert.equal(selected.picked, selected.text);
    await page.locator('#copy-dialog button').click();
    assert.equal(await page.locator('#copy-dialog').isVisible(), false);
    await context.close();
});
