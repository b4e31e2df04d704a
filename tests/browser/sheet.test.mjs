// The sheet on paper: printed by Chromium from the command line's document and from the page, on A4 and Letter, upright
// and across, and judged by what can be seen. The pages are left in build/screenshots.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { gusset } from '../cli/support.mjs';
import { openBoard } from './board.mjs';
import { folder, inMargins, keepPictures, pagesOf, papers, picturesOf } from './prints.mjs';
import { bridge, emptyBoard, indeterminate, mechanism, roof } from './sheets.mjs';
import { linkOf, root, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();
const margins = { top: 13, side: 15, bottom: 15 }; // mm, as the sheet has them
const example = (name) => JSON.parse(readFileSync(path.join(root, `site/examples/${name}.json`), 'utf8'));
const trusses = {
    roof: roof(),
    mechanism: mechanism(),
    indeterminate: indeterminate(),
    'moving loads': example('farm_bridge'),
    'no sections': example('garage_roof'),
    tower: example('braced_tower'),
    'dense bridge': bridge(22),
    'empty board': emptyBoard,
};
const who = ['--project', 'Hall 4', '--author', 'A. Smith', '--date', '30 November 2026'];
const address = 'https://example.org/gusset/';

function sheetOf(truss, ...words) {
    const { status, stdout, stderr } = gusset(['report', '-', ...words], JSON.stringify(truss));
    assert.ok(status === 0 || status === 1, stderr);
    return stdout;
}

async function openSheet(html) {
    const page = await shared.browser.newPage();
    await page.setContent(html);
    return page;
}

async function printed(page) {
    const file = path.join(folder, 'sheet.pdf');
    await page.pdf({ path: file, preferCSSPageSize: true });
    return file;
}

const textOf = (file) => execFileSync('pdftotext', ['-layout', file, '-']).toString();

// The size of each page, in mm.
const sizesOf = (file) => [...execFileSync('pdfinfo', ['-f', '1', '-l', '99', file]).toString()
    .matchAll(/size: +([\d.]+) x ([\d.]+) pts/g)].map((match) => [match[1], match[2]].map((pt) => pt * 25.4 / 72));

// Words of a drawing that lie on each other, and cells whose words do not fit into them.
function crowded() {
    const wrong = [];
    for (const drawing of document.querySelectorAll('figure svg')) {
        const boxes = [...drawing.querySelectorAll('text')].map((it) => [it.textContent, it.getBoundingClientRect()]);
        const frame = drawing.getBoundingClientRect();
        boxes.forEach(([words, box], i) => {
            if (box.left < frame.left - 1 || box.right > frame.right + 1 || box.top < frame.top - 1 ||
                box.bottom > frame.bottom + 1) {
                wrong.push(`${words} leaves its drawing`);
            }
            // A line of text is taller than its letters: a fifth of it may be shared.
            const lower = (it) => it.top + 0.2 * it.height;
            const upper = (it) => it.bottom - 0.2 * it.height;
            boxes.slice(i + 1).filter(([, other]) => box.left < other.right - 0.5 && other.left < box.right - 0.5 &&
                lower(box) < upper(other) && lower(other) < upper(box))
                .forEach(([other]) => wrong.push(`${words} on ${other}`));
        });
    }
    const words = document.createRange();
    for (const cell of document.querySelectorAll('th, td')) {
        words.selectNodeContents(cell);
        const [inner, outer] = [words.getBoundingClientRect(), cell.getBoundingClientRect()];
        if (inner.width > 0 && (inner.right > outer.right + 1 || inner.left < outer.left - 1)) {
            wrong.push(`cell ${cell.textContent}`);
        }
    }
    return wrong;
}

// Left edges of decimal signs, column by column; each list must be one number.
function decimalSigns() {
    const columns = [];
    for (const table of document.querySelectorAll('table')) {
        const width = table.rows[1]?.cells.length ?? 0;
        for (let c = 1; c < width; ++c) {
            const tails = [...table.querySelectorAll('tbody tr')].map((row) => row.cells[c].querySelector('.tail'))
                .filter((tail) => tail?.textContent);
            columns.push(new Set(tails.map((tail) => Math.round(tail.getBoundingClientRect().left))));
        }
    }
    return columns.filter(({ size }) => size > 0).map(({ size }) => size);
}

const names = ({ joints, members }) => [...joints.map(({ id }) => id),
    ...members.map(({ a, b }) => (a.length + b.length > 2 ? `${a}–${b}` : a + b))];

test('on every paper each name of the model is printed, nothing in the margins, and pages are counted', async () => {
    for (const [name, truss] of Object.entries(trusses)) {
        for (const paper of Object.keys(papers)) {
            for (const across of [false, true]) {
                const what = `${name}, ${paper}${across ? ' across' : ''}`;
                const page = await openSheet(sheetOf(truss, ...who, '--address', address, '--paper', paper,
                    ...across ? ['--across'] : []));
                const file = await printed(page);
                const count = pagesOf(file);
                const size = across ? [papers[paper][1], papers[paper][0]] : papers[paper];
                sizesOf(file).forEach((is) => is.forEach((mm, i) => assert.ok(Math.abs(mm - size[i]) < 0.5, `${what}: ${is}`)));
                // The foot; and the caution at the head of the right half, where members are checked.
                const hasCaution = truss.members.some(({ section }) => section);
                picturesOf(file).forEach((picture, i) => assert.deepEqual(inMargins(picture, size, margins,
                    (left, top) => left > margins.side - 1 && left < size[0] - margins.side + 1 &&
                        (top > size[1] - margins.bottom + 2 ||
                            (hasCaution && left > size[0] / 2 && top > 3 && top < margins.top - 2))), [], `${what}, page ${i + 1}`));
                const text = textOf(file);
                assert.equal(text.match(/Preliminary: local codes and a licensed engineer decide/g)?.length ?? 0,
                    hasCaution ? count : 0, what);
                const words = new Set(text.split(/[\s,]+/));
                names(truss).forEach((one) => assert.ok(words.has(one), `${what}: ${one} is missing`));
                text.split('\f').slice(0, count).forEach((of, i) =>
                    assert.match(of.trimEnd(), new RegExp(`Hall 4 · .* · 30 November 2026 +Page ${i + 1} of ${count}$`), what));
                keepPictures(file, `sheet-${name}-${paper}${across ? '-across' : ''}`);
                await page.close();
            }
        }
    }
});

test('a roof of 11 members under three combinations takes at most three pages, on any paper', async () => {
    for (const paper of Object.keys(papers)) {
        for (const across of [[], ['--across']]) {
            const page = await openSheet(sheetOf(roof(), ...who, '--address', address, '--paper', paper, ...across));
            const count = pagesOf(await printed(page));
            assert.ok(count <= 3, `${paper} ${across}: ${count}`);
            await page.close();
        }
    }
});

test('in drawings no words lie on each other, cells hold theirs, and numbers stand below each other', async () => {
    for (const [name, truss] of Object.entries(trusses)) {
        const page = await openSheet(sheetOf(truss, ...who));
        await page.setViewportSize({ width: 680, height: 1000 });
        await page.emulateMedia({ media: 'print' });
        assert.deepEqual(await page.evaluate(crowded), [], name);
        const columns = await page.evaluate(decimalSigns);
        assert.ok(columns.every((places) => places === 1), `${name}: ${columns}`);
        await page.close();
    }
});

test('these checks notice words on each other, a cell that is too small and numbers out of line', async () => {
    const page = await openSheet(sheetOf(roof()));
    await page.evaluate(() => {
        const [first, second] = document.querySelectorAll('figure text');
        ['x', 'y', 'text-anchor'].forEach((name) => second.setAttribute(name, first.getAttribute(name)));
        [...document.querySelectorAll('.tail')].find(({ textContent }) => textContent).style.transform = 'translateX(300px)';
    });
    const wrong = await page.evaluate(crowded);
    assert.ok(wrong.some((one) => / on /.test(one)) && wrong.some((one) => one.startsWith('cell')), wrong.join());
    assert.ok((await page.evaluate(decimalSigns)).some((places) => places > 1));
    await page.close();
});

async function openPanel(truss, size = sizes.desktop) {
    const opened = await openBoard(shared.browser, shared.site.address, size, linkOf(truss));
    const { page } = opened;
    await page.evaluate(() => { globalThis.print = () => { globalThis.wasPrinted = true; }; });
    await page.locator('#skip').evaluate((link) => link.click());
    await page.locator('#print-tables').click();
    await page.locator('#sheet-dialog').waitFor({ state: 'visible' });
    return opened;
}

async function saved(page) {
    const [download] = await Promise.all([page.waitForEvent('download'), page.locator('#sheet-dialog [name=save]').click()]);
    return readFileSync(await download.path(), 'utf8');
}

test('the page writes the same document as the command line, byte for byte', async () => {
    const { page, context } = await openPanel(roof());
    await page.locator('[name=project]').fill('Hall 4');
    await page.locator('[name=author]').fill('A. Smith');
    await page.locator('[name=date]').fill('30 November 2026');
    await page.locator('[name=loads]').selectOption('combination=wind leads');
    await page.locator('[name=paper]').selectOption('Letter across');
    const here = (await page.evaluate(() => location.href)).split('#')[0];
    const asked = [...who, '--address', here, '--paper', 'Letter', '--across', '--combination', 'wind leads'];
    assert.equal(await saved(page), sheetOf(roof(), ...asked));
    for (const part of ['working', 'model']) {
        await page.locator(`[name=${part}]`).click();
    }
    const parts = 'drawing,diagram,cases,forces,displacements,checks,working';
    assert.equal(await saved(page), sheetOf(roof(), ...asked, '--parts', parts));
    await context.close();
});

test('the browser’s own command prints the sheet from the board, under the loads that it shows', async () => {
    const { page, board, context } = await openBoard(shared.browser, shared.site.address, sizes.desktop, linkOf(roof()));
    await board.idle();
    await page.waitForFunction(() => document.getElementById('sheet'));
    const file = await printed(page);
    const text = textOf(file);
    assert.match(text, /Forces and reactions under combination snow leads/);
    names(roof()).forEach((name) => assert.match(text, new RegExp(`\\b${name}\\b`)));
    assert.match(text, new RegExp(`Page ${pagesOf(file)} of ${pagesOf(file)}`));
    keepPictures(file, 'sheet-from-the-board');
    await page.emulateMedia({ media: 'print' });
    const shown = await page.evaluate(() => [...document.body.children]
        .filter((one) => one.getClientRects().length > 0).map(({ id }) => id));
    assert.deepEqual(shown, ['sheet']);
    await context.close();
});

test('the panel counts the pages as they are printed, and keeps who it is for in this browser alone', async () => {
    const { page, context } = await openPanel(roof());
    await page.locator('[name=project]').fill('Hall 4');
    for (const paper of ['A4', 'Letter across']) {
        await page.locator('[name=paper]').selectOption(paper);
        const says = await page.locator('.sheet-pages').textContent();
        const file = await printed(page);
        assert.equal(says, `${pagesOf(file)} pages`, paper);
    }
    await page.locator('#sheet-dialog [name=print]').click();
    await page.waitForFunction(() => globalThis.wasPrinted);
    await page.locator('#sheet-dialog [type=submit]').click();
    assert.doesNotMatch(await page.evaluate(() => location.href), /Hall/);
    await page.reload();
    await page.waitForFunction(() => document.getElementById('sheet'));
    await page.locator('#skip').evaluate((link) => link.click());
    await page.locator('#print-tables').click();
    assert.equal(await page.locator('[name=project]').inputValue(), 'Hall 4');
    await context.close();
});

test('the panel fits a phone, with targets for fingers', async () => {
    for (const [name, size] of Object.entries(sizes)) {
        const { page, context } = await openPanel(roof(), size);
        const wrong = await page.evaluate(() => {
            const dialog = document.getElementById('sheet-dialog');
            const small = [...dialog.querySelectorAll('button, input[type=text], select, label:has([type=checkbox])')]
                .filter((one) => one.getBoundingClientRect().height < 43.5).map((one) => one.textContent || one.name);
            return [...small, ...dialog.scrollWidth > dialog.clientWidth ? ['too wide'] : []];
        });
        assert.deepEqual(wrong, [], name);
        await page.screenshot({ path: path.join(root, `build/screenshots/sheet-panel-${name}.png`) });
        await context.close();
    }
});

test('a sheet says why there is nothing to draw, and no forces', async () => {
    assert.match(sheetOf(emptyBoard), /Nothing is drawn yet/);
    const moves = sheetOf(mechanism());
    assert.match(moves, /would stop it|can move|mechanism/i);
    assert.doesNotMatch(moves, /Forces and reactions under/);
    assert.match(moves, /Supports, dimensions and loads under combination snow leads/);
});

test('the link on a sheet opens its truss; one too long for a code that phones read is said to be', async () => {
    const page = await shared.browser.newPage({ deviceScaleFactor: 4 }); // as finely as it is printed
    await page.setContent(sheetOf(roof(), '--address', address));
    const link = await page.locator('.code a').getAttribute('href');
    assert.ok(link.startsWith(`${address}#m=1.`) && link.endsWith('&combination=snow%20leads'), link);
    const opened = gusset(['open', link]);
    assert.equal(JSON.parse(opened.stdout).title, roof().title);
    await page.locator('.code svg').screenshot({ path: path.join(folder, 'code.png') });
    const code = execFileSync('zbarimg', ['--raw', '-q', path.join(folder, 'code.png')]).toString().trim();
    assert.equal(code, link);
    await page.close();
    const long = sheetOf(bridge(250), '--address', address);
    assert.match(long, /too long for a QR code that phones read/);
    assert.doesNotMatch(long, /class="code">\n<svg/);
});
