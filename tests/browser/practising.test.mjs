// A student who practises: free bodies that are drawn, cuts, equations that are built and kept, answers in the figure,
// all of it without a network.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { arrive as arriveAt, asking } from './exercises.mjs';
import { faultsByAxe, tooSmall } from './judged.mjs';
import { screenshot, serve, siteAndBrowser, sizes } from './support.mjs';
import { controlled, keeping } from './versions.mjs';

const shared = siteAndBrowser();
const arrive = (...place) => arriveAt(shared, ...place);
const everything = asking({ ask: ['reactions', 'forces'] });

const body = (page) => page.getByLabel('Body', { exact: true });
const term = (page, force) => page.locator('.term', { hasText: force });
const thing = (place, name) => place.getByRole('button', { name, exact: true });

// The middle of the first stroke of a thing in a drawing, px of the page.
const middleOf = (element) => element.evaluate((group) => {
    const stroke = group.querySelector('.glow');
    const at = stroke.getPointAtLength(stroke.getTotalLength() / 2).matrixTransform(stroke.getScreenCTM());
    return [at.x, at.y];
});

async function tapOn(page, element) {
    await element.scrollIntoViewIfNeeded();
    await page.touchscreen.tap(...await middleOf(element));
}

async function say(page, force, { sign, times, arm }) {
    await term(page, force).locator('button.force').tap();
    await term(page, force).getByLabel(sign, { exact: true }).tap();
    if (times) {
        await term(page, force).getByLabel('times').selectOption({ label: times });
    }
    if (arm) {
        await term(page, force).getByLabel('arm').fill(arm);
    }
}

async function savedAnswers(page) {
    await page.getByRole('button', { name: 'Review and hand in' }).tap();
    const saved = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save them as a file' }).tap();
    return JSON.parse(readFileSync(await (await saved).path(), 'utf8'));
}

test('an equation is built by picking forces on the free body, on a phone, and each term is judged', async () => {
    const { page, context } = await arrive(sizes.phone, everything);
    await body(page).selectOption('joint A');
    await term(page, 'AC').waitFor();
    assert.equal(await page.locator('.term').count(), 4, 'two reactions, two members');
    const picture = page.locator('#free-body');
    await tapOn(page, thing(picture, 'AB, away from the body'));
    await page.locator('.term.lit', { hasText: 'AB' }).waitFor();
    assert.equal(await thing(picture, 'AB, away from the body').getAttribute('class'), 'thing lit', 'the force and its term');
    await term(page, 'AB').getByLabel('positive').tap();
    await page.getByRole('button', { name: 'Check the equation' }).tap();
    await page.locator('#judge-says', { hasText: '2 of 4' }).waitFor();
    await screenshot(page, 'practising-phone-equation');
    await say(page, 'Ax', { sign: 'positive' });
    await say(page, 'AC', { sign: 'positive', times: '· sin α' });
    await page.getByRole('button', { name: 'Check the equation' }).tap();
    await term(page, 'AC').getByText('not its part along the axis').waitFor();
    await term(page, 'AC').getByLabel('times').selectOption('· cos α');
    await page.locator('#built math').first().waitFor();
    await page.getByRole('button', { name: 'Check the equation' }).tap();
    await page.locator('#judge-says', { hasText: 'The equation is right. Unknown in it: A_x, AB, AC.' }).waitFor();
    await page.getByLabel('Sum').selectOption('moments');
    await body(page).selectOption('the whole truss');
    await page.getByLabel('about', { exact: true }).selectOption('A');
    // 24 kN at 4, 8 and 12 m, and H_y at 16 m: anticlockwise positive.
    for (const [force, sign, arm] of [['at B', 'negative', '4'], ['at D', 'negative', '8'], ['at F', 'negative', '12'],
        ['Hy', 'positive', '']]) {
        await say(page, force, { sign, arm });
    }
    await page.getByRole('button', { name: 'Check the equation' }).tap();
    await page.locator('#judge-says', { hasText: 'H_y has no arm yet' }).waitFor();
    await term(page, 'Hy').getByLabel('arm').fill('16');
    await page.getByRole('button', { name: 'Check the equation' }).tap();
    await page.locator('#judge-says', { hasText: 'Unknown in it: H_y.' }).waitFor();
    await page.locator('#building-title').scrollIntoViewIfNeeded();
    await screenshot(page, 'practising-phone-moments');
    assert.deepEqual(await faultsByAxe(page), []);
    assert.deepEqual(await tooSmall(page), []);
    await context.close();
});

test('by keyboard, arrows lead along the forces of the free body, and Enter picks one', async () => {
    const { page, context } = await arrive(sizes.desktop, everything);
    await body(page).selectOption('joint A');
    const picture = page.locator('#free-body');
    await thing(picture, 'A_x, →').focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    assert.equal(await page.evaluate(() => document.activeElement.getAttribute('aria-label')), 'AB, away from the body');
    await page.keyboard.press('Enter');
    await page.locator('.term.lit', { hasText: 'AB' }).waitFor();
    await page.keyboard.press('ArrowRight');
    await page.locator('.term.lit', { hasText: '+ FAB' }).waitFor();
    await screenshot(page, 'practising-desktop-equation');
    await context.close();
});

test('a part that a cut leaves is a body: it is picked in the figure, and can be asked, hinted at and written', async () => {
    const { page, context } = await arrive(sizes.phone, everything);
    const figure = page.locator('#figure');
    await body(page).selectOption('a part, cut off');
    await page.locator('#cut-says', { hasText: 'No member is cut yet' }).waitFor();
    await page.getByRole('button', { name: 'Can it be solved?' }).tap();
    await page.locator('#stand-says', { hasText: 'Cut the truss in two first' }).waitFor();
    await tapOn(page, thing(figure, 'Member BD'));
    await page.locator('#cut-says', { hasText: 'hangs together' }).waitFor();
    await page.getByLabel('Cut CD').check({ force: true });
    await tapOn(page, thing(figure, 'Member CE'));
    await page.locator('#cut-says', { hasText: 'choose a part' }).waitFor();
    await page.getByLabel('The part with A, B and C').tap();
    await term(page, 'CE').waitFor();
    assert.equal(await page.locator('#cut-says').innerText(), 'The cut parts the truss in two.');
    assert.equal(await page.locator('.term').count(), 6, 'a load, two reactions, three members');
    await page.getByRole('button', { name: 'Can it be solved?' }).tap();
    await page.locator('#stand-says', { hasText: 'too many for its equations. Choose the whole truss first' }).waitFor();
    for (const [of, size, way] of [['A:x', '0', 'zero'], ['A:y', '36', 'up']]) {
        await page.locator(`.answer[data-of="${of}"]`).getByLabel('size').fill(size);
        await page.locator(`.answer[data-of="${of}"]`).getByLabel(way, { exact: true }).tap();
    }
    await page.getByRole('button', { name: 'Can it be solved?' }).tap();
    await page.locator('#stand-says', { hasText: 'moments about D leaves only CE' }).waitFor();
    await page.locator('#free-body', { hasText: '= 36' }).waitFor();
    await page.locator('#help-title').scrollIntoViewIfNeeded();
    await screenshot(page, 'practising-phone-section');
    for (const words of ['A hint', 'More of this hint', 'More of this hint']) {
        await page.getByRole('button', { name: words, exact: true }).tap();
    }
    await page.locator('#hints math').first().waitFor();
    assert.deepEqual(await faultsByAxe(page), []);
    assert.deepEqual(await tooSmall(page), []);
    await context.close();
});

test('answers are typed in the figure, stand there, and follow the list', async () => {
    const { page, context } = await arrive(sizes.phone, everything);
    const figure = page.locator('#figure');
    const editor = page.locator('#editor');
    await tapOn(page, thing(figure, 'Member CE'));
    await editor.getByLabel('size').fill('64');
    await editor.getByLabel('compression').tap();
    await screenshot(page, 'practising-phone-editor');
    await editor.getByRole('button', { name: 'Done' }).tap();
    await figure.locator('.typed', { hasText: '64 C' }).waitFor();
    assert.equal(await page.locator('#questions .answer[data-of="C-E"]').getByLabel('size').inputValue(), '64');
    await tapOn(page, thing(figure, 'Support at A'));
    await editor.getByLabel('Reaction Ay, in the figure: size').fill('3x');
    assert.match(await editor.innerText(), /no number here/);
    await editor.getByLabel('Reaction Ay, in the figure: size').fill('36');
    await editor.getByLabel('up', { exact: true }).tap();
    await page.keyboard.press('Escape');
    await figure.locator('.typed', { hasText: 'Ay 36 ↑' }).waitFor();
    assert.equal(await page.locator('#questions .answer[data-of="A:y"]').getByLabel('up', { exact: true }).isChecked(), true);
    await page.locator('#questions .answer[data-of="A-B"]').getByLabel('size').fill('48');
    await figure.locator('.typed', { hasText: '48' }).waitFor();
    await screenshot(page, 'practising-phone-figure');
    assert.equal(await page.getByRole('button', { name: 'Member AB: 48' }).count(), 1, 'told with its value');
    assert.deepEqual(await faultsByAxe(page), []);
    assert.deepEqual(await tooSmall(page), []);
    await page.reload();
    await figure.locator('.typed', { hasText: '64 C' }).waitFor();
    await context.close();
});

test('with the check at the end an equation is kept without judgement, listed, removed and handed in', async () => {
    const { page, context } = await arrive(sizes.phone,
        asking({ ask: ['reactions', { what: 'forces', members: [['C', 'E']] }], checks: 'at-the-end', hints: 'none' }));
    assert.equal(await page.getByRole('button', { name: 'Check the equation' }).isVisible(), false);
    await body(page).selectOption('joint A');
    await page.getByRole('button', { name: 'Keep the equation' }).tap();
    await page.locator('#judge-says', { hasText: 'No force is in it yet' }).waitFor();
    await say(page, 'AC', { sign: 'positive', times: '· cos α' });
    await page.getByRole('button', { name: 'Keep the equation' }).tap();
    await page.locator('#kept-list li', { hasText: 'Joint A' }).waitFor();
    await say(page, 'AC', { sign: 'negative' });
    await page.getByRole('button', { name: 'Keep the equation' }).tap();
    await page.locator('#kept-list li').nth(1).waitFor();
    await page.getByRole('button', { name: 'Remove equation 2' }).tap();
    await screenshot(page, 'practising-phone-kept');
    await page.reload();
    await page.locator('#kept-list li', { hasText: 'Joint A' }).waitFor();
    // What this program can't read does not take the rest with it.
    await page.evaluate(() => {
        const name = Object.keys(localStorage).find((key) => key.startsWith('gusset-exercise-'));
        const draft = JSON.parse(localStorage.getItem(name));
        localStorage.setItem(name, JSON.stringify({ ...draft, equations: [{ joint: 'Q' }, ...draft.equations] }));
    });
    await page.reload();
    await page.locator('#says', { hasText: 'left out' }).waitFor();
    const { equations } = await savedAnswers(page);
    assert.match(await page.locator('#review-equations li').textContent(), /^Joint A/);
    assert.deepEqual(equations, [{ joint: 'A', sum: 'x', terms: [{ of: 'A-C', sign: '+', by: 'cosine' }] }]);
    assert.match(await page.locator('#review-says').innerText(), /Saved/);
    assert.deepEqual(await faultsByAxe(page), []);
    await context.close();
});

test('a student on a phone practises offline: is stuck, takes a hint, answers in the figure, and hands in', async (t) => {
    const site = await serve();
    t.after(() => site.stop());
    const { page, context } = await arrive(sizes.phone,
        asking({ ask: ['reactions', { what: 'forces', members: [['A', 'C']] }] }), { address: site.address, ...keeping });
    await controlled(page);
    await page.getByText('works without a network now').waitFor();
    site.stop();
    await context.setOffline(true);
    await page.reload();
    await page.locator('#work:not([hidden])').waitFor();

    await body(page).selectOption('joint D');
    await page.getByRole('button', { name: 'Can it be solved?' }).tap();
    await page.locator('#stand-says', { hasText: 'too many' }).waitFor();
    await page.getByRole('button', { name: 'A hint' }).tap();
    await page.locator('#hints li', { hasText: 'whole truss' }).waitFor();
    const figure = page.locator('#figure');
    const editor = page.locator('#editor');
    await tapOn(page, thing(figure, 'Support at A'));
    await editor.getByLabel('Reaction Ax, in the figure: sense').getByLabel('zero').tap();
    await editor.getByLabel('Reaction Ay, in the figure: size').fill('36');
    await editor.getByLabel('up', { exact: true }).tap();
    await editor.getByRole('button', { name: 'Done' }).tap();
    await body(page).selectOption('joint A');
    await page.getByRole('button', { name: 'Can it be solved?' }).tap();
    await page.locator('#stand-says', { hasText: 'Joint A can be solved: 2 unknown.' }).waitFor();
    await page.getByLabel('Sum').selectOption('y');
    await say(page, 'Ay,', { sign: 'positive' });
    await say(page, 'AC', { sign: 'positive', times: '· sin α' });
    await page.getByRole('button', { name: 'Check the equation' }).tap();
    await page.locator('#judge-says', { hasText: 'The equation is right. Unknown in it: AC.' }).waitFor();
    await page.getByRole('button', { name: 'Keep the equation' }).tap();
    await page.locator('#kept-list li').waitFor();
    // 36 + 3/5 AC = 0. The free body covers the truss while its equation is in view.
    await page.locator('h1').scrollIntoViewIfNeeded();
    await tapOn(page, thing(figure, 'Member AC'));
    await editor.getByLabel('size').fill('60');
    await editor.getByLabel('compression').tap();
    await editor.getByRole('button', { name: 'Done' }).tap();
    const answers = await savedAnswers(page);
    assert.deepEqual(answers.forces, [{ of: 'A-C', size: 60, sense: 'C' }]);
    assert.equal(answers.equations.length, 1);
    await context.close();
});
