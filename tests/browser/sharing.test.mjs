// What leaves the page: pictures of the board, results for a spreadsheet, the system's share sheet.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { boardOf, openBoard } from './board.mjs';
import { linkOf, root, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

async function openShareTab(size = sizes.desktop, fragment = '') {
    const opened = await openBoard(shared.browser, shared.site.address, size, fragment);
    await opened.board.press('Share');
    return opened;
}

async function saved({ page, board }, label) {
    await board.reveal(label);
    const [download] = await Promise.all([page.waitForEvent('download'), board.press(label)]);
    return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

// Width and height are in a PNG's header chunk (PNG, W3C, §11.2.2), big-endian from byte 16.
const pixelSize = (png) => ({ width: png.readUInt32BE(16), height: png.readUInt32BE(20) });

test('the board is saved as a drawing that a browser draws, with the forces on it', async () => {
    const opened = await openShareTab();
    const { name, bytes } = await saved(opened, 'Save the board as SVG');
    assert.match(name, /\.svg$/);
    const svg = await opened.page.evaluate((text) => {
        const root = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
        return {
            tag: root.tagName,
            title: root.querySelector('title')?.textContent,
            words: [...root.querySelectorAll('text')].map((one) => one.textContent),
        };
    }, bytes.toString());
    assert.equal(svg.tag, 'svg');
    assert.match(svg.title, /\w/);
    const { model } = await opened.board.observe();
    for (const joint of model.joints) {
        assert.ok(svg.words.includes(joint.id), `joint ${joint.id} is named`);
    }
    assert.ok(svg.words.some((word) => /^[TC] /.test(word) || / [TC]$/.test(word)), svg.words.join());
    assert.deepEqual(opened.errors, []);
    await opened.context.close();
});

test('as a picture it has two pixels a CSS pixel, and ink in it', async () => {
    const opened = await openShareTab(sizes.tablet);
    const drawing = (await saved(opened, 'Save the board as SVG')).bytes.toString();
    const { name, bytes } = await saved(opened, 'Save the board as PNG');
    assert.match(name, /\.png$/);
    const width = Number(drawing.match(/ width="([\d.]+)"/)[1]);
    assert.ok(Math.abs(pixelSize(bytes).width - 2 * width) <= 2, `${pixelSize(bytes).width} of ${width}`);
    const purple = await opened.page.evaluate(async (data) => {
        const image = new Image();
        image.src = `data:image/png;base64,${data}`;
        await image.decode();
        const sheet = document.createElement('canvas');
        sheet.width = image.width;
        sheet.height = image.height;
        const pen = sheet.getContext('2d');
        pen.drawImage(image, 0, 0);
        const { data: all } = pen.getImageData(0, 0, image.width, image.height);
        let count = 0;
        for (let i = 0; i < all.length; i += 4) {
            count += all[i] === 0x54 && all[i + 1] === 0x27 && all[i + 2] === 0x88 ? 1 : 0;
        }
        return count;
    }, bytes.toString('base64'));
    assert.ok(purple > 100, `${purple} pixels of tension`);
    await opened.context.close();
});

test('the results are saved for a spreadsheet, a row a member', async () => {
    const opened = await openShareTab();
    const { name, bytes } = await saved(opened, 'Save the results as CSV');
    assert.match(name, /\.csv$/);
    assert.equal(bytes.subarray(0, 3).toString('hex'), 'efbbbf', 'a byte order mark, for spreadsheets');
    const { model } = await opened.board.observe();
    const rows = bytes.toString().split('\r\n').filter((row) => row.startsWith('member,'));
    assert.equal(rows.length, model.members.length);
    await opened.context.close();
});

test('files keep the letters of their title in any script, and nothing that a file system forbids', async () => {
    const example = JSON.parse(readFileSync(path.join(root, 'site/examples/footbridge.json'), 'utf8'));
    const model = { ...example, title: 'Ферма: 屋根トラス/é' };
    const opened = await openShareTab(sizes.desktop, linkOf(model));
    const { name, bytes } = await saved(opened, 'Save as a file');
    assert.equal(name, 'Ферма- 屋根トラス-é.json');
    assert.equal(JSON.parse(bytes).title, model.title);
    await opened.context.close();
});

test('the sheet of the system gets the whole address, and no button stands where there is none', async () => {
    const without = await openShareTab();
    if (await without.page.evaluate(() => typeof navigator.share === 'undefined')) {
        assert.equal(await without.board.has('Share by …'), false);
    }
    await without.context.close();

    const { page, context } = await openBoard(shared.browser, shared.site.address, sizes.phone);
    await context.addInitScript(() => {
        navigator.share = (what) => { window.sharedByTest = what; return Promise.resolve(); };
    });
    await page.reload();
    const board = await boardOf(page, sizes.phone);
    await board.press('Share');
    await board.reveal('Share by …');
    await board.press('Share by …');
    const { url } = await page.evaluate(() => window.sharedByTest);
    assert.match(url, /^http.*#m=1\.[\w-]+\.\d+\.\w+$/);
    await context.close();
});

// Debian's zbarimg reads the picture as a phone's camera would.
const readCode = (png) =>
    execFileSync('zbarimg', ['--quiet', '--raw', '-Sdisable', '-Sqrcode.enable', '-'], { input: png })
        .toString().trim();

async function opensTheSame(link, board) {
    assert.match(link, /^http.*#m=1\.[\w-]+\.\d+\.\w+$/);
    const there = await openBoard(shared.browser, shared.site.address, sizes.desktop, link.slice(link.indexOf('#')));
    assert.deepEqual((await there.board.observe()).model, (await board.observe()).model);
    await there.context.close();
}

test('a camera reads the whole link from the code on the screen, on light and dark paper', async () => {
    for (const [size, colorScheme] of [[sizes.desktop, 'light'], [sizes.tablet, 'dark']]) {
        const { board, page, context } = await openShareTab({ ...size, colorScheme });
        await opensTheSame(readCode(await page.screenshot()), board);
        await context.close();
    }
});

test('and from the code that was saved for a handout', async () => {
    const opened = await openShareTab();
    const { name, bytes } = await saved(opened, 'Save the QR code as SVG');
    assert.match(name, /\.svg$/);
    const sheet = await opened.context.newPage();
    await sheet.setContent(bytes.toString());
    await opensTheSame(readCode(await sheet.screenshot()), opened.board);
    await opened.context.close();
});

test('a truss too large for a code says so, and its code is neither drawn nor saved', async () => {
    const joints = Array.from({ length: 200 }, (_, i) => ({ id: `N${i}`, x: i * 1.37, y: (i * i) % 17.3 }));
    const members = joints.slice(1).map(({ id }, i) => ({ a: joints[i].id, b: id }));
    const large = encodeURIComponent(JSON.stringify({ gusset: 1, joints, members }));
    const { board, context } = await openBoard(shared.browser, shared.site.address, sizes.desktop, `#j=${large}`);
    await board.press('Share');
    assert.equal(await board.has('Save the QR code as SVG'), false);
    assert.equal(await board.has('Save as a file'), true);
    await context.close();
});
