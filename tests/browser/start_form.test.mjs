// The usual forms of the start page: their sizes, loads as they come, combinations and national values.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { arriveAtStart, boardOf } from './board.mjs';
import { faultsByAxe } from './judged.mjs';
import { firstFrame, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();
const arrive = (...all) => arriveAtStart(shared, ...all);

// The pixels of a picture, as text.
const inkOf = (picture) => picture.evaluate(async (image) => {
    await image.decode();
    const [width, height] = [120, 60];
    const paper = new OffscreenCanvas(width, height).getContext('2d');
    paper.drawImage(image, 0, 0, width, height);
    return paper.getImageData(0, 0, width, height).data.join(' ');
});

test('a form follows what is typed, with its load cases, and what can not be is said', async () => {
    const { page, context } = await arrive(sizes.phone);
    await firstFrame(page);
    await page.locator('#home-form-title').click();
    await page.locator('#form-put:enabled').waitFor();
    await page.selectOption('#form-form', { label: 'Fink' });
    assert.equal(await page.locator('#form-panels').isVisible(), false, 'it has no choice of panels');
    await page.selectOption('#form-form', { label: 'Howe' });
    await page.selectOption('#form-panels', '6');
    await page.fill('#form-span', 'wide');
    assert.match(await page.locator('#form-fault').innerText(), /wide/);
    assert.equal(await page.locator('#form-put').isDisabled(), true);
    await page.fill('#form-span', '24');
    assert.equal(await page.locator('#form-fault').isVisible(), false);
    await page.locator('#form-add').click();
    await page.locator('#form-add').click();
    await page.locator('#form-cases .load').nth(2).fill('-4');
    await page.locator('#home-form').scrollIntoViewIfNeeded();
    await screenshot(page, 'home-form-phone');
    await page.locator('#form-put').click();
    await page.waitForFunction(() => window.gussetTest.observe().model.title === 'Howe truss');
    const { loads, joints } = await page.evaluate(() => window.gussetTest.observe().model);
    assert.equal(Math.max(...joints.map(({ x }) => x)), 24);
    assert.deepEqual([...new Set(loads.map((load) => load.case))], ['dead', 'snow', 'wind']);
    assert.equal(loads.length, 15);
    await context.close();
});

test('every form that is offered can be chosen, follows with its picture and its sizes, and is put on the board', async () => {
    const { page, context, errors } = await arrive(sizes.tablet);
    await page.locator('#form-put:enabled').waitFor();
    const names = await page.locator('#form-form option').allInnerTexts();
    assert.ok(names.length >= 20, names.join());
    const pictures = [];
    for (const label of names) {
        await page.selectOption('#form-form', { label });
        if (await page.locator('#form-panels option[value="8"]').count() > 0 && await page.locator('#form-panels').isVisible()) {
            await page.selectOption('#form-panels', '8');
        }
        assert.equal(await page.locator('#form-fault').isVisible(), false, label);
        pictures.push(await inkOf(page.locator('#form-picture')));
        const asked = await page.locator('#form-sizes label').allInnerTexts();
        assert.deepEqual(asked.filter((words) => words.trim() === ''), [], label);
    }
    assert.equal(new Set(pictures).size, names.length, 'each has a picture of its own');
    await page.selectOption('#form-form', { label: 'Scissors' });
    assert.equal(await page.locator('#form-sizes label').count(), 0);
    const row = page.locator('#form-cases > div').first();
    await row.locator('.as').selectOption('area-on-plan');
    assert.equal(await row.locator('.kind').isVisible(), true, 'the rows follow too');
    await page.fill('#form-spacing', '5');
    await page.locator('#form-put:enabled').click();
    await page.waitForFunction(() => /Scissors/.test(window.gussetTest.observe().model.title));
    assert.deepEqual(errors, []);
    await context.close();
});

test('a roof of 24 m with snow and wind on its area, and combinations; its form is changed afterwards', async () => {
    const { page, context, errors } = await arrive(sizes.tablet);
    await page.locator('#form-put:enabled').waitFor();
    await page.selectOption('#form-form', { label: 'Howe roof' });
    await page.selectOption('#form-panels', '10');
    await page.fill('#form-span', '24');
    await page.fill('#form-rise', '20°');
    await page.fill('#form-sizes [name=overhang]', '0.6');
    assert.match(await page.locator('#form-fault').innerText(), /some height over the supports/);
    await page.fill('#form-sizes [name=heel]', '0.5');
    const row = (number) => page.locator('#form-cases > div').nth(number);
    const load = async (number, as, ...sizes) => {
        await row(number).locator('.as').selectOption(as);
        await row(number).locator('.load').fill(sizes[0]);
        if (sizes.length > 1) {
            await row(number).locator('.right').fill(sizes[1]);
        }
    };
    await load(0, 'area-on-slope', '0.35');
    await page.locator('#form-add').click();
    await load(1, 'area-on-plan', '0.8 kN/m²');
    await page.locator('#form-add').click();
    await load(2, 'area-normal', '-0.5', '-0.3');
    await page.fill('#form-spacing', '6');
    await page.selectOption('#form-rule', 'en-6.10');
    await screenshot(page, 'home-outline-tablet');
    await page.locator('#form-put').click();
    const board = await boardOf(page, sizes.tablet);
    await page.waitForFunction(() => window.gussetTest.observe().model.title === 'Howe roof truss');
    const { model } = await board.observe();
    const snow = model.loads.filter(({ case: name }) => name === 'snow').reduce((sum, { fy }) => sum - fy, 0);
    assert.ok(Math.abs(snow - 0.8 * 25.2 * 6) < 1e-9, `${snow}`);
    assert.deepEqual(model.cases.map(({ kind }) => kind), ['permanent', 'snow', 'wind']);
    assert.ok(model.combinations.some(({ factors, by }) => by.includes('6.10') && factors.snow === 1.5 && factors.wind > 0.89));

    await board.press('Start page');
    await page.locator('#form-again').click();
    assert.equal(await page.locator('#form-cases .right').nth(2).inputValue(), '-0.3');
    await page.selectOption('#form-panels', '8');
    await page.locator('#form-put:enabled').click();
    await page.waitForFunction(() => window.gussetTest.observe().model.form.panels === 8);
    const changed = (await board.observe()).model;
    assert.equal(changed.members.length, model.members.length - 8);
    assert.deepEqual(errors, []);
    await context.close();
});

test('national values are typed and kept in the outline, and what each joint gets stands in tables', async () => {
    const { page, context, errors } = await arrive(sizes.phone);
    await firstFrame(page);
    await page.locator('#home-form-title').click();
    await page.locator('#form-put:enabled').waitFor();
    await page.selectOption('#form-form', { label: 'Howe roof' });
    await page.selectOption('#form-panels', '6');
    const row = page.locator('#form-cases > div').first();
    await row.locator('.as').selectOption('area-on-plan');
    await row.locator('.kind').selectOption('snow');
    await row.locator('.load').fill('0.8');
    assert.equal(await page.locator('#form-national').isVisible(), false, 'no combinations, no factors');
    await page.selectOption('#form-rule', 'en-6.10');
    await page.locator('#form-national summary').click();
    assert.equal(await page.locator('#form-psi legend').innerText(), 'snow, up to 1000 m');
    assert.equal(await page.locator('#form-factors [data-word=variable]').getAttribute('placeholder'), '1.5');
    await page.fill('#form-factors [data-word=variable]', 'much');
    assert.match(await page.locator('#form-fault').innerText(), /much/);
    await page.fill('#form-factors [data-word=variable]', '1,6');
    await page.fill('#form-psi [data-index="0"]', '0.7');
    await page.locator('#form-shares summary').click();
    // Panels of 2 m, trusses 5 m apart: 0.8 · 2 · 5 = 8 kN.
    const joint = page.locator('#form-shared tbody tr').nth(1);
    await joint.waitFor();
    assert.deepEqual((await joint.locator('td').allInnerTexts()), ['2', '−8']);
    assert.deepEqual(await faultsByAxe(page), []);
    await page.locator('#form-shares').scrollIntoViewIfNeeded();
    await screenshot(page, 'home-shares-phone');
    await page.locator('#form-put').click();
    await page.waitForFunction(() => window.gussetTest.observe().model.title === 'Howe roof truss');
    const { form, combinations } = await page.evaluate(() => window.gussetTest.observe().model);
    assert.deepEqual(form.rule, { by: 'en-6.10', variable: 1.6, national: { snow: [0.7, 0.2, 0] } });
    assert.ok(combinations.some(({ factors }) => factors['loads'] === 1.6 || Object.values(factors).includes(1.6)));
    const board = await boardOf(page, sizes.phone);
    await board.press('Start page');
    await page.locator('#form-again:visible').click();
    assert.equal(await page.inputValue('#form-factors [data-word=variable]'), '1.6');
    assert.equal(await page.inputValue('#form-psi [data-index="0"]'), '0.7');
    assert.deepEqual(errors, []);
    await context.close();
});
