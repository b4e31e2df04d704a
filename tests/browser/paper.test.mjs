// Workings as documents on paper: printed by Chromium on A4 and Letter, rendered by poppler, and judged by what can be
// seen: nothing in the margins, no figure on another page than its heading, few pages. The pages are left in
// build/screenshots.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { after, before, test } from 'node:test';
import { answered, gusset } from '../cli/support.mjs';
import { folder, inMargins, keepPictures, pagesOf, papers, picturesOf, whereWords } from './prints.mjs';
import { launch, root } from './support.mjs';

const margins = { top: 16, side: 15, bottom: 18 }; // mm, as paper.css has them
const examples = JSON.parse(readFileSync(path.join(root, 'site/examples/index.json'), 'utf8'))
    .examples.map(({ file }) => file);
const cases = 'tests/published/cases';

const modelOf = (example) => JSON.parse(readFileSync(path.join(root, 'site/examples', example), 'utf8'));

function withClass(example, settings) {
    const model = modelOf(example);
    model.class = { ...model.class, ...settings };
    return model;
}

// Joints that are called 1, 2, 3 …
function numbered(example) {
    const model = modelOf(example);
    const number = new Map(model.joints.map(({ id }, i) => [id, String(i + 1)]));
    const rename = (thing, ...keys) => keys.forEach((key) => { thing[key] = number.get(thing[key]) ?? thing[key]; });
    model.joints.forEach((joint) => rename(joint, 'id'));
    model.members.forEach((member) => rename(member, 'a', 'b'));
    [...model.supports, ...model.loads].forEach((thing) => rename(thing, 'joint'));
    for (const { chord, path: way } of [...model.loads, ...model.moving ?? []]) {
        (chord ?? way)?.forEach((_, i, list) => rename(list, i));
    }
    return model;
}

// Name → what `working` is asked, or a model for its standard input.
const documents = {
    ...Object.fromEntries(examples.map((file) => [path.basename(file, '.json'), [`site/examples/${file}`]])),
    'one member': ['site/examples/siding_bridge.json', '--member', 'A-B'],
    'moment centre off the truss': [`${cases}/KC-01.json`, '--member', 'D-E'],
    polygon: ['site/examples/footbridge.json', '--polygon'],
    influence: [`${cases}/IL-02.json`, '--influence', 'member:C-G', '--path', 'A,B,C,D,E'],
    'unit load': [`${cases}/DF-01.json`, '--displacement', 'C:y'],
    'two redundants': [`${cases}/IN-08.json`],
    exact: withClass('cottage_roof.json', { numbers: { form: 'exact', digits: 3 } }),
    slopes: withClass('garage_roof.json', { angles: 'slopes' }),
    cosines: withClass('pavilion_roof.json', { angles: 'cosines' }),
    'numbered joints': numbered('farm_bridge.json'),
};

function htmlOf(asked) {
    const { status, stdout, stderr } = Array.isArray(asked) ? gusset(['working', ...asked, '--html'])
        : gusset(['working', '-', '--html'], JSON.stringify(asked));
    assert.ok(status === 0 || status === 1, `${JSON.stringify(asked)}: ${stderr}`);
    return stdout;
}

let browser;
before(async () => { browser = await launch(); });
after(() => browser?.close());

async function openDocument(html, options = {}) {
    const page = await browser.newPage(options);
    await page.setContent(html);
    await page.evaluate(() => document.fonts.ready);
    return page;
}

// A word of a letter's height in each section that has a figure, and in the figure: where these are printed is where
// the heading and the figure are.
function markFigures() {
    let count = 0;
    for (const section of document.querySelectorAll('section')) {
        const [heading, drawing] = [section.querySelector('h3'), section.querySelector('svg')];
        if (!heading || !drawing) {
            continue;
        }
        const word = document.createElement('span');
        word.style.fontSize = '1px';
        word.textContent = ` heading${count}`;
        heading.append(word);
        const text = document.createElementNS('http://www.w3.org/2000/svg', 'text');
        text.setAttribute('font-size', '1');
        text.setAttribute('x', '4');
        text.setAttribute('y', '4');
        text.textContent = `figure${count}`;
        drawing.append(text);
        ++count;
    }
    return count;
}

// Whether anything does not fit between the margins: Chromium would cut it off on the left, and print the whole
// document smaller for what is too wide.
async function isTooWide(page, paper) {
    const width = Math.floor((papers[paper][0] - 2 * margins.side) * 96 / 25.4);
    await page.emulateMedia({ media: 'print' });
    await page.setViewportSize({ width, height: 1000 });
    return page.evaluate(() => document.scrollingElement.scrollWidth > innerWidth ||
        [...document.body.querySelectorAll('*')].some((it) => it.getBoundingClientRect().left < -0.5));
}

async function printed(page, paper) {
    const file = path.join(folder, 'printed.pdf');
    await page.pdf({ path: file, format: paper });
    return file;
}

// In a margin, apart from the number of the page, in the middle at the bottom.
function notNumbers(picture, paper) {
    const [width, height] = papers[paper];
    return inMargins(picture, papers[paper], margins, (left, top) =>
        top > height - margins.bottom + 2 && Math.abs(left - width / 2) < 15);
}

test('every kind of working keeps to the paper, and its figures to their headings', async () => {
    let figures = 0;
    const sheets = Object.keys(papers);
    for (const [at, [name, asked]] of Object.entries(documents).entries()) {
        const page = await openDocument(htmlOf(asked));
        const count = await page.evaluate(markFigures);
        for (const paper of sheets) {
            assert.equal(await isTooWide(page, paper), false, `${name}, ${paper}`);
        }
        const paper = sheets[at % sheets.length]; // printing takes seconds: each kind on one of them
        const file = await printed(page, paper);
        picturesOf(file).forEach((picture, i) =>
            assert.deepEqual(notNumbers(picture, paper), [], `${name}, ${paper}, page ${i + 1}`));
        const where = whereWords(file);
        for (let i = 0; i < count; ++i) {
            assert.deepEqual(where.get(`figure${i}`), where.get(`heading${i}`), `${name}, ${paper}, figure ${i}`);
            assert.equal(where.get(`figure${i}`).length, 1);
        }
        keepPictures(file, `paper-${name}-${paper}`);
        figures += count;
        await page.close();
    }
    assert.ok(Object.keys(documents).length >= 20 && figures > 80);
});

test('a truss of 11 members takes at most four pages', async () => {
    let seen = 0;
    for (const file of examples.filter((it) => modelOf(it).members.length === 11)) {
        const page = await openDocument(answered(['working', `site/examples/${file}`, '--html']));
        for (const paper of Object.keys(papers)) {
            assert.ok(pagesOf(await printed(page, paper)) <= 4, `${file}, ${paper}`);
        }
        await page.close();
        ++seen;
    }
    assert.ok(seen >= 2);
});

test('each page has its number, of how many there are', async () => {
    const page = await openDocument(htmlOf(documents.footbridge));
    const file = await printed(page, 'A4');
    const count = pagesOf(file);
    const text = execFileSync('pdftotext', ['-layout', file, '-']).toString().split('\f');
    for (let i = 0; i < count; ++i) {
        assert.match(text[i], new RegExp(`\\n +${i + 1} / ${count}\\s*$`));
    }
    await page.close();
});

test('these checks notice what is in a margin, and a figure on another page than its heading', async () => {
    const html = htmlOf(documents.footbridge);
    const wide = await openDocument(html.replace('</h1>', `</h1><p style="white-space: nowrap">${'long '.repeat(60)}</p>`));
    assert.equal(await isTooWide(wide, 'A4'), true);
    await wide.close();
    const clipped = await openDocument(html.replace('</h1>', '</h1><p style="margin-left: -20px">clipped</p>'));
    assert.equal(await isTooWide(clipped, 'A4'), true);
    await clipped.close();
    const outside = await openDocument(html.replace('margin: 16mm 15mm 18mm', 'margin: 16mm 12mm 18mm'));
    assert.ok(notNumbers(picturesOf(await printed(outside, 'A4'))[0], 'A4').length > 0);
    await outside.close();
    const apart = await openDocument(html.replace(/(<h3>Joint A<\/h3>)/, '$1<div style="break-after: page"></div>'));
    const count = await apart.evaluate(markFigures);
    const where = whereWords(await printed(apart, 'A4'));
    const pairs = Array.from({ length: count }, (_, i) => [where.get(`figure${i}`)?.[0], where.get(`heading${i}`)?.[0]]);
    assert.ok(pairs.some(([figure, heading]) => figure !== heading));
    await apart.close();
});

test('on a narrow screen equations break at their operators, and go on where they began', async () => {
    const page = await openDocument(htmlOf(documents.siding_bridge), { viewport: { width: 390, height: 844 } });
    const seen = await page.evaluate(() => {
        const lines = [];
        for (const formula of document.querySelectorAll('.formula > span')) {
            const parts = [...formula.children].map((it) => ({ ...it.getBoundingClientRect().toJSON(), text: it.textContent }));
            const firsts = parts.map((it, i) => ({ ...it, before: parts[i - 1]?.text.slice(-1), back: i > 0 && it.left < parts[i - 1].left }))
                .filter((it) => it.back);
            lines.push({ left: parts[0].left, right: Math.max(...parts.map((it) => it.right)), firsts });
        }
        return { wide: document.scrollingElement.scrollWidth, lines, font: [...document.fonts].map((it) => it.status) };
    });
    assert.deepEqual(seen.font, ['loaded']);
    assert.ok(seen.wide <= 390);
    let broken = 0;
    for (const { left, right, firsts } of seen.lines) {
        assert.ok(right <= 390);
        for (const first of firsts) {
            assert.ok(Math.abs(first.left - left) < 1, `${first.text} begins at ${first.left}, not ${left}`);
            assert.match(first.before + first.text, /^(?:,|.[+−=≈])/);
            ++broken;
        }
    }
    assert.ok(broken > 5);
    await page.close();
});

test('a number stays with its sign and its unit', async () => {
    const page = await openDocument(htmlOf(documents.exact), { viewport: { width: 200, height: 800 } });
    const apart = await page.evaluate(() => {
        const found = [];
        for (const paragraph of document.querySelectorAll('p')) {
            const walker = document.createTreeWalker(paragraph, NodeFilter.SHOW_TEXT);
            for (let node = walker.nextNode(); node; node = walker.nextNode()) {
                for (const pair of node.data.matchAll(/\d\s?(?:kN|m)\b|[=≈]\s[−\d]/g)) {
                    const range = document.createRange();
                    range.setStart(node, pair.index);
                    range.setEnd(node, pair.index + pair[0].length);
                    if (range.getClientRects().length > 1) {
                        found.push(pair[0]);
                    }
                }
            }
        }
        return found;
    });
    assert.deepEqual(apart, []);
    await page.close();
});
