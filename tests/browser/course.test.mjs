// The instructor's page: a question that is set, varied, handed out on paper and to platforms, and marked.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { boardOf, openBoard } from './board.mjs';
import { gusset } from '../cli/support.mjs';
import { faultsByAxe, tooSmall } from './judged.mjs';
import { forPeople, linkOf, linkTo, root, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();
const bridge = JSON.parse(readFileSync(path.join(root, 'site/examples/footbridge.json'), 'utf8'));
const asking = (exercise) => linkOf({ ...bridge, exercise });

// A context with a page of the course, once it has opened what the address says.
async function arrive(size, fragment = '', options = {}) {
    const context = await shared.browser.newContext({ ...size, ...options });
    context.setDefaultTimeout(Number(process.env.PATIENCE ?? 10000));
    const page = await context.newPage();
    page.on('pageerror', (error) => { throw error; });
    await page.goto(`${shared.site.address}course/${fragment}`);
    await page.locator('html[data-ready]').waitFor();
    return { page, context };
}

const faults = (page) => faultsByAxe(page, { withFrames: false });
const part = (page, name) => page.getByRole('navigation').getByRole('button', { name, exact: true }).click();
const press = (page, name) => page.getByRole('button', { name, exact: true }).click();

async function downloaded(page, work) {
    const saved = page.waitForEvent('download');
    await work();
    const download = await saved;
    return { name: download.suggestedFilename(), content: readFileSync(await download.path()) };
}

async function linkMade(page) {
    await press(page, 'Make the link');
    await page.locator('#made:not([hidden])').waitFor();
    return page.getByRole('link', { name: 'as a student sees it' }).getAttribute('href');
}

// What a student hands in who opens this link on a phone and writes these answers: [of, size, sense].
async function handIn(link, answers) {
    const context = await shared.browser.newContext(sizes.phone);
    const page = await context.newPage();
    await page.goto(link);
    await page.locator('#work:not([hidden])').waitFor();
    for (const [of, size, sense] of answers) {
        const row = page.locator(`.answer[data-of="${of}"]`);
        await row.getByLabel('size').fill(size);
        await row.getByLabel(sense, { exact: true }).tap();
    }
    await page.getByRole('button', { name: 'Review and hand in' }).tap();
    const { content } = await downloaded(page, () => page.getByRole('button', { name: 'Save them as a file' }).tap());
    await context.close();
    return content.toString();
}

test('an instructor asks three things on a laptop, students hand in, and the instructor marks', async () => {
    const { page, context } = await arrive(sizes.desktop, linkTo('footbridge.json'));
    await page.getByLabel('Which members carry nothing', { exact: true }).check();
    await page.getByLabel('Members, if not all of them').fill('A-C, CE; ED');
    await press(page, 'Make the link');
    await page.locator('#setting-says', { hasText: 'no member ED' }).waitFor();
    await page.getByLabel('Members, if not all of them').fill('A-C, BA');
    await press(page, 'Make the link');
    await page.locator('#setting-says', { hasText: 'no member BA' }).waitFor();
    await page.getByLabel('Members, if not all of them').fill('A-C, AB');
    await page.getByLabel('Marks for: The reactions').fill('6');
    await page.getByLabel('What you want to say (optional)').fill('Take the joints in any order.');
    const link = await linkMade(page);
    assert.match(link, /\/exercise\/#x=1\./);
    await screenshot(page, 'course-asking-desktop');
    assert.deepEqual(await faults(page), []);

    // Right: A_y = H_y = 3 · 24 / 2 = 36, AB = 36 · 4/3 = 48. The first turns A_y round, and AB and AC follow from that.
    const turned = await handIn(link, [['A:x', '0', 'zero'], ['A:y', '36', 'down'], ['H:y', '36', 'up'],
        ['A-C', '60', 'tension'], ['A-B', '48', 'compression']]);
    const right = await handIn(link, [['A:x', '0', 'zero'], ['A:y', '36', 'up'], ['H:y', '36', 'up'],
        ['A-C', '60', 'compression'], ['A-B', '48', 'tension']]);
    // Upright at A: 0.6 AC = −36, so that AC = 60; with 0.8 it is 45, and AB = 0.8 · 45 follows.
    const crossed = await handIn(link, [['A:x', '0', 'zero'], ['A:y', '36', 'up'], ['H:y', '36', 'up'],
        ['A-C', '45', 'compression'], ['A-B', '36', 'tension']]);
    await part(page, 'Mark');
    await page.getByLabel('Files that were handed in').setInputFiles([
        { name: 'one.json', mimeType: 'application/json', buffer: Buffer.from(turned) },
        { name: 'two.json', mimeType: 'application/json', buffer: Buffer.from(right) },
        { name: 'three.json', mimeType: 'application/json', buffer: Buffer.from(crossed) }]);
    await page.locator('#mark-says', { hasText: '3 files' }).waitFor();
    await press(page, 'Mark it');
    await page.locator('#mark-says', { hasText: '3 sheets are marked.' }).waitFor();
    const { code } = JSON.parse(turned);
    await press(page, code);
    await page.locator('#feedback', { hasText: 'a reaction turned round' }).waitFor();
    assert.match(await page.locator('#slips').innerText(), /a reaction turned round\s+1/);
    await screenshot(page, 'course-marking-desktop');
    await press(page, JSON.parse(crossed).code);
    await page.locator('.slip h4', { hasText: 'A-C: sine for cosine' }).waitFor();
    const body = page.locator('.slip svg');
    assert.match(await body.locator('title').textContent(), /^Joint A/);
    // The upright sum at A, in the student's own values: it holds A_y, and AB not.
    assert.deepEqual((await body.locator('text').allTextContents()).filter((words) => words.includes(': ')).sort(),
        ['A-C: 45', 'A:y: 36']);
    assert.ok(await page.locator('.slip math').count() > 0, 'and the sum with them');
    await page.locator('#sheet').scrollIntoViewIfNeeded();
    await screenshot(page, 'course-slip-desktop');
    assert.deepEqual(await faults(page), []);
    const { name, content } = await downloaded(page, () => press(page, 'Save as CSV'));
    assert.equal(name, 'marks.csv');
    assert.match(content.toString(), new RegExp(`^${code},`, 'm'));
    await page.getByText('How marks are given').click();
    await page.getByText('A slip loses marks once').waitFor();
    await context.close();
});

test('members are picked by tapping them in the drawing, and dropped likewise', async () => {
    const { page, context } = await arrive(sizes.phone, linkTo('footbridge.json'));
    const field = page.getByLabel('Members, if not all of them');
    // At the middle of the member, as a thumb does: nothing lies over it.
    const tap = async (of) => {
        const { x, y, width, height } = await page.locator(`#figure .member[data-of="${of}"]`).boundingBox();
        await page.touchscreen.tap(x + width / 2, y + height / 2);
    };
    await tap('A-C');
    await page.locator('#figure-says', { hasText: 'AC is asked for.' }).waitFor();
    await tap('D-E');
    assert.equal(await field.inputValue(), 'A-C, D-E');
    assert.equal(await page.locator('.member.is-asked').count(), 2);
    await tap('A-C');
    assert.equal(await field.inputValue(), 'D-E');
    await screenshot(page, 'course-tapping-phone');
    // Where the lines over the members lie: AC leads from the left support up to C.
    const boxes = await page.evaluate(() => Object.fromEntries([...document.querySelectorAll('#figure .member')]
        .map((line) => [line.dataset.of, line.getAttribute('d').match(/[\d.]+/g).map(Number)])));
    const [x1, y1, x2, y2] = boxes['A-C'];
    assert.ok(x2 > x1 && y2 < y1, 'to the right and up');
    assert.deepEqual(boxes['A-B'].slice(0, 2), [x1, y1], 'both begin at A');
    await context.close();
});

test('everything of a question is set, and read back from its link', async () => {
    const { page, context } = await arrive(sizes.desktop, linkTo('sign_gantry.json'));
    for (const words of ['The force in members', 'The reactions']) {
        await page.getByLabel(words, { exact: true }).uncheck();
    }
    await press(page, 'Make the link');
    await page.locator('#setting-says', { hasText: 'tick at least one' }).waitFor();
    await page.getByLabel('The degree of indeterminacy', { exact: true }).check();
    await page.getByLabel('An ordinate of an influence line', { exact: true }).check();
    await page.getByLabel('Force in', { exact: true }).fill('no');
    await press(page, 'Make the link');
    await page.locator('#setting-says', { hasText: 'no member no' }).waitFor();
    const [member] = JSON.parse(readFileSync(path.join(root, 'site/examples/sign_gantry.json'), 'utf8')).members;
    await page.getByLabel('Force in', { exact: true }).fill(`${member.a}-${member.b}`);
    const path_ = JSON.parse(await page.getByLabel('as a load of 1 moves over').inputValue());
    await page.getByLabel('ordinate at').selectOption(path_[1]);
    await page.getByLabel('The steps, on paper', { exact: true }).check();
    await page.getByLabel('Right', { exact: true }).selectOption('figures');
    await page.getByLabel('How many').fill('2,5');
    await press(page, 'Make the link');
    await page.locator('#setting-says', { hasText: 'whole number from 1 to 12' }).waitFor();
    await page.getByLabel('How many').fill('3');
    await page.getByLabel('but always within').fill('0,5');
    await page.getByLabel('Hints').selectOption('none');
    await page.getByLabel('Answers are checked').selectOption('at-the-end');
    const link = await linkMade(page);
    await page.goto('about:blank');
    await page.goto(`${shared.site.address}course/${link.slice(link.indexOf('#'))}`);
    await page.locator('html[data-ready]').waitFor();
    const values = await page.evaluate(() => Object.fromEntries([...document.querySelectorAll('#setting-form input, #setting-form select')]
        .filter((field) => field.id || field.checked).map((field) => [field.id || field.value, field.value])));
    assert.equal(values['within-number'], '3');
    assert.equal(values.within, 'figures');
    assert.equal(values.floor, '0.5');
    assert.equal(values['hints-allowed'], 'none');
    assert.equal(values.checks, 'at-the-end');
    assert.equal(values['line-of'], `${member.a}-${member.b}`);
    assert.equal(values['line-at'], path_[1]);
    assert.ok(values.determinacy && values.steps && values.influence);
    assert.equal(values.reactions, undefined);
    await context.close();
});

test('variants for a class: each student has a picture, a link and a code, and sheets are marked by name', async () => {
    const { page, context } = await arrive(sizes.desktop, asking({ ask: ['reactions'] }));
    await part(page, 'Variants');
    await page.getByLabel('Seed').last().fill('7');
    await page.getByLabel('Class list, a student').fill('Name;Mail\nAda;a@x\n=cmd;b@x\n');
    assert.equal(await page.getByLabel('Variants', { exact: true }).isDisabled(), true, 'as many as students');
    await press(page, 'Make the variants');
    await page.locator('#series-says', { hasText: '2 variants are made' }).waitFor();
    assert.equal(await page.locator('#variants svg').count(), 2);
    await screenshot(page, 'course-variants-desktop');
    assert.deepEqual(await faults(page), []);
    const links = await downloaded(page, () => press(page, 'Save links.csv'));
    const key = await downloaded(page, () => press(page, 'Save key.csv'));
    assert.match(links.content.toString(), /1,Ada a@x,[A-Z0-9]{5},http/);
    assert.match(links.content.toString(), /2,'=cmd b@x,/);
    assert.match(key.content.toString(), /variant_002\.json/);
    const link = await page.locator('#variants a').last().getAttribute('href');
    const sheet = await handIn(link, [['A:x', '0', 'zero']]);
    const { code, variant } = JSON.parse(sheet);
    assert.equal(variant, 2);
    assert.ok(link.endsWith(`&code=${code}`), 'the code of the link');
    assert.doesNotMatch(decodeURIComponent(link), /cmd/);
    // Opened by its link, a variant stays that variant until it is changed.
    const opened = await arrive(sizes.desktop, link.slice(link.indexOf('#')));
    const partOf = (address) => address.match(/x=1\.[\w.-]+/)[0];
    assert.equal(partOf(await linkMade(opened.page)), partOf(link));
    await opened.page.getByLabel('Which members carry nothing', { exact: true }).check();
    assert.notEqual(partOf(await linkMade(opened.page)), partOf(link));
    await opened.context.close();
    await part(page, 'Mark');
    await page.getByLabel('What was handed in').fill(sheet);
    await press(page, 'Mark it');
    await page.locator('#mark-says', { hasText: '1 sheet is marked' }).waitFor();
    assert.match(await page.locator('#marks tbody').innerText(), /\t=cmd b@x/);
    // On another device, the table of links says whose they are.
    const other = await arrive(sizes.phone, '#a=1.broken');
    await other.page.getByLabel('Links of the exercises').fill(links.content.toString());
    await other.page.getByLabel('What was handed in').fill(sheet);
    await press(other.page, 'Mark it');
    await other.page.locator('#mark-says', { hasText: '1 sheet is marked' }).waitFor();
    assert.match(await other.page.locator('#marks tbody').innerText(), /\t=cmd b@x/);
    await screenshot(other.page, 'course-marking-phone');
    assert.deepEqual(await faults(other.page), []);
    assert.equal(await other.page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), true);
    await other.context.close();
    await context.close();
});

test('wishes that can’t be met are said, a search can be stopped, and a truss is made from nothing', async () => {
    const { page, context } = await arrive(sizes.phone);
    await page.getByLabel('Zero members').fill('2');
    await page.getByLabel('Held').selectOption('wall');
    await press(page, 'Make it');
    await page.locator('#beginning-says', { hasText: 'ask for 6 or 8' }).waitFor();
    await page.getByLabel('Held').selectOption('ends');
    await screenshot(page, 'course-beginning-phone');
    assert.deepEqual(await faults(page), []);
    await press(page, 'Make it');
    await page.locator('#asking:not([hidden]) h2').waitFor();
    await part(page, 'Variants');
    for (const words of ['lengths', 'rise', 'sizes of loads']) {
        await page.locator('#varies').getByLabel(words, { exact: true }).uncheck({ force: true });
    }
    await press(page, 'Make the variants');
    await page.locator('#series-says', { hasText: 'nothing may vary' }).waitFor();
    for (const words of ['lengths', 'rise', 'sizes of loads']) {
        await page.locator('#varies').getByLabel(words, { exact: true }).check({ force: true });
    }
    await page.locator('#count').fill('400');
    await press(page, 'Make the variants');
    await page.locator('#series-says', { hasText: 'of 400 variants found' }).waitFor();
    await press(page, 'Stop');
    await page.locator('#series-says', { hasText: 'Stopped' }).waitFor();
    await page.getByLabel('Lengths in steps of').fill('half');
    await press(page, 'Make the variants');
    await page.locator('#series-says', { hasText: '“half” is none' }).waitFor();
    await page.getByLabel('Lengths in steps of').fill('0,5');
    await page.locator('#count').fill('2');
    await press(page, 'Make the variants');
    await page.locator('#series-says', { hasText: '2 variants are made' }).waitFor();
    await screenshot(page, 'course-variants-phone');
    assert.equal(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), true);
    await context.close();
});

test('sheets are made on the page as on the command line, and every question of a platform has its picture', async () => {
    const { page, context } = await arrive(sizes.desktop, asking({ ask: ['reactions', 'forces'] }));
    await part(page, 'Hand out');
    await press(page, 'Make the sheets');
    await page.locator('#paper-says', { hasText: 'The sheet is made.' }).waitFor();
    const sheet = await downloaded(page, () => press(page, 'Save as a file'));
    const html = sheet.content.toString();
    assert.match(html, /<article class="handout">/);
    const link = html.match(/href="([^"]*#x=1\.[^"]*)"/)[1];
    const onTheLine = gusset(['handout', link, '--address', shared.site.address]);
    assert.equal(html, onTheLine.stdout, 'the same as on the command line');
    const shown = page.frameLocator('#paper-view').locator('article');
    await shown.first().waitFor();
    assert.notEqual(await shown.locator('svg').first().evaluate((svg) => getComputedStyle(svg).display), 'none');
    await screenshot(page, 'course-papers-desktop');
    assert.deepEqual(await faults(page), []);
    const { content } = await downloaded(page, () => press(page, 'Save the questions'));
    const picture = content.toString().match(/<file name="[^"]*\.png"[^>]*>([A-Za-z0-9+/=]+)</);
    const png = Buffer.from(picture[1], 'base64');
    assert.equal(png.subarray(1, 4).toString(), 'PNG');
    assert.ok(png.length > 2000, 'something is drawn');
    await context.close();
});

test('the link of an exercise leads to its question, and answers to whoever marks, also without the names of pages', async () => {
    const { page, context } = await arrive(sizes.desktop, linkTo('footbridge.json'));
    const link = await linkMade(page);
    await page.goto(`${shared.site.address}${link.slice(link.indexOf('#'))}`);
    await page.locator('#work:not([hidden])').waitFor();
    assert.equal(new URL(page.url()).pathname, '/exercise/');
    for (const place of ['', 'exercise/', 'course/']) {
        await page.goto('about:blank');
        await page.goto(`${shared.site.address}${place}#a=1.broken`);
        await page.locator('#notes', { hasText: 'link' }).waitFor();
        assert.equal(new URL(page.url()).pathname, '/course/');
    }
    await context.close();
});

test('what was set on this device is opened again, or forgotten', async () => {
    const { page, context } = await arrive(sizes.desktop, asking({ ask: ['zero-members'], text: 'Look first.' }));
    await linkMade(page);
    await part(page, 'Truss');
    await page.getByRole('button', { name: /^Open Footbridge/ }).click();
    assert.equal(await page.getByLabel('What you want to say (optional)').inputValue(), 'Look first.');
    await part(page, 'Truss');
    await page.getByRole('button', { name: /^Forget Footbridge/ }).click();
    assert.equal(await page.locator('#kept-part').isVisible(), false);
    await page.getByLabel('Link of a truss or of an exercise').fill('nothing');
    await press(page, 'Open it');
    await page.locator('#beginning-says:not(:empty)').waitFor();
    await context.close();
});

test('the board leads to the page that sets its truss as an exercise, and Back returns to it', async () => {
    const { page, context, board } = await openBoard(shared.browser, shared.site.address, sizes.desktop,
        linkTo('footbridge.json'));
    await board.press('Share');
    await board.reveal('Set it as an exercise');
    await Promise.allSettled([board.press('Set it as an exercise')]); // the board leaves under the press
    await page.locator('#setting-title').waitFor();
    await page.goBack();
    await boardOf(page, sizes.desktop);
    assert.equal(new URL(page.url()).pathname, '/');
    await context.close();
});

test('every state can be read and hit by a thumb, in every size, and in both themes', async () => {
    for (const [name, size] of Object.entries(sizes)) {
        for (const colorScheme of name === 'phone' ? ['light', 'dark'] : ['light']) {
            const { page, context } = await arrive(size, asking({ ask: ['reactions', 'forces', 'zero-members'] }), { colorScheme });
            for (const one of ['Truss', 'Question', 'Variants', 'Hand out', 'Mark']) {
                await part(page, one);
                assert.deepEqual(await faults(page), [], `${one}, ${name}, ${colorScheme}`);
                assert.deepEqual(await tooSmall(page), [], `${one}, ${name}`);
                await screenshot(page, `course-${one.toLowerCase().replace(' ', '-')}-${name}-${colorScheme}`);
            }
            await context.close();
        }
    }
});

test('a picture for the manual', forPeople, async () => {
    const { page, context } = await arrive({ ...sizes.desktop, deviceScaleFactor: 1 }, linkTo('footbridge.json'));
    await screenshot(page, 'help-setting');
    await context.close();
});
