// A photograph under the board: chosen, laid by two marks and their distance, seen where it belongs, and kept.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { arriveAtStart, boardOf, dropFile, emptyBoard, openBoard, openStart } from './board.mjs';
import { linkTo, openPage, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();
const size = { width: 800, height: 600 };
const spot = { x: 560, y: 150, half: 30 }; // a square of another colour on the photograph

// A photograph made here: one tone, or a busy picture of a roof, with the spot. As bytes of a PNG file.
async function photographOf(page, { ground, colour, isBusy = false }) {
    const bytes = await page.evaluate(async ({ size: { width, height }, spot: { x, y, half }, ground: tone, colour: ink, isBusy: busy }) => {
        const canvas = new OffscreenCanvas(width, height);
        const paper = canvas.getContext('2d');
        paper.fillStyle = tone;
        paper.fillRect(0, 0, width, height);
        if (busy) {
            for (let i = 0; i < 2500; ++i) {
                paper.fillStyle = `hsl(${(i * 137) % 360} 70% ${20 + (i * 31) % 60}%)`;
                paper.fillRect((i * 211) % width, (i * 97) % height, 30, 14);
            }
        }
        paper.strokeStyle = '#5a3c1e';
        paper.lineWidth = 14;
        paper.beginPath();
        [[100, 500], [700, 500], [400, 200], [100, 500], [400, 500], [400, 200]].forEach(([px, py]) => paper.lineTo(px, py));
        paper.stroke();
        paper.fillStyle = ink;
        paper.fillRect(x - half, y - half, 2 * half, 2 * half);
        return [...new Uint8Array(await (await canvas.convertToBlob()).arrayBuffer())];
    }, { size, spot, ground, colour, isBusy });
    return { name: 'roof.png', mimeType: 'image/png', buffer: Buffer.from(bytes) };
}

const dialog = (page) => page.locator('#ground-dialog');
const says = (page) => page.locator('.ground-says').textContent();

async function openDialog(board) {
    await board.press('View');
    await board.press('Trace a photograph …');
    await dialog(board.page).waitFor({ state: 'visible' });
}

async function choose(page, file) {
    await page.locator('#ground-dialog input[type=file]').setInputFiles(file);
    await page.locator('.ground-picture > canvas').first().waitFor({ state: 'visible' });
}

// Drags a mark to a point of the photograph.
async function dragMark(page, name, to) {
    const mark = await page.locator('.ground-mark', { hasText: name }).boundingBox();
    const picture = await page.locator('.ground-picture > canvas').first().boundingBox();
    await page.mouse.move(mark.x + mark.width / 2, mark.y + mark.height / 2);
    await page.mouse.down();
    await page.mouse.move(picture.x + picture.width * to.x / size.width, picture.y + picture.height * to.y / size.height, { steps: 4 });
    await page.mouse.up();
}

// The feet of the roof, (100, 500) and (700, 500), are 6 m apart: 1 cm a pixel, and (100, 500) lies at the origin.
async function layRoof(board, photograph, length = '6') {
    const { page } = board;
    await openDialog(board);
    await choose(page, photograph);
    await dragMark(page, '1', { x: 100, y: 500 });
    await dragMark(page, '2', { x: 700, y: 500 });
    await page.getByLabel('Their distance').fill(length);
    await page.getByRole('button', { name: 'Put it under the board' }).click();
    await dialog(page).waitFor({ state: 'hidden' });
    await shownGround(page, true);
    await board.idle();
}
const spotOnBoard = { x: (spot.x - 100) / 100, y: (500 - spot.y) / 100 }; // m

const shownGround = (page, wanted) => page.waitForFunction((is) => window.gussetTest.observe().ground === is, wanted);

// The colours on the screen at a place of the board, in metres.
async function colourAt(board, { x, y }) {
    const { origin, scale } = await board.observe();
    const png = await board.page.screenshot();
    const at = { x: origin.x + scale * x, y: origin.y - scale * y };
    return board.page.evaluate(async ([url, place]) => {
        const image = new Image();
        image.src = url;
        await image.decode();
        const canvas = new OffscreenCanvas(image.width, image.height);
        const paper = canvas.getContext('2d');
        paper.drawImage(image, 0, 0);
        const ratio = image.width / innerWidth;
        return [...paper.getImageData(Math.round(place.x * ratio), Math.round(place.y * ratio), 1, 1).data].slice(0, 3);
    }, [`data:image/png;base64,${png.toString('base64')}`, at]);
}

// The spot is red on white: on light paper it takes green and blue away, and nothing beside it does.
async function assertSpot(board, isThere, says = '') {
    const { x, y } = spotOnBoard;
    const reach = spot.half / 100;
    const inside = await colourAt(board, { x: x + 0.13, y: y - 0.13 }); // off the grid's lines
    assert.equal(inside[0] - inside[1] > 60, isThere, `${says} inside: ${inside}`);
    for (const [dx, dy] of [[1.35, 0.1], [-1.35, 0.1], [0.1, 1.35], [0.1, -1.35]]) {
        const outside = await colourAt(board, { x: x + reach * dx, y: y + reach * dy });
        assert.ok(outside[0] - outside[1] < 30, `${says} outside: ${outside}`);
    }
}

async function openEmpty(pageSize = sizes.desktop) {
    const opened = await openBoard(shared.browser, shared.site.address, pageSize);
    await emptyBoard(opened.board);
    return opened;
}
const redOnWhite = { ground: '#ffffff', colour: '#ff0000' };

test('a photograph lies where its marks say, and stays there while the board is moved and zoomed', async () => {
    const { board, page, context, errors, strangers } = await openEmpty();
    await layRoof(board, await photographOf(page, redOnWhite));
    await assertSpot(board, true, 'at first');
    const before = await board.observe();
    await page.mouse.move(500, 300);
    for (const step of [-240, -240, 120]) {
        await page.mouse.wheel(0, step);
        await board.idle();
    }
    const zoomed = await board.observe();
    assert.notEqual(zoomed.scale, before.scale);
    await assertSpot(board, true, 'zoomed');
    await page.mouse.move(500, 300);
    await page.mouse.down({ button: 'middle' });
    await page.mouse.move(430, 350, { steps: 5 });
    await page.mouse.up({ button: 'middle' });
    await board.idle();
    assert.notDeepEqual((await board.observe()).origin, zoomed.origin);
    await assertSpot(board, true, 'moved');
    assert.equal((await board.observe()).undo, before.undo, 'it is no step of the history');
    assert.deepEqual(strangers, []);
    assert.deepEqual(errors, []);
    await context.close();
});

test('a photograph that is dropped on the board is laid out, on the start page for a new board; a drawing is not one', async () => {
    const { board, page, context } = await openEmpty();
    const { buffer } = await photographOf(page, { ground: '#fff', colour: '#f00' });
    await dropFile(page, 'roof.png', [...buffer], 'image/png');
    await page.locator('.ground-picture > canvas').first().waitFor({ state: 'visible' });
    await page.getByLabel('Their distance').fill('6');
    await page.getByRole('button', { name: 'Put it under the board' }).click();
    await shownGround(page, true);
    await dropFile(page, 'note.svg', '<svg xmlns="http://www.w3.org/2000/svg"/>', 'image/svg+xml');
    await page.waitForFunction(() => window.gussetTest.observe().message !== '');
    assert.equal(await dialog(page).isVisible(), false);
    await board.idle();
    const start = await arriveAtStart(shared, sizes.desktop);
    await dropFile(start.page, 'roof.png', [...buffer], 'image/png', '#home');
    await start.page.locator('.ground-picture > canvas').first().waitFor({ state: 'visible' });
    assert.equal((await start.page.evaluate(() => window.gussetTest.observe().model.joints)).length, 0);
    assert.equal(await start.page.locator('#home').isVisible(), false);
    await start.context.close();
    await context.close();
});

test('a length in another unit scales the photograph, and a line that is level turns it', async () => {
    const { board, page, context, errors } = await openEmpty();
    await openDialog(board);
    await choose(page, await photographOf(page, redOnWhite));
    // Along a slope of 3 to 4 of 500 px, which are 500 cm: the photograph is turned clockwise.
    await dragMark(page, '1', { x: 100, y: 500 });
    await dragMark(page, '2', { x: 500, y: 200 });
    await page.getByLabel('Their distance').fill('500 cm');
    await page.getByLabel('The line is').selectOption('level');
    await page.getByRole('button', { name: 'Put it under the board' }).click();
    await shownGround(page, true);
    await board.idle();
    const dx = (spot.x - 100) / 100;
    const dy = (500 - spot.y) / 100;
    // By the angle whose cosine is 4/5: (x, y) to (0.8 x + 0.6 y, −0.6 x + 0.8 y)
    const inside = await colourAt(board, { x: 0.8 * dx + 0.6 * dy + 0.07, y: -0.6 * dx + 0.8 * dy + 0.07 });
    assert.ok(inside[0] - inside[1] > 60, `${inside}`);
    assert.deepEqual(errors, []);
    await context.close();
});

test('what cannot be used is said in words, and what was there stays', async () => {
    const { board, page, context } = await openEmpty();
    await openDialog(board);
    const chooser = page.locator('#ground-dialog input[type=file]');
    for (const [file, words] of [
        [{ name: 'notes.txt', mimeType: 'text/plain', buffer: Buffer.from('no picture') }, /notes\.txt cannot be read as a picture/],
        [{ name: 'IMG_1.HEIC', mimeType: 'image/heic', buffer: Buffer.from('ftypheic') }, /HEIC.*JPEG/],
    ]) {
        await chooser.setInputFiles(file);
        await page.locator('.ground-says', { hasText: words }).waitFor({ state: 'visible' });
    }
    await choose(page, await photographOf(page, redOnWhite));
    const put = page.getByRole('button', { name: 'Put it under the board' });
    for (const [typed, words] of [['', /Type the distance/], ['0', /between 1 mm and 10 km/], ['wide', /“wide”/], ['6 kN', /6 kN/]]) {
        await page.getByLabel('Their distance').fill(typed);
        await put.click();
        assert.match(await says(page), words);
    }
    await page.getByLabel('Their distance').fill('6');
    const second = await page.locator('.ground-mark', { hasText: '2' }).getAttribute('aria-label');
    const [, x, y] = second.match(/(\d+) across and (\d+) down/).map(Number);
    await dragMark(page, '1', { x, y });
    await put.click();
    assert.match(await says(page), /Both marks lie on one place/);
    await chooser.setInputFiles({ name: 'bad.png', mimeType: 'image/png', buffer: Buffer.from('x') });
    await page.locator('.ground-says', { hasText: 'bad.png' }).waitFor({ state: 'visible' });
    assert.equal(await page.locator('.ground-picture').isVisible(), true, 'the photograph is still there');
    await page.keyboard.press('Escape');
    await dialog(page).waitFor({ state: 'hidden' });
    assert.equal((await board.observe()).ground, false);
    await context.close();
});

test('a photograph comes back with its board after a reload, and is on no other board', async () => {
    const { board, page, context, errors } = await openEmpty();
    await layRoof(board, await photographOf(page, redOnWhite));
    await openDialog(board);
    assert.equal(await page.getByLabel('Their distance').inputValue(), '6');
    await page.keyboard.press('Escape');
    await dialog(page).waitFor({ state: 'hidden' });
    const { origin } = await board.observe();
    await board.drag({ x: origin.x, y: origin.y }, { x: origin.x + 200, y: origin.y });
    assert.equal((await board.observe()).model.members.length, 1);
    await page.waitForFunction(async () => {
        const open = indexedDB.open('gusset-ground', 1);
        await new Promise((resolve) => { open.onsuccess = resolve; });
        const count = open.result.transaction('photographs').objectStore('photographs').count();
        await new Promise((resolve) => { count.onsuccess = resolve; });
        open.result.close();
        return count.result === 1;
    });
    await page.evaluate(() => window.gussetTest.reachedDisk());
    await page.reload();
    const again = await boardOf(page, sizes.desktop);
    await shownGround(page, true);
    await again.idle();
    await assertSpot(again, true, 'after a reload');
    await emptyBoard(again);
    await shownGround(page, false);
    await again.idle();
    await assertSpot(again, false, 'on a new board');
    await page.keyboard.press('Control+z');
    await shownGround(page, true);
    await again.idle();
    assert.equal((await again.observe()).model.members.length, 1, 'the board before it');
    assert.deepEqual(errors, []);
    await context.close();
});

test('where the browser keeps nothing, a note says so, and the photograph is there until the page is closed', async () => {
    const { board, page, context, errors } = await openEmpty();
    const { origin } = await board.observe();
    await board.drag(origin, { x: origin.x + 200, y: origin.y }); // now the board has its place
    await page.evaluate(() => {
        const { put } = IDBObjectStore.prototype;
        IDBObjectStore.prototype.put = function putOrRefuse(...all) {
            if (this.name === 'photographs') {
                throw new DOMException('full', 'QuotaExceededError');
            }
            return put.apply(this, all);
        };
    });
    await layRoof(board, await photographOf(page, redOnWhite));
    await page.waitForFunction(() => /could not be kept/.test(window.gussetTest.observe().message));
    await board.idle();
    await assertSpot(board, true);
    assert.deepEqual(errors, []);
    await context.close();
});

test('a photograph can be hidden, shown and taken away', async () => {
    const { board, page, context } = await openEmpty();
    await layRoof(board, await photographOf(page, redOnWhite));
    const put = page.getByRole('button', { name: 'Put it under the board' });
    for (const shown of [false, true]) {
        await openDialog(board);
        await page.getByLabel('Shown under the board').setChecked(shown);
        await put.click();
        await shownGround(page, shown);
        await board.idle();
        await assertSpot(board, shown);
    }
    await openDialog(board);
    await page.getByRole('button', { name: 'Take it away' }).click();
    await shownGround(page, false);
    await board.idle();
    await assertSpot(board, false, 'taken away');
    await openDialog(board);
    assert.equal(await page.locator('.ground-picture').isVisible(), false);
    await context.close();
});

test('the whole is done with keys alone', async () => {
    const { board, page, context } = await openEmpty();
    await openDialog(board);
    const chosen = page.waitForEvent('filechooser');
    assert.equal(await page.evaluate(() => document.activeElement.textContent), 'Choose a photograph …');
    await page.keyboard.press('Enter');
    await (await chosen).setFiles(await photographOf(page, redOnWhite));
    await page.locator('.ground-picture > canvas').first().waitFor({ state: 'visible' });
    await page.waitForFunction(() => document.activeElement.matches('#ground-dialog input[type=text]'));
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('Shift+Tab');
    const label = () => page.evaluate(() => document.activeElement.getAttribute('aria-label'));
    const before = await label();
    assert.match(before, /^First mark, 160 across and 450 down/);
    await page.keyboard.press('ArrowRight');
    const near = Number((await label()).match(/mark, (\d+)/)[1]);
    await page.keyboard.press('Shift+ArrowRight');
    const far = Number((await label()).match(/mark, (\d+)/)[1]);
    assert.ok(near > 160 && far - near > 5 * (near - 160), `${near}, ${far}`);
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.type('4');
    await page.keyboard.press('Enter');
    await dialog(page).waitFor({ state: 'hidden' });
    await shownGround(page, true);
    assert.equal(await page.evaluate(() => document.activeElement.id), 'board');
    await context.close();
});

test('the start page leads there', async () => {
    const { board, page, context } = await openEmpty();
    await openStart(board);
    await page.click('#home-photograph');
    await dialog(page).waitFor({ state: 'visible' });
    await page.getByRole('button', { name: 'Close' }).click();
    await page.waitForFunction(() => !document.body.classList.contains('at-start'));
    await context.close();
});

test('a lost drawing context comes back with the photograph', async () => {
    const { board, page, context } = await openEmpty();
    await layRoof(board, await photographOf(page, redOnWhite));
    await page.evaluate(async () => {
        const canvas = document.getElementById('board');
        const event = (name) => new Promise((resolve) => canvas.addEventListener(name, resolve, { once: true }));
        const extension = canvas.getContext('webgl2').getExtension('WEBGL_lose_context');
        const lost = event('webglcontextlost');
        extension.loseContext();
        await lost;
        await new Promise((resolve) => requestAnimationFrame(resolve));
        const restored = event('webglcontextrestored');
        extension.restoreContext();
        await restored;
    });
    await board.idle();
    await assertSpot(board, true);
    await context.close();
});

test('on a phone the marks are dragged with a finger, and everything can be touched', async () => {
    const { board, page, context } = await openEmpty(sizes.phone);
    await openDialog(board);
    await choose(page, await photographOf(page, redOnWhite));
    const centreOf = async (locator) => {
        const box = await locator.boundingBox();
        return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    };
    const mark = page.locator('.ground-mark', { hasText: '1' });
    await mark.scrollIntoViewIfNeeded();
    const from = await centreOf(mark);
    await board.hands.down(from);
    await board.hands.move({ x: from.x + 20, y: from.y - 15 });
    await board.hands.move({ x: from.x + 40, y: from.y - 30 });
    assert.equal(await page.locator('.ground-loupe').isVisible(), true);
    await screenshot(page, 'ground-phone-loupe');
    await board.hands.up();
    const to = await centreOf(mark);
    assert.ok(Math.abs(to.x - from.x - 40) < 2 && Math.abs(to.y - from.y + 30) < 2, JSON.stringify({ from, to }));
    for (const control of await page.locator('#ground-dialog :is(button, select, input[type=text])').all()) {
        if (await control.isVisible()) {
            const { width, height } = await control.boundingBox();
            assert.ok(width >= 44 && height >= 44, await control.evaluate((it) => it.outerHTML));
        }
    }
    const wide = await page.evaluate(() => {
        const box = document.getElementById('ground-dialog');
        return box.scrollWidth > box.clientWidth;
    });
    assert.equal(wide, false);
    await context.close();
});

const tones = { dark: { ground: '#101010', colour: '#303030' }, bright: { ground: '#ffffff', colour: '#dddddd' },
    busy: { ground: '#888888', colour: '#ff0000', isBusy: true } };

for (const [name, pageSize] of Object.entries(sizes)) {
    test(`a truss over a photograph on a ${name}`, async () => {
        const { board, page, context, errors } = await openBoard(shared.browser, shared.site.address, pageSize, linkTo('cottage_roof.json'));
        for (const scheme of ['light', 'dark']) {
            await page.emulateMedia({ colorScheme: scheme });
            for (const [tone, how] of Object.entries(tones)) {
                await openDialog(board);
                await choose(page, await photographOf(page, how));
                await page.getByLabel('Their distance').fill('8');
                if (tone === 'busy') {
                    await screenshot(page, `ground-dialog-${name}-${scheme}`);
                }
                await page.getByRole('button', { name: 'Put it under the board' }).click();
                await shownGround(page, true);
                await board.idle();
                await screenshot(page, `ground-${name}-${scheme}-${tone}`);
            }
        }
        assert.deepEqual(errors, []);
        await context.close();
    });
}
