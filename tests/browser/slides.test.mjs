// A lesson handed on: slides printed by Chromium and rendered by poppler, pictures, and a step that moves.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { gusset } from '../cli/support.mjs';
import { folder, keepPictures, pagesOf, picturesOf } from './prints.mjs';
import { forPeople, linkOf, root, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();
const cases = 'tests/published/cases';
const bridge = 'site/examples/footbridge.json';
const examples = JSON.parse(readFileSync(path.join(root, 'site/examples/index.json'), 'utf8'))
    .examples.map(({ file }) => `site/examples/${file}`);
const derivations = {
    forces: [bridge],
    'one member': [bridge, '--member', 'D-F'],
    section: [bridge, '--section', 'B-D,C-D,C-E'],
    polygon: [bridge, '--polygon'],
    displacement: [`${cases}/DF-01.json`, '--displacement', 'C:y'],
    'force method': [`${cases}/IN-05.json`],
    influence: [`${cases}/IL-02.json`, '--influence', 'member:C-G', '--path', 'A,B,C,D,E'],
    mechanism: ['site/examples/missing_diagonal.json'],
};
const forms = {
    wide: { words: [], shape: [1600, 900] },
    narrow: { words: ['--shape', '4:3'], shape: [1200, 900] },
    'wide with words': { words: ['--with-words'], shape: [1600, 900] },
    'narrow steps with words': { words: ['--shape', '4:3', '--by-step', '--with-words'], shape: [1200, 900] },
    'wide steps': { words: ['--by-step', '--hide-values'], shape: [1600, 900] },
};

function slidesOf(asked, words = []) {
    const { status, stdout, stderr } = gusset(['lesson', ...asked, ...words]);
    assert.ok(status === 0 || status === 1, stderr);
    return stdout;
}

async function openDocument(html) {
    const page = await shared.browser.newPage();
    await page.setContent(html);
    await page.emulateMedia({ media: 'print' });
    return page;
}

async function printed(page) {
    const file = path.join(folder, 'slides.pdf');
    await page.pdf({ path: file, preferCSSPageSize: true, printBackground: true });
    return file;
}

// One slide a stroke, or a step: tests/engine/report/lesson/lesson_test.
const countOf = (html) => html.split('<section class="slide">').length - 1;

// CSS px of every page.
function sizesOf(file) {
    const pages = execFileSync('pdfinfo', ['-l', '-1', file]).toString();
    return [...pages.matchAll(/^Page +\d+ size: +([\d.]+) x ([\d.]+) pts/gm)].map(([, ...sides]) =>
        sides.map((side) => Math.round(Number(side) * 96 / 72)));
}

// Fonts, each with whether it is embedded.
function fontsOf(file) {
    const [, , ...lines] = execFileSync('pdffonts', [file]).toString().trimEnd().split('\n');
    return lines.map((line) => ({ line, isEmbedded: /\byes +(?:yes|no) +(?:yes|no) +\d+ +\d+$/.test(line) }));
}

// What stands beyond its slide or the page, in the width that the page has on paper.
async function clippedIn(page, html, [width]) {
    const high = Number(html.match(/@page \{ size: \d+px (\d+)px/)[1]);
    await page.setViewportSize({ width, height: high });
    return page.evaluate((pageHigh) => [...document.querySelectorAll('.slide')].flatMap((slide, i) => {
        const outer = slide.getBoundingClientRect();
        const svg = slide.querySelector('svg').getBoundingClientRect();
        const faults = outer.height > pageHigh + 0.5 ? [`slide ${i + 1} is ${outer.height} high`] : [];
        for (const each of slide.querySelectorAll('text, path, circle, polygon, p')) {
            const box = each.getBoundingClientRect();
            const inside = each.tagName === 'P' ? outer : svg;
            if (box.left < inside.left - 0.5 || box.right > inside.right + 0.5 || box.top < inside.top - 0.5 ||
                box.bottom > inside.bottom + 0.5) {
                faults.push(`slide ${i + 1}: ${each.outerHTML.slice(0, 80)}`);
            }
        }
        return faults;
    }), high);
}

// The share of a picture that is inked, and whether anything is on its edge.
function inkOf(picture) {
    let inked = 0;
    let atEdge = 0;
    for (let y = 0; y < picture.height; ++y) {
        for (let x = 0; x < picture.width; ++x) {
            const isInk = picture.at(x, y) < 200;
            inked += isInk ? 1 : 0;
            atEdge += isInk && (x < 2 || y < 2 || x >= picture.width - 2 || y >= picture.height - 2) ? 1 : 0;
        }
    }
    return { share: inked / (picture.width * picture.height), atEdge };
}

for (const [name, { words, shape }] of Object.entries(forms)) {
    test(`slides ${name}: a page each, of one size, with its fonts, nothing cut off and none empty`, async () => {
        for (const [derivation, asked] of Object.entries(derivations)) {
            const html = slidesOf(asked, words);
            const page = await openDocument(html);
            assert.deepEqual(await clippedIn(page, html, shape), [], `${derivation}, ${name}`);
            const file = await printed(page);
            assert.equal(pagesOf(file), countOf(html), `${derivation}, ${name}`);
            const high = Number(html.match(/@page \{ size: \d+px (\d+)px/)[1]);
            assert.ok(words.includes('--with-words') ? high > shape[1] : high === shape[1]);
            for (const size of sizesOf(file)) {
                assert.deepEqual(size, [shape[0], high], `${derivation}, ${name}`);
            }
            const fonts = fontsOf(file);
            assert.ok(fonts.length > 0);
            assert.deepEqual(fonts.filter(({ isEmbedded }) => !isEmbedded), []);
            picturesOf(file, 30).forEach((picture, i) => {
                const { share, atEdge } = inkOf(picture);
                assert.ok(share > 0.001, `${derivation}, ${name}: page ${i + 1} is empty`);
                assert.equal(atEdge, 0, `${derivation}, ${name}: page ${i + 1}`);
            });
            if (words.includes('--by-step')) { // to look at: the other forms are as many pages again, of the same
                keepPictures(file, `slides ${derivation} ${name}`);
            }
            await page.close();
        }
    });
}

test('slides of every example keep to their pages, with words and without', async () => {
    for (const example of examples) {
        for (const { words, shape } of [forms['wide with words'], forms['narrow steps with words']]) {
            const html = slidesOf([example], words);
            const page = await openDocument(html);
            assert.deepEqual(await clippedIn(page, html, shape), [], `${example} ${words.join(' ')}`);
            await page.close();
        }
    }
});

async function arrive(model = JSON.parse(readFileSync(path.join(root, bridge), 'utf8')), options = {}) {
    const context = await shared.browser.newContext({ ...sizes.desktop, ...options });
    context.setDefaultTimeout(Number(process.env.PATIENCE ?? 10000));
    await context.addInitScript(() => { window.print = () => { parent.printed = document.documentElement.outerHTML; }; });
    const page = await context.newPage();
    page.on('pageerror', (error) => { throw error; });
    page.on('console', (message) => { assert.notEqual(message.type(), 'error', message.text()); });
    await page.goto(`${shared.site.address}lesson/${linkOf(model)}`);
    await page.locator('#picture svg').waitFor();
    await page.locator('#more-open').click();
    return { page, context };
}

async function saved(page, press) {
    const [download] = await Promise.all([page.waitForEvent('download'), press()]);
    const file = path.join(folder, download.suggestedFilename());
    await download.saveAs(file);
    return file;
}

// Name → bytes, by a reader that is not ours.
function unpacked(file) {
    const script = 'import sys, zipfile, json, base64\nz = zipfile.ZipFile(sys.argv[1])\nassert z.testzip() is None\n' +
        'print(json.dumps([[n, base64.b64encode(z.read(n)).decode()] for n in z.namelist()]))';
    return new Map(JSON.parse(execFileSync('python3', ['-c', script, file], { maxBuffer: 1e9 }))
        .map(([name, base64]) => [name, Buffer.from(base64, 'base64')]));
}

test('the page prints and saves the slides that the command line writes', async () => {
    const { page, context } = await arrive();
    await page.getByLabel('Shape').selectOption('4:3');
    await page.getByLabel('A page for each').selectOption('step');
    await page.getByLabel('what is said below').check();
    const file = await saved(page, () => page.getByRole('button', { name: 'Save them as a file' }).click());
    assert.equal(readFileSync(file, 'utf8'), slidesOf([bridge], ['--shape', '4:3', '--by-step', '--with-words']));
    await page.getByRole('button', { name: 'Print the slides' }).click();
    await page.waitForFunction(() => window.printed !== undefined);
    const frame = page.frames().find((each) => each.parentFrame() !== null);
    // Its style applies: the policy of the page, which the frame inherits, would otherwise refuse it.
    assert.equal(await frame.evaluate(() => getComputedStyle(document.querySelector('.slide')).breakAfter), 'page');
    assert.equal(await frame.evaluate(() => document.styleSheets.length), 2);
    await context.close();
});

test('the slides are saved as numbered PNG and SVG files, and a step as a drawing that moves', async () => {
    const { page, context } = await arrive();
    const count = countOf(slidesOf([bridge]));
    const names = (ending) => Array.from({ length: count }, (_, i) => `${String(i + 1).padStart(4, '0')}.${ending}`);
    const svgs = unpacked(await saved(page, () => page.getByRole('button', { name: 'Save them as SVG files' }).click()));
    assert.deepEqual([...svgs.keys()], names('svg'));
    const html = slidesOf([bridge]);
    for (const svg of svgs.values()) {
        assert.ok(html.includes(svg.toString()));
    }
    await page.getByLabel('A page for each').selectOption('step');
    await page.getByLabel('Shape').selectOption('4:3');
    const pngs = unpacked(await saved(page, () => page.getByRole('button', { name: 'Save the slides as PNG files' }).click()));
    const steps = countOf(slidesOf([bridge], ['--by-step']));
    assert.deepEqual([...pngs.keys()], names('png').slice(0, steps));
    for (const [name, png] of pngs) {
        assert.equal(png.toString('latin1', 1, 4), 'PNG');
        assert.deepEqual([png.readUInt32BE(16), png.readUInt32BE(20)], [1440, 1080], `${name} (PNG, W3C, §11.2.2)`);
    }
    // White paper with something drawn on it.
    const painted = await page.evaluate(async (base64) => {
        const image = new Image();
        image.src = `data:image/png;base64,${base64}`;
        await image.decode();
        const canvas = Object.assign(document.createElement('canvas'), { width: image.width, height: image.height });
        const paint = canvas.getContext('2d');
        paint.drawImage(image, 0, 0);
        const { data } = paint.getImageData(0, 0, image.width, image.height);
        let dark = 0;
        for (let i = 0; i < data.length; i += 4) {
            dark += data[i] < 128 ? 1 : 0;
        }
        return { corner: [...data.slice(0, 4)], dark };
    }, pngs.get('0004.png').toString('base64'));
    assert.deepEqual(painted.corner, [255, 255, 255, 255]);
    assert.ok(painted.dark > 2000);
    await screenshot(page, 'lesson-handed-on');
    await context.close();
});

test('a step that moves shows stroke after stroke and stays at its end; still for those who want no motion', async () => {
    const { page: lesson, context } = await arrive();
    await lesson.keyboard.press('Escape');
    while (!(await lesson.locator('#where').textContent()).endsWith(': Joint A, ΣF_y')) {
        await lesson.keyboard.press('ArrowRight');
    }
    await lesson.locator('#more-open').click();
    const file = await saved(lesson, () => lesson.getByRole('button', { name: 'Save this step as a moving SVG' }).click());
    await context.close();
    const visible = (page) => page.evaluate(() =>
        [...document.querySelectorAll('g')].map((each) => getComputedStyle(each).visibility === 'visible'));
    const page = await shared.browser.newPage();
    await page.goto(`file://${file}`);
    const count = (await visible(page)).length;
    assert.ok(count >= 2);
    const alone = (i) => Array.from({ length: count }, (_, k) => k === i);
    // Each frame is seen from its own time on, and one at a time.
    const times = [...readFileSync(file, 'utf8').matchAll(/@keyframes frame\d+\{(?:0%\{visibility:hidden\})?([\d.]+)%/g)]
        .map(([, percent]) => Number(percent));
    assert.equal(times.length, count);
    for (let i = 0; i < count; ++i) {
        await page.evaluate((share) => document.getAnimations().forEach((each) => {
            each.pause();
            each.currentTime = (share / 100) * each.effect.getComputedTiming().duration;
        }), (times[i] + (times[i + 1] ?? 100)) / 2);
        assert.deepEqual(await visible(page), alone(i), `frame ${i + 1} of ${count}`);
    }
    await page.evaluate(() => document.getAnimations().forEach((each) => each.finish()));
    assert.deepEqual(await visible(page), alone(count - 1));
    await page.emulateMedia({ reducedMotion: 'reduce' });
    assert.equal(await page.evaluate(() => document.getAnimations().length), 0);
    assert.deepEqual(await visible(page), alone(count - 1));
    await page.close();
});

test('pictures for the manual: the stage with the pen, the plan, the speaker’s window, a slide with its words', forPeople, async () => {
    const context = await shared.browser.newContext({ ...sizes.desktop, viewport: { width: 1366, height: 768 } });
    context.setDefaultTimeout(Number(process.env.PATIENCE ?? 10000));
    const page = await context.newPage();
    await page.goto(`${shared.site.address}lesson/${linkOf(JSON.parse(readFileSync(path.join(root, bridge), 'utf8')))}`);
    await page.locator('#picture svg').waitFor();
    await page.locator('#contents-open').click();
    await page.locator('#contents button', { hasText: /^Joint A, ΣF_y$/ }).click();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('p');
    const answer = await page.locator('#picture text').last().boundingBox();
    const middle = answer.y + 1.6 * answer.height;
    await page.mouse.move(answer.x, middle);
    await page.mouse.down();
    await page.mouse.move(answer.x + answer.width, middle - 4, { steps: 12 });
    await page.mouse.up();
    await page.keyboard.press('p');
    await screenshot(page, 'help-lesson');
    await page.locator('#more-open').click();
    const opened = context.waitForEvent('page');
    await page.getByRole('button', { name: 'Speaker’s window' }).click();
    const speaker = await opened;
    await speaker.setViewportSize({ width: 520, height: 640 });
    await speaker.locator('#all:not([hidden])').waitFor();
    await screenshot(speaker, 'help-lesson-speaker');
    await page.locator('#handed-on').scrollIntoViewIfNeeded();
    await screenshot(page, 'help-lesson-more');
    await context.close();
    const html = slidesOf([bridge], ['--by-step', '--with-words']);
    const document = await shared.browser.newPage({ viewport: { width: 1300, height: 800 } });
    await document.setContent(html);
    await document.locator('.slide', { has: document.locator('title', { hasText: /^Joint C, ΣF_y$/ }) }).screenshot(
        { path: path.join(root, 'build/screenshots/help-lesson-slide.png') });
    await document.close();
});
