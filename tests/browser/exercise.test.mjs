// The page of an exercise: answered by a student on a phone, with nothing of the answers in it.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { arrive as arriveAt, asking, bridge } from './exercises.mjs';
import { faultsByAxe, tooSmall } from './judged.mjs';
import { forPeople, linkOf, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();
const arrive = (...place) => arriveAt(shared, ...place);

test('a student answers three questions on a phone, and hands them in', async () => {
    const { page, context } = await arrive(sizes.phone, asking({ text: 'Take the joints in any order.',
        ask: ['reactions', { what: 'forces', members: [['A', 'C'], ['C', 'E']] }, 'zero-members'] }));
    await screenshot(page, 'exercise-phone');
    assert.equal(await page.getByText('Take the joints in any order.').isVisible(), true);
    const reaction = page.locator('.answer[data-of="A:y"]');
    await reaction.getByLabel('size').fill('12,5 kN');
    await reaction.getByLabel('up', { exact: true }).tap();
    const member = page.locator('.answer[data-of="A-C"]');
    await member.getByLabel('size').fill('7 c');
    await member.getByLabel('size').blur();
    assert.equal(await member.getByLabel('compression').isChecked(), true, 'the letter that was typed');
    await page.locator('.answer[data-of="C-E"]').getByLabel('size').fill('seven');
    await page.getByRole('button', { name: 'Review and hand in' }).tap();
    await page.locator('#review-says', { hasText: 'CE' }).waitFor();
    await page.locator('.answer[data-of="C-E"] .verdict', { hasText: 'no number' }).waitFor();
    await screenshot(page, 'exercise-phone-review');
    await page.locator('.answer[data-of="C-E"]').getByLabel('size').fill('');
    await page.locator('.answer[data-of="C-E"]').getByLabel('size').blur();
    await page.getByLabel('BC', { exact: true }).check({ force: true });
    await page.getByRole('button', { name: 'Review and hand in' }).tap();
    await page.locator('#review-says', { hasText: 'blank: Ax, Hy, CE' }).waitFor();
    const saved = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save them as a file' }).tap();
    const answers = JSON.parse(readFileSync(await (await saved).path(), 'utf8'));
    assert.deepEqual(answers.reactions, [{ of: 'A:y', size: 12.5, sign: '+' }]);
    assert.deepEqual(answers.forces, [{ of: 'A-C', size: 7, sense: 'C' }]);
    assert.deepEqual(answers.zero, ['B-C']);
    assert.match(answers.code, /^[A-Z0-9]{5}$/);

    await page.reload();
    await page.locator('#work:not([hidden])').waitFor();
    assert.equal(await reaction.getByLabel('size').inputValue(), '12,5 kN', 'kept on this device');
    assert.equal(await member.getByLabel('compression').isChecked(), true);
    assert.deepEqual(await faultsByAxe(page), []);
    await context.close();
});

test('a picture for the manual', forPeople, async () => {
    const phone = { ...sizes.phone, deviceScaleFactor: 1, viewport: { width: 390, height: 640 } };
    const answering = await arrive(phone, asking({ ask: ['reactions'] }));
    await answering.page.locator('.answer[data-of="A:y"]').getByLabel('size').fill('36');
    await answering.page.locator('.answer[data-of="A:y"]').getByLabel('up', { exact: true }).tap();
    const member = answering.page.locator('#figure').getByRole('button', { name: 'Support at A' });
    await member.focus();
    await member.press('Enter');
    await screenshot(answering.page, 'help-exercise');
    await answering.context.close();
    const practising = await arrive(phone, asking({ ask: ['reactions', 'forces'] }));
    await practising.page.getByLabel('Body', { exact: true }).selectOption('joint A');
    const force = practising.page.locator('.term', { hasText: 'AC' });
    await force.locator('button.force').tap();
    await force.getByLabel('positive').tap();
    await force.getByLabel('times').selectOption('· cos α');
    await force.evaluate((row) => row.scrollIntoView({ block: 'end' }));
    await screenshot(practising.page, 'help-practising');
    await practising.context.close();
});

test('hints come one at a time, from where the student stands, and as far as the exercise allows', async () => {
    const { page, context } = await arrive(sizes.phone, asking({ ask: ['reactions', 'forces'], hints: 'equations' }));
    await page.getByLabel('Body', { exact: true }).selectOption('joint D');
    await page.getByRole('button', { name: 'Can it be solved?' }).tap();
    await page.locator('#stand-says', { hasText: 'too many' }).waitFor();
    await page.getByLabel('Body', { exact: true }).selectOption('the whole truss');
    await page.getByRole('button', { name: 'Can it be solved?' }).tap();
    await page.locator('#stand-says', { hasText: 'can be solved' }).waitFor();
    await page.getByRole('button', { name: 'A hint' }).tap();
    await page.locator('#hints li', { hasText: 'whole truss' }).waitFor();
    assert.equal(await page.locator('#hints math').count(), 0);
    await page.getByRole('button', { name: 'More of this hint' }).tap();
    await page.locator('#hints math').first().waitFor();
    await screenshot(page, 'exercise-phone-hint');
    await page.getByRole('button', { name: 'A hint' }).waitFor();
    await context.close();
});

test('nothing of the answers is on the page of an exercise', async () => {
    const { page, context } = await arrive(sizes.desktop, asking({ ask: ['reactions', 'forces'] }));
    await page.getByText('The same as tables').click();
    const words = (await page.evaluate(() => document.body.textContent)).match(/\d+(\.\d+)?/g);
    assert.equal(words.includes('24'), true, 'the load');
    // Reactions 3 · 24 / 2 = 36; AB = 36 · 4/3 = 48, AC = 36 · 5/3 = 60, CE = (36 · 8 − 24 · 4)/3 = 64.
    assert.deepEqual(words.filter((word) => ['36', '48', '60', '64'].includes(word)), []);
    await screenshot(page, 'exercise-desktop');
    await context.close();
});

test('a damaged link, a question without an answer and a broken one are said', async () => {
    for (const [fragment, words] of [['#m=1.abc', 'link'], [asking({ ask: ['forces', 'weight'] }), '"weight"'],
        [linkOf({ ...bridge, supports: [], exercise: { ask: ['forces'] } }), 'no forces'],
        [asking({ ask: [{ what: 'displacement', joint: 'D' }] }), 'E and A']]) {
        const { page, context } = await arrive(sizes.phone, fragment);
        assert.match(await page.locator('#says').innerText(), new RegExp(words));
        assert.equal(await page.locator('#work').isVisible(), false);
        await context.close();
    }
});

test('every target of the student’s page can be hit by a thumb', async () => {
    const { page, context } = await arrive(sizes.phone, asking({ ask: ['reactions', 'forces', 'zero-members', 'determinacy'] }));
    assert.deepEqual(await tooSmall(page), []);
    await screenshot(page, 'exercise-phone-all');
    await context.close();
});

test('what was written is checked without giving anything away', async () => {
    const { page, context } = await arrive(sizes.phone, asking({ ask: ['reactions', 'forces'] }));
    const write = async (of, size, sense) => {
        const row = page.locator(`.answer[data-of="${of}"]`);
        await row.getByLabel('size').fill(size);
        await row.getByLabel(sense, { exact: true }).tap();
    };
    // Right: A_y = H_y = 36, AB = 36 · 4/3 = 48. Here A_y is turned round, and AB and AC follow from that.
    await write('A:x', '0', 'zero');
    await write('A:y', '36', 'down');
    await write('H:y', '36', 'up');
    await write('A-C', '60', 'tension');
    await write('A-B', '48', 'compression');
    await page.getByRole('button', { name: 'Check what I have written' }).tap();
    await page.locator('#check-says', { hasText: '2 of 5' }).waitFor();
    const says = (of) => page.locator(`.answer[data-of="${of}"] .verdict`).innerText();
    assert.match(await says('A:y'), /look again at the whole truss/);
    assert.equal(await says('H:y'), 'Right.');
    assert.match(await says('A-B'), /follows from your earlier values/);
    await screenshot(page, 'exercise-phone-checked');
    assert.deepEqual(await faultsByAxe(page), []);

    await context.close();
});

const others = ['zero-members', 'determinacy', { what: 'displacement', joint: 'D', axis: 'y' }];

test('what is answered as a whole is checked too, and said at once where it can’t be read', async () => {
    const { page, context } = await arrive(sizes.phone, linkOf({ ...bridge, materials: [{ id: 'steel', E: 210000 }],
        sections: [{ id: 'all', material: 'steel', A: 1000 }],
        members: bridge.members.map((member) => ({ ...member, section: 'all' })), exercise: { ask: others } }));
    const check = page.getByRole('button', { name: 'Check what I have written' });
    const part = (words) => page.locator('fieldset', { hasText: words });
    const degree = page.getByLabel('Degree of indeterminacy');
    await check.tap();
    await page.locator('#check-says', { hasText: 'Nothing is written yet.' }).waitFor();
    for (const text of ['abc', '2.5']) {
        await degree.fill(text);
        await part('indeterminate').getByText('no whole number').waitFor();
    }
    await check.tap();
    await page.locator('#check-says', { hasText: 'Nothing that is written can be read' }).waitFor();
    await degree.fill('1'); // 13 members and 3 reactions, 2 · 8 equations: 0
    await page.getByLabel('DE', { exact: true }).first().check({ force: true }); // no load acts at E
    await page.getByLabel('Value: size').fill('x');
    await part('displacement').getByText('no number here').waitFor();
    await page.getByLabel('Value: size').fill('0.9 m');
    await check.tap();
    await page.locator('#check-says', { hasText: '1 of 3 answers written so far are right' }).waitFor();
    assert.match(await part('indeterminate').innerText(), /This is not right\./);
    assert.match(await part('carry no force').innerText(), /Right\./);
    assert.match(await part('displacement').innerText(), /This is not right\./);
    await degree.fill('0');
    await check.tap();
    await page.locator('#check-says', { hasText: '2 of 3' }).waitFor();
    assert.deepEqual(await faultsByAxe(page), []);
    await page.getByRole('button', { name: 'Review and hand in' }).tap();
    await page.locator('#review-says', { hasText: 'All 3 answers are filled in.' }).waitFor();
    await context.close();
});

test('two tabs of one exercise follow each other, and starting again is asked first', async () => {
    const { page, context } = await arrive(sizes.desktop, asking({ ask: ['reactions', 'determinacy'] }));
    const second = await context.newPage();
    await second.goto(page.url());
    await second.locator('#work:not([hidden])').waitFor();
    const size = (on, of) => on.locator(`.answer[data-of="${of}"]`).getByLabel('size');
    await size(page, 'A:y').fill('36');
    await size(second, 'H:y').fill('35');
    await page.waitForFunction(() => document.querySelector('.answer[data-of="H:y"] input').value === '35');
    await second.getByLabel('Degree of indeterminacy').fill('0');
    await page.waitForFunction(() => document.querySelector('[aria-label="Degree of indeterminacy"]').value === '0');
    await page.reload();
    await page.locator('#work:not([hidden])').waitFor();
    assert.deepEqual([await size(page, 'A:y').inputValue(), await size(page, 'H:y').inputValue()], ['36', '35']);
    await page.getByRole('button', { name: 'Review and hand in' }).click();
    await page.getByRole('button', { name: 'Start again, blank' }).click();
    await page.getByRole('button', { name: 'Keep it', exact: true }).click();
    assert.equal(await size(page, 'A:y').inputValue(), '36');
    await page.getByRole('button', { name: 'Start again, blank' }).click();
    await page.getByRole('button', { name: 'Throw it away' }).click();
    await page.waitForFunction(() => document.querySelector('.answer[data-of="A:y"] input')?.value === '');
    await context.close();
});

test('where nothing can be kept, the page says so and nothing else', async () => {
    const context = await shared.browser.newContext(sizes.desktop);
    await context.addInitScript(() => { Storage.prototype.setItem = () => { throw new Error('full'); }; });
    const page = await context.newPage();
    await page.goto(`${shared.site.address}exercise/${asking({ ask: ['reactions'] })}`);
    await page.locator('#says', { hasText: 'This browser keeps nothing' }).waitFor();
    assert.equal(await page.locator('body').innerText().then((text) => text.includes('is kept on this device')), false);
    await page.goto(`${shared.site.address}exercise/`);
    await page.locator('#says', { hasText: 'open the whole link that you were given' }).waitFor();
    await context.close();
});

test('a title of one long word does not widen the page', async () => {
    const { page, context } = await arrive(sizes.phone, linkOf({ ...bridge, title: 'W'.repeat(200), exercise: { ask: ['reactions'] } }));
    assert.deepEqual(await tooSmall(page), []);
    await context.close();
});
