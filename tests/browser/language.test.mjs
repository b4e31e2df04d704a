// The page in a language made up for it: each Latin letter of a sentence becomes a Cyrillic one. What is left in
// Latin letters is a name, a symbol, a unit, or a word that is not among the sentences that can be translated. The
// keys of fields, which are not shown, are left out.
import assert from 'node:assert/strict';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { after, before, test } from 'node:test';
import path from 'node:path';
import { sentences } from '../../site/languages/sentences.mjs';
import { boardOf } from './board.mjs';
import { linkOf, linkTo, openPage, root, screenshot, serve, siteAndBrowser, sizes } from './support.mjs';
import { siteWith } from './upload.mjs';

const shared = siteAndBrowser();
let copy;
let site;

const cyrillic = (letter) =>
    String.fromCodePoint((letter < 'a' ? 0x410 : 0x430) + (letter.toLowerCase().codePointAt(0) - 97));
const spoken = (english) => english.replace(/\{\w+\}|[A-Za-z]/g, (piece) =>
    (piece.length > 1 ? piece : cyrillic(piece)));

before(async () => {
    copy = siteWith();
    mkdirSync(path.join(copy.folder, 'languages'));
    const table = Object.fromEntries(sentences().map((english) => [english, spoken(english)]));
    writeFileSync(path.join(copy.folder, 'languages/xx.json'), JSON.stringify(table));
    writeFileSync(path.join(copy.folder, 'languages/xy.json'), '{"Undo: {step}": "{schritt}"}');
    site = await serve(copy.folder);
});
after(() => {
    site?.stop();
    copy?.remove();
});

// The same in every language: units and functions. Names of the board are added.
const signs = ['kN', 'mm', 'MPa', 'GPa', 'cm', 'sin', 'cos', 'tan', 'QR', 'SVG', 'PNG', 'CSV', 'Ctrl', 'Escape', 'Tab'];

function englishIn(text, model) {
    const names = JSON.stringify(model).match(/[A-Za-z]+/g);
    const known = new Set([...signs, ...names]);
    return (text.match(/[A-Za-z]{3,}/g) ?? []).filter((word) => !known.has(word) && /[a-z]/.test(word));
}

async function open(size, language) {
    const opened = await openPage(shared.browser, site.address, size);
    await opened.page.goto(`${site.address}?test&language=${language}${linkTo('footbridge.json')}`);
    return { ...opened, board: await boardOf(opened.page, size) };
}

for (const [name, size] of Object.entries(sizes)) {
    test(`on a ${name} buttons, tabs and tables of a page in another language have no English word`, async () => {
        const { page, context, board, errors } = await open(size, 'xx');
        assert.equal(await page.locator('html').getAttribute('lang'), 'xx');
        const { model } = await board.observe();
        const found = {};
        const look = async (where) => {
            const { items } = await board.observe();
            const windows = new Set(items.map(({ window }) => window));
            const isKey = (label) => /^[a-z]+(\.\w+)*$/.test(label) || /^notebook (width|height)$/.test(label);
            const labels = items.map(({ label }) => label)
                .filter((label) => !windows.has(label) && !isKey(label))
                .map((label) => label.split('##')[0]);
            found[where] = [...new Set(labels.flatMap((label) => englishIn(label, model)))];
            await screenshot(page, `language-${name}-${where}`);
        };
        await look('board');
        for (const tab of ['Model', 'Results', 'Share', 'Working']) { // the last has the whole page of a phone
            await board.press(spoken(tab));
            await look(tab);
        }
        found.tables = englishIn(await page.locator('#tables-content').textContent(), model);
        assert.deepEqual(Object.entries(found).filter(([, words]) => words.length > 0), []);
        assert.deepEqual(errors, []);
        await context.close();
    });
}

test('a language that can not be read leaves the page in English, which it says', async () => {
    const { page, context, board } = await open(sizes.desktop, 'xy');
    assert.match((await board.observe()).message, /could not be read.*Undo: \{step\}/);
    assert.ok(await board.has('Working'));
    await context.close();
});

test('a language that is not there leaves the page in English', async () => {
    for (const name of ['zz', '../examples/footbridge', 'x'.repeat(40)]) {
        const { context, board } = await open(sizes.desktop, encodeURIComponent(name));
        assert.ok(await board.has('Working'));
        await context.close();
    }
});

test('a lesson says and draws no English word, and is read by a voice of its language', async () => {
    const model = JSON.parse(readFileSync(path.join(root, 'site/examples/footbridge.json'), 'utf8'));
    model.lesson = { shows: [{ of: 'forces', pauses: [{ before: 'joint A', asks: ['A', 'B'] }] }, 'polygon'] };
    const { page, context, errors } = await openPage(shared.browser, site.address);
    await page.goto(`${site.address}lesson/?language=xx${linkOf(model)}`);
    await page.locator('#picture svg').waitFor();
    assert.equal(await page.locator('html').getAttribute('lang'), 'xx');
    const count = Number((await page.locator('#where').textContent()).match(/ of (\d+)/)[1]);
    const found = new Set();
    for (let i = 1; i <= count; ++i) {
        await page.locator('#where', { hasText: new RegExp(`^${i} of `) }).waitFor();
        const texts = await page.evaluate(() => [
            ...[...document.querySelectorAll('#picture text, #picture title')].map(({ textContent }) => textContent),
            document.getElementById('where').textContent.replace(/^\d+ of \d+: /, ''),
            document.getElementById('spoken').textContent, document.getElementById('pause-question').textContent]);
        texts.flatMap((text) => englishIn(text, model)).forEach((word) => found.add(word));
        await page.evaluate(() => document.getElementById('pause').hidden || document.getElementById('pause-aloud').click());
        if (await page.locator('#where', { hasText: new RegExp(`^${i} of `) }).count() > 0) {
            await page.keyboard.press('ArrowRight');
        }
    }
    assert.deepEqual([...found], []);
    await screenshot(page, 'language-lesson');
    assert.deepEqual(errors, []);
    await context.close();
});
