// A lesson on its stage, turned by keys, thumbs, the contents and the speaker's window.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { faultsByAxe } from './judged.mjs';
import { linkOf, root, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();
const bridge = JSON.parse(readFileSync(path.join(root, 'site/examples/footbridge.json'), 'utf8'));
const projector = { viewport: { width: 1920, height: 1080 }, deviceScaleFactor: 1 };

// A lesson's page, once it shows one or says why not.
async function arrive(size, model = bridge, options = {}) {
    const context = await shared.browser.newContext({ ...size, ...options });
    context.setDefaultTimeout(Number(process.env.PATIENCE ?? 10000));
    const page = await context.newPage();
    page.on('pageerror', (error) => { throw error; });
    await page.goto(`${shared.site.address}lesson/${typeof model === 'string' ? model : linkOf(model)}`);
    await page.locator('#picture svg, #says:has-text(".")').first().waitFor();
    return { page, context };
}

const where = (page) => page.locator('#where').textContent();
const numberOf = async (page) => Number((await where(page)).match(/^\d+/)[0]);
const countOf = async (page) => Number((await where(page)).match(/ of (\d+)/)[1]);

async function until(page, number) {
    await page.locator('#where', { hasText: new RegExp(`^${number} of `) }).waitFor();
}

test('a lesson is turned stroke by stroke, with keys, and what is said is there for a screen reader', async () => {
    const { page, context } = await arrive(sizes.desktop);
    assert.equal(await numberOf(page), 1);
    const first = await page.locator('#spoken').textContent();
    await page.keyboard.press('ArrowRight');
    await until(page, 2);
    assert.notEqual(await page.locator('#spoken').textContent(), first);
    await page.keyboard.press('PageUp');
    await until(page, 1);
    await page.keyboard.press('End');
    await until(page, await countOf(page));
    assert.equal(await page.locator('#next').isDisabled(), true);
    await screenshot(page, 'lesson-desktop-end');
    assert.deepEqual(await faultsByAxe(page), []);
    await context.close();
});

test('letters on the stage are as high as the last row needs, as painted', async () => {
    for (const size of [sizes.desktop, projector]) {
        const { page, context } = await arrive(size);
        const { height } = size.viewport;
        for (let i = await countOf(page); i > 1; i -= 1) {
            const letters = await page.locator('#picture svg').evaluate((svg) => [...svg.querySelectorAll('tspan')]
                .filter((span) => span.textContent.trim() !== '')
                .map((span) => parseFloat(getComputedStyle(span).fontSize) * svg.getBoundingClientRect().height /
                    svg.viewBox.baseVal.height));
            // The bar takes a little of the page: the stage is what is shown in full.
            const bar = await page.locator('#bar').evaluate((each) => each.getBoundingClientRect().height);
            assert.ok(Math.min(...letters) >= (height - bar) / 60 - 0.01, `${await where(page)}: ${Math.min(...letters)}`);
            await page.keyboard.press('ArrowRight');
        }
        await context.close();
    }
});

test('the pen belongs to its step, and is undone', async () => {
    const { page, context } = await arrive(sizes.desktop);
    const isPainted = (wanted) => page.waitForFunction((expected) => {
        const canvas = document.querySelector('#pen');
        const { data } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
        return data.some((value) => value !== 0) === expected;
    }, wanted);
    await page.keyboard.press('p');
    await page.mouse.move(300, 300);
    await page.mouse.down();
    await page.mouse.move(500, 350, { steps: 5 });
    await page.mouse.up();
    await isPainted(true);
    await screenshot(page, 'lesson-pen');
    const subject = await where(page);
    await page.locator('#contents-open').click();
    await page.locator('#contents button', { hasText: 'Slopes' }).click();
    await page.locator('#where', { hasText: 'Slopes' }).waitFor();
    await isPainted(false); // on another step
    await page.keyboard.press('Home');
    await page.locator('#where', { hasText: subject }).waitFor();
    await isPainted(true); // the step on which it was drawn
    await page.setViewportSize({ width: 1000, height: 700 });
    await isPainted(true);
    await page.keyboard.press('u');
    await isPainted(false);
    await context.close();
});

test('a joint that is dragged in mid-lesson keeps the step, and its numbers follow', async () => {
    const { page, context } = await arrive(sizes.desktop);
    await page.locator('#contents-open').click();
    await page.locator('#contents button', { hasText: /^Joint C$/ }).click();
    const before = await where(page);
    const svg = await page.locator('#picture').innerHTML();
    // E is in the middle of the upper chord: the truss stays the same on both sides.
    const joint = await page.evaluate(() => {
        const middle = (each) => {
            const box = each.getBoundingClientRect();
            return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
        };
        const letter = middle([...document.querySelectorAll('#picture text')].find(({ textContent }) => textContent === 'E'));
        const far = ({ x, y }) => Math.hypot(x - letter.x, y - letter.y);
        return [...document.querySelectorAll('#picture circle.ring-plain')].map(middle).sort((a, b) => far(a) - far(b))[0];
    });
    await page.mouse.move(joint.x, joint.y);
    await page.mouse.down();
    await page.mouse.move(joint.x, joint.y - 25, { steps: 4 });
    await page.mouse.up();
    await page.waitForFunction((old) => document.getElementById('picture').innerHTML !== old, svg);
    assert.equal((await where(page)).replace(/^\d+ of \d+/, ''), before.replace(/^\d+ of \d+/, ''));
    await screenshot(page, 'lesson-dragged');
    // Without its twin on the other side, C is no longer needed: that is said.
    const corner = await page.evaluate(() => {
        const letters = [...document.querySelectorAll('#picture text')].filter(({ textContent }) => textContent === 'C');
        const left = letters.map((each) => each.getBoundingClientRect()).sort((a, b) => a.x - b.x)[0];
        return { x: left.x + left.width / 2, y: left.y + left.height + 8 };
    });
    await page.mouse.move(corner.x, corner.y);
    await page.mouse.down();
    await page.mouse.move(corner.x, corner.y - 25, { steps: 4 });
    await page.mouse.up();
    await page.locator('#says', { hasText: '“Joint C” is no step of this working' }).waitFor();
    await context.close();
});

test('the speaker’s window keeps in step over 500 keys, pressed in either', async () => {
    const { page, context } = await arrive(sizes.desktop);
    await page.locator('#more-open').click();
    const opened = context.waitForEvent('page');
    await page.getByRole('button', { name: 'Speaker’s window' }).click();
    const speaker = await opened;
    await speaker.locator('#all:not([hidden])').waitFor();
    await page.keyboard.press('Escape');
    const count = await countOf(page);
    let expected = 1;
    let seed = 7;
    const next = () => (seed = (seed * 1103515245 + 12345) % 2 ** 31) / 2 ** 31;
    for (let i = 0; i < 500; i += 1) {
        const by = next() < 0.6 ? 1 : -1;
        expected = Math.max(1, Math.min(count, expected + by));
        await (next() < 0.5 ? page : speaker).keyboard.press(by > 0 ? 'ArrowRight' : 'ArrowLeft');
        await until(page, expected);
    }
    await speaker.locator('#where', { hasText: new RegExp(`^${expected} of `) }).waitFor();
    assert.equal(await speaker.locator('#spoken').textContent(), await page.locator('#spoken').textContent());
    await screenshot(speaker, 'lesson-speaker');
    await context.close();
});

const planned = { ...bridge, lesson: { shows: [{ of: 'forces', pauses: [
    { before: 'joint A', says: 'Look at A before going on.', asks: ['A', 'B'] }] }, 'polygon'] } };

test('a student on a phone tries what an instructor asks before the lesson goes on', async () => {
    const { page, context } = await arrive(sizes.phone, planned);
    const tapNext = () => page.locator('#next').tap();
    while (!await page.locator('#pause').isVisible()) {
        await tapNext();
    }
    const here = await where(page);
    await tapNext();
    await page.locator('#pause-reply', { hasText: 'Try it first' }).waitFor();
    assert.equal(await where(page), here);
    await screenshot(page, 'lesson-phone-pause');
    // Reaction 36, slope 3 in 4: AB = 36 · 4 / 3 = 48 in tension.
    await page.locator('#pause-typed').fill('48');
    await page.locator('#pause').getByText('T', { exact: true }).tap();
    await page.getByRole('button', { name: 'Try it' }).tap();
    await page.locator('#pause-reply', { hasText: 'Right' }).waitFor();
    await tapNext();
    await page.locator('#pause').waitFor({ state: 'hidden' });
    await screenshot(page, 'lesson-phone');
    const small = await page.locator('button:visible, a:visible, input:visible').evaluateAll((all) => all
        .filter((each) => each.getBoundingClientRect().height < 44).map((each) => each.outerHTML));
    assert.deepEqual(small, []);
    assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), 390);
    assert.deepEqual(await faultsByAxe(page), []);
    await context.close();
});

test('why a number is so leads to the step that found it, and back', async () => {
    const { page, context } = await arrive(sizes.desktop);
    while (!await page.locator('#why').isVisible()) {
        await page.keyboard.press('ArrowRight');
    }
    const here = await where(page);
    await page.locator('#why').click();
    await page.locator('#whys button').first().click();
    assert.notEqual(await where(page), here);
    await page.getByRole('button', { name: 'Back to where you were' }).click();
    assert.equal(await where(page), here);
    await context.close();
});

test('the plan: another derivation, a step left out, a remark; all of it in the link', async () => {
    const { page, context } = await arrive(sizes.desktop);
    const steps = await countOf(page);
    await page.locator('#more-open').click();
    await page.getByRole('button', { name: 'Leave this step out' }).click();
    await page.waitForFunction((before) => Number(document.getElementById('where').textContent.match(/ of (\d+)/)[1]) < before, steps);
    await page.getByLabel('Add').selectOption('one member');
    await page.getByLabel('Which').fill('A-Z');
    await page.getByRole('button', { name: 'Add' }).click();
    await page.locator('#more-says', { hasText: 'Z' }).waitFor();
    await page.getByLabel('Which').fill('A-B');
    await page.getByRole('button', { name: 'Add' }).click();
    await page.locator('#plan-items li', { hasText: 'one member AB' }).waitFor();
    await page.getByLabel('Before this step').fill('First the whole.');
    await page.getByRole('button', { name: 'Put it before this step' }).click();
    await screenshot(page, 'lesson-plan');
    assert.deepEqual(await faultsByAxe(page), []);
    const link = await page.evaluate(() => location.hash);
    await context.close();
    const again = await arrive(sizes.desktop, link);
    await again.page.locator('#pause-says', { hasText: 'First the whole.' }).waitFor();
    await again.context.close();
});

test('a truss that moves does so on the stage; other trusses and themes', async () => {
    const missing = JSON.parse(readFileSync(path.join(root, 'site/examples/missing_diagonal.json'), 'utf8'));
    const { page, context } = await arrive(sizes.tablet, missing);
    await page.keyboard.press('End');
    await page.locator('#where', { hasText: 'How it moves' }).waitFor();
    const before = await page.locator('#picture').innerHTML();
    await page.waitForFunction((old) => document.getElementById('picture').innerHTML !== old, before);
    await screenshot(page, 'lesson-moves');
    await context.close();
    const dark = await arrive(sizes.desktop, bridge, { colorScheme: 'dark' });
    for (let i = 0; i < 14; i += 1) {
        await dark.page.keyboard.press('ArrowRight');
    }
    await screenshot(dark.page, 'lesson-dark');
    await dark.context.close();
});

const footbridgeLine = { ...bridge, loads: [], lesson: { shows: [
    { of: 'influence', path: ['A', 'B', 'D', 'F', 'H'], member: ['C', 'D'] }] } };
const missingDiagonal = JSON.parse(readFileSync(path.join(root, 'site/examples/missing_diagonal.json'), 'utf8'));

test('a truss that moves is stopped and set going again, by button and key; it stands still for who asked for that', async () => {
    const { page, context } = await arrive(sizes.desktop, missingDiagonal);
    await page.keyboard.press('End');
    const stop = page.getByRole('button', { name: 'Stop it' });
    await stop.waitFor();
    const picture = () => page.locator('#picture').innerHTML();
    await stop.click();
    await page.getByRole('button', { name: 'Let it move' }).waitFor();
    const stopped = await picture();
    await page.evaluate(() => new Promise((done) => { requestAnimationFrame(() => requestAnimationFrame(done)); }));
    assert.equal(await picture(), stopped);
    await page.keyboard.press('m');
    await page.waitForFunction((old) => document.getElementById('picture').innerHTML !== old, stopped);
    await page.keyboard.press('m');
    await page.getByRole('button', { name: 'Let it move' }).waitFor();
    await page.keyboard.press('ArrowLeft');
    await page.locator('#motion').waitFor({ state: 'hidden' });
    await context.close();
    const still = await arrive(sizes.desktop, missingDiagonal, { reducedMotion: 'reduce' });
    await still.page.keyboard.press('End');
    await still.page.getByRole('button', { name: 'Let it move' }).waitFor();
    await still.context.close();
});

test('between two strokes the load rolls to the next joint while the line is traced', async () => {
    // Goes to the second stroke of the line; returns its picture when it is done, and how many there were on the way.
    async function traced(options, done) {
        const { page, context } = await arrive(sizes.desktop, footbridgeLine, options);
        await page.locator('#contents-open').click();
        await page.locator('#contents button', { hasText: 'as the load moves' }).click();
        await page.locator('#where', { hasText: 'as the load moves' }).waitFor();
        await page.evaluate(() => {
            window.pictures = new Set();
            new MutationObserver(() => window.pictures.add(document.getElementById('picture').innerHTML))
                .observe(document.getElementById('picture'), { childList: true });
        });
        await page.keyboard.press('ArrowRight');
        if (done) {
            await page.waitForFunction((last) => document.getElementById('picture').innerHTML === last, done);
        }
        const seen = { last: await page.locator('#picture').innerHTML(), pictures: await page.evaluate(() => window.pictures.size) };
        await screenshot(page, `lesson-line-${options.reducedMotion ?? 'rolling'}`);
        await context.close();
        return seen;
    }
    const still = await traced({ reducedMotion: 'reduce' });
    assert.equal(still.pictures, 1);
    const rolling = await traced({}, still.last);
    assert.ok(rolling.pictures > 2, `${rolling.pictures} pictures`);
});

test('joints are taken in another order, and one that can’t be solved yet is refused with the reason', async () => {
    // With one load there is no symmetry: A, B, C, E, D, F, G are taken, all of them.
    const { page, context } = await arrive(sizes.desktop, { ...bridge, loads: bridge.loads.slice(0, 1) });
    await page.locator('#more-open').click();
    const order = () => page.locator('#joint-order li').allTextContents();
    const before = (await order()).map((text) => text.split(' ')[1]);
    // C before B: its post and its diagonal and its chord are unknown.
    await page.getByRole('button', { name: 'Earlier: joint C' }).click();
    await page.locator('#more-says', { hasText: 'Joint C can’t be taken yet' }).waitFor();
    assert.deepEqual((await order()).map((text) => text.split(' ')[1]), before);
    // D before E: the post carries nothing, and two are unknown.
    await page.getByRole('button', { name: 'Earlier: joint D' }).click();
    await page.locator('#usual-order:not([disabled])').waitFor();
    assert.notDeepEqual((await order()).map((text) => text.split(' ')[1]), before);
    await page.getByRole('button', { name: 'In the usual order' }).click();
    await page.locator('#usual-order[disabled]').waitFor();
    assert.deepEqual((await order()).map((text) => text.split(' ')[1]), before);
    await context.close();
});

test('a step is joined to the one before, and its remark stays before it', async () => {
    const model = { ...bridge, lesson: { shows: [{ of: 'forces', joined: ['joint-sum A y'],
        pauses: [{ before: 'joint-sum A y', says: 'Which sum first?' }] }] } };
    const { page, context } = await arrive(sizes.desktop, model);
    await page.locator('#contents-open').click();
    await page.locator('#contents button', { hasText: 'Which sum first?' }).click();
    await page.locator('#pause-says', { hasText: 'Which sum first?' }).waitFor();
    await page.keyboard.press('ArrowRight');
    await page.locator('#where', { hasText: 'Joint A, ΣF_y' }).waitFor();
    await screenshot(page, 'lesson-joined');
    await context.close();
});

const themes = { light: { colorScheme: 'light' }, dark: { colorScheme: 'dark' }, forced: { forcedColors: 'active' } };
const kinds = {
    forces: bridge,
    section: { ...bridge, lesson: { shows: [{ of: 'section', members: [['C', 'E'], ['C', 'D'], ['B', 'D']] }] } },
    displacement: { ...bridge, lesson: { shows: [{ of: 'displacement', joint: 'D', axis: 'y' }] } },
    polygon: { ...bridge, lesson: { shows: ['polygon'] } },
    line: footbridgeLine,
    method: JSON.parse(readFileSync(path.join(root, 'site/examples/braced_tower.json'), 'utf8')),
    mechanism: missingDiagonal,
};

// Goes through the whole lesson. As painted: letters too small for the last row, words outside the stage, words on words.
async function faultsPainted(page) {
    return page.evaluate(() => {
        const faults = [];
        const inner = ({ left, right, top, bottom }) =>
            ({ left: left + 1, right: right - 1, top: top + (bottom - top) / 4, bottom: bottom - (bottom - top) / 4 });
        const meet = (a, b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
        function look() {
            const svg = document.querySelector('#picture svg');
            const stage = svg.getBoundingClientRect();
            const least = stage.width > stage.height ? stage.height / 60 : 6; // px; on an upright phone, at arm's length
            const words = [...svg.querySelectorAll('text')].filter(({ textContent }) => textContent.trim() !== '');
            const tell = (fault) => faults.push(`${document.getElementById('where').textContent}: ${fault}`);
            words.flatMap((text) => [...text.querySelectorAll('tspan')])
                .filter((span) => span.textContent.trim() !== '' && parseFloat(getComputedStyle(span).fontSize) < least - 0.01)
                .forEach((span) => tell(`${span.textContent} is small`));
            const boxes = words.map((text) => ({ says: text.textContent, box: text.getBoundingClientRect() }));
            boxes.filter(({ box }) => box.left < stage.left - 1 || box.right > stage.right + 1 || box.bottom > stage.bottom + 1)
                .forEach(({ says }) => tell(`${says} is cut`));
            boxes.forEach((one, i) => boxes.slice(i + 1).filter((other) => meet(inner(one.box), inner(other.box)))
                .forEach((other) => tell(`${one.says} lies on ${other.says}`)));
        }
        let pictures = 1;
        look();
        while (!document.getElementById('next').disabled) {
            document.getElementById('next').click();
            look();
            pictures += 1;
        }
        return { faults, pictures };
    });
}

for (const [theme, options] of Object.entries(themes)) {
    test(`every kind of derivation can be read on every screen: ${theme}`, async () => {
        let seen = 0;
        // Colours change nothing in where things are: every screen is seen in one theme.
        const screens = theme === 'light' ? { ...sizes, projector } : { desktop: sizes.desktop };
        for (const [kind, model] of Object.entries(kinds)) {
            for (const [name, size] of Object.entries(screens)) {
                const { page, context } = await arrive(size, model, { reducedMotion: 'reduce', ...options });
                const { faults, pictures } = await faultsPainted(page);
                assert.deepEqual(faults, [], `${kind}, ${name}`);
                seen += pictures;
                await page.keyboard.press('ArrowLeft');
                await screenshot(page, `stage-${kind}-${name}-${theme}`);
                await context.close();
            }
        }
        assert.ok(seen > 150 * Object.keys(screens).length, `${seen} pictures`);
    });
}

test('every number that has a source says why, and leads there and back', async () => {
    const { page, context } = await arrive(sizes.desktop);
    const count = await countOf(page);
    let asked = 0;
    for (let i = 1; i <= count; i += 1) {
        const here = await where(page);
        const whys = await page.locator('#why').isVisible() ? await page.locator('#whys button').count() : 0;
        for (let k = 0; k < whys; k += 1) {
            await page.locator('#why').click();
            await page.locator('#whys button').nth(k).click();
            assert.notEqual(await where(page), here);
            await page.getByRole('button', { name: 'Back to where you were' }).click();
            assert.equal(await where(page), here);
            asked += 1;
        }
        await page.locator('#picture').focus();
        await page.keyboard.press('ArrowRight');
    }
    assert.ok(asked > 20, `${asked} numbers`);
    await context.close();
});

test('a damaged link is said, and a broken plan too', async () => {
    for (const [fragment, words] of [['#m=1.abc', 'link'], [linkOf({ ...bridge, lesson: { shows: ['waltz'] } }), 'waltz']]) {
        const { page, context } = await arrive(sizes.desktop, fragment);
        await page.locator('#says', { hasText: words }).waitFor();
        await context.close();
    }
});
