// The page that chooses profiles: from a roof's outline to its sheet, groups that are picked, what if the rise were
// another, mass over a range, drawings in and out.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { boardOf, openBoard } from './board.mjs';
import { folder } from './prints.mjs';
import { gusset } from '../cli/support.mjs';
import { faultsByAxe, tooSmall } from './judged.mjs';
import { linkOf, linkTo, openPage, root, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

// A hall roof as the form makes it, with its outline.
const hall = JSON.parse(gusset(['form', '-'], JSON.stringify({ gusset: 1, joints: [], members: [], supports: [], loads: [],
    form: { kind: 'howe-roof', span: 18, rise: 3, panels: 6, spacing: 5, rule: 'en-6.10',
        loads: [{ case: 'roofing', kind: 'permanent', as: 'area-on-slope', size: 0.4 },
            { case: 'snow', kind: 'snow', as: 'area-on-plan', size: 0.9 }] } })).stdout);

async function arrive(size, fragment = '', options = {}) {
    const context = await shared.browser.newContext({ ...size, ...options });
    context.setDefaultTimeout(Number(process.env.PATIENCE ?? 10000));
    const page = await context.newPage();
    page.on('pageerror', (error) => { throw error; });
    await page.goto(`${shared.site.address}workshop/${fragment}`);
    await page.locator('html[data-ready]').waitFor();
    return { page, context };
}

const press = (page, name) => page.getByRole('button', { name, exact: true }).click();
async function choose(page) {
    await press(page, 'Choose the profiles');
    await page.locator('#chosen:not([hidden])').waitFor();
}
const cells = (page, table, column) => page.locator(`${table} tbody tr`)
    .evaluateAll((rows, index) => rows.map((row) => row.cells[index].textContent), column);
const massOf = (text) => Number(text.match(/([\d.]+)\s*kg/)[1]);

async function downloaded(page, name) {
    const saved = page.waitForEvent('download');
    await press(page, name);
    const download = await saved;
    return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
}

test('a roof of 24 m goes from nothing to a sheet on a tablet, with few taps', async () => {
    const { page, context, errors } = await openPage(shared.browser, shared.site.address, { ...sizes.tablet, atStart: true });
    let taps = 0;
    const tap = async (selector) => { taps += 1; await page.locator(selector).tap(); };
    const pick = async (selector, value) => { taps += 2; await page.selectOption(selector, value); }; // opened, chosen
    const type = async (selector, text) => { taps += 1; await page.fill(selector, text); };

    await page.goto(`${shared.site.address}?test`);
    await page.locator('#form-put:enabled').waitFor();
    await pick('#form-form', { label: 'Howe roof' });
    await pick('#form-panels', '10');
    await type('#form-span', '24');
    await type('#form-rise', '20°');
    const row = '#form-cases > div:nth-child';
    await pick(`${row}(1) .as`, 'area-on-slope');
    await type(`${row}(1) .load`, '0.35');
    await tap('#form-add');
    await pick(`${row}(2) .as`, 'area-on-plan');
    await type(`${row}(2) .load`, '0.8');
    await type('#form-spacing', '6');
    await pick('#form-rule', 'en-6.10');
    await tap('#form-put');
    let board = await boardOf(page, sizes.tablet);
    await page.waitForFunction(() => window.gussetTest.observe().model.title === 'Howe roof truss');
    await board.press('Share');
    await board.reveal('Choose profiles');
    await Promise.allSettled([board.press('Choose profiles')]); // the board leaves under the press
    taps += board.strokes.taps + board.strokes.drags;
    await page.locator('#choosing-title').waitFor();
    await tap('#wish-form .primary');
    await page.locator('#chosen:not([hidden])').waitFor();
    const profiles = await cells(page, '#chosen-table', 1);
    assert.equal(profiles.length, 4);
    await screenshot(page, 'workshop-chosen-tablet');
    const address = await page.locator('#to-board').getAttribute('href');
    await page.goto(new URL(`../?test${address.slice(3)}`, page.url()).href); // the same link, with the test's hook
    taps += 1;
    board = await boardOf(page, sizes.tablet);
    const { model } = await board.observe();
    assert.equal(model.members.every(({ section }) => profiles.includes(section)), true);
    await board.press('Share');
    await board.reveal('Tables and print');
    await board.press('Tables and print');
    taps += board.strokes.taps + board.strokes.drags;
    await tap('#print-tables');
    await page.locator('#sheet-dialog[open]').waitFor();
    await page.locator('.sheet-pages', { hasText: /pages/ }).waitFor();
    const file = path.join(folder, 'workshop-sheet.pdf');
    await page.pdf({ path: file, preferCSSPageSize: true });
    const text = execFileSync('pdftotext', ['-layout', file, '-']).toString();
    for (const profile of new Set(profiles)) {
        assert.ok(text.includes(profile), profile);
    }
    assert.match(text, /6\.10/);
    console.log(`# taps from nothing to the sheet: ${taps}`);
    assert.ok(taps <= 36, `${taps}`);
    assert.deepEqual(errors, []);
    await context.close();
});

test('the profiles that are chosen are those of the command line, and pass its check', async () => {
    const { page, context } = await arrive(sizes.desktop, linkOf(hall));
    assert.match(await page.locator('#caution').innerText(), /Local codes/);
    assert.equal(await page.inputValue('#standard'), 'en-c'); // as its loads are factored
    await page.selectOption('#standard', '');
    await choose(page);
    const asked = gusset(['size', '-', '--kinds', 'shs-hot', '--grade', 'S355', '--deflection', '250',
        '--weight', 'roofing'], JSON.stringify(hall));
    assert.equal(asked.status, 0, asked.stderr);
    const { name, text } = await downloaded(page, 'Save it as a file');
    assert.equal(name, 'truss.json');
    assert.deepEqual(JSON.parse(text).members, JSON.parse(asked.stdout).members);
    assert.equal(gusset(['check', '-'], text).status, 0);
    await context.close();
});

test('what can not be chosen is said: a wrong limit, a class of timber for steel, no group, an unstable truss', async () => {
    const { page, context } = await arrive(sizes.desktop, linkOf(hall));
    const says = (words) => page.locator('#choosing-says', { hasText: words }).waitFor();
    for (const wrong of ['Infinity', '0x10', 'much', '5']) {
        await page.fill('#deflection', wrong);
        await press(page, 'Choose the profiles');
        await says('from 10 to 10,000');
        await page.fill('#deflection', '250');
        assert.doesNotMatch(await page.locator('#choosing-says').innerText(), /-Infinity|NaN|undefined/);
    }
    await page.selectOption('#grade', 'C24');
    await press(page, 'Choose the profiles');
    await says('none of these profiles is made of C24');
    await page.selectOption('#grade', 'S355');
    await page.locator('summary', { hasText: 'Other groups' }).click();
    await page.fill('#picked', hall.members.map(({ a, b }) => `${b}${a}`).join(', '));
    await page.selectOption('#into', 'none: they keep their sections');
    await press(page, 'Put them there');
    await press(page, 'Choose the profiles');
    await says('no group left');
    // A joint on a single member, in line with nothing: held by no load that is there.
    const hung = { ...hall, joints: [...hall.joints, { id: 'Z', x: 20, y: -2 }], members: [...hall.members, { a: 'G', b: 'Z' }] };
    await page.goto(`${shared.site.address}workshop/${linkOf(hung)}`);
    await page.locator('html[data-ready]').waitFor();
    await press(page, 'Choose the profiles');
    await says('unstable');
    await context.close();
});

test('a limit on the deflection is met while there are heavier profiles, and not taken for met where nothing is known', async () => {
    const { page, context } = await arrive(sizes.desktop, linkOf(hall));
    await page.fill('#deflection', '1500');
    await choose(page);
    assert.doesNotMatch(await page.locator('#chosen-lines').innerText(), /do not help|Different profiles/);
    assert.doesNotMatch(await page.locator('#choosing-says').innerText(), /not enough/);
    await page.locator('summary', { hasText: 'Other groups' }).click();
    await page.fill('#picked', `${hall.members[0].a}-${hall.members[0].b}`);
    await page.selectOption('#into', 'none: they keep their sections');
    await press(page, 'Put them there');
    await press(page, 'Choose the profiles');
    await page.locator('#choosing-says', { hasText: /weight of member .* not known/ }).waitFor();
    await page.selectOption('#weight', { label: 'not counted' });
    await choose(page);
    await page.locator('#choosing-says', { hasText: 'not enough' }).waitFor();
    assert.match(await page.locator('#chosen-lines').innerText(), /How far joints move is not known/);
    await press(page, 'Keep it to compare');
    assert.deepEqual(await cells(page, '#compare-table', 4), ['–']);
    assert.equal(await page.getByRole('button', { name: 'Keep it to compare' }).isDisabled(), true);
    await page.reload();
    await page.locator('#truss-part:not([hidden])').waitFor();
    await context.close();
});

test('when nothing is enough that is said, and which group and why', async () => {
    const { page, context } = await arrive(sizes.desktop, linkOf(hall));
    await page.locator('summary', { hasText: 'A list of your own' }).click();
    await page.fill('#own', 'name,shape,unit,D,t\nthin,chs,mm,20,2');
    await page.locator('#kinds-says').click();
    await page.locator('#kinds input:checked').uncheck();
    await choose(page);
    assert.match(await page.locator('#choosing-says').innerText(), /not enough/);
    assert.match(await page.locator('#chosen-table').innerText(), /thin, not enough/);
    await page.fill('#own', 'name,shape,unit,D,t\nthick,chs,mm,200,10\nworse,chs,mm,20,30');
    await press(page, 'Choose the profiles');
    await page.locator('#chosen-lines', { hasText: 'worse' }).waitFor();
    await context.close();
});

test('members that are tapped or named become a group, and others keep their sections', async () => {
    const { page, context } = await arrive(sizes.tablet, linkOf(hall));
    await page.locator('#figure .member').first().dispatchEvent('click');
    assert.notEqual(await page.inputValue('#picked'), '');
    assert.equal(await page.locator('#figure .member.is-asked').count(), 1);
    await page.fill('#picked', 'A-Z');
    await press(page, 'Put them there');
    assert.equal(await page.locator('#figure-says').innerText(), 'There is no member A-Z. Name members by their joints, with commas between them.');
    const [first, second] = hall.members;
    await page.fill('#picked', `${first.a}-${first.b}, ${second.b}${second.a}`);
    await page.fill('#picked', `${first.a}-${first.b}, ${second.a}${second.b}`);
    assert.equal(await page.locator('#figure .member.is-asked').count(), 2);
    await page.selectOption('#into', 'a new group');
    await press(page, 'Put them there');
    assert.match(await page.locator('#groups').innerText(), /group 1/);
    await choose(page);
    assert.equal((await cells(page, '#chosen-table', 0)).includes('group 1'), true);
    await page.fill('#picked', `${first.a}-${first.b}`);
    await page.selectOption('#into', 'none: they keep their sections');
    await press(page, 'Put them there');
    assert.equal(await page.locator('#chosen').isVisible(), false, 'what was chosen is for other groups');
    await press(page, 'Groups by role again');
    assert.doesNotMatch(await page.locator('#groups').innerText(), /group 1/);
    await context.close();
});

test('while the rise is dragged the mass follows, and trusses are kept to be compared', async () => {
    const { page, context } = await arrive(sizes.desktop, linkOf(hall));
    await choose(page);
    await press(page, 'Keep it to compare');
    const before = massOf(await page.locator('#choosing-says').innerText());
    await page.locator('#rise').fill('1.5');
    await page.locator('#figure-says', { hasText: /kg \(/ }).waitFor();
    const after = massOf(await page.locator('#choosing-says').innerText());
    assert.ok(after > before, 'half the rise, larger forces in the chords');
    assert.equal(await page.locator('#figure-says').innerText().then((text) => text.startsWith(`${after}\u00A0kg (+`)), true);
    await press(page, 'Keep it to compare');
    assert.deepEqual((await cells(page, '#compare-table', 1)).map(massOf), [before, after]);
    assert.equal((await cells(page, '#compare-table', 2))[1], `+${after - before}\u00A0kg`);
    await page.locator('#panels').fill('8');
    await page.locator('#figure .member').nth(28).waitFor({ state: 'attached' }); // 4 · 8 − 3 = 29 members
    await context.close();
});

test('a board without joints is shown as one, and asks for a truss', async () => {
    const { page, context } = await arrive(sizes.desktop, linkOf({ gusset: 1, title: 'Empty', joints: [], members: [] }));
    assert.match(await page.locator('#figure-says').innerText(), /There is no member yet/);
    assert.equal(await page.locator('#joint-part').isVisible(), false);
    await context.close();
});

test('a slider that is moved faster than profiles are chosen loses no step', async () => {
    const { page, context } = await arrive(sizes.desktop, linkOf(hall));
    await page.locator('#rise').focus();
    for (let i = 0; i < 3; ++i) {
        await page.keyboard.press('ArrowRight');
    }
    assert.equal(await page.locator('#rise-says').innerText(), '3.3 m');
    await page.locator('#figure-says', { hasText: /kg/ }).waitFor();
    await page.selectOption('#joint', hall.joints.find(({ y }) => y === 3).id);
    await page.waitForFunction(() => document.querySelector('#joint-y').value === '3.3');
    assert.equal(await page.inputValue('#rise'), '3.3');
    await context.close();
});

test('two trusses stand beside each other, and in what they differ is said; those that are kept outlive a reload', async () => {
    const { page, context } = await arrive(sizes.desktop, linkOf(hall));
    await choose(page);
    await press(page, 'Keep it to compare');
    await page.locator('#rise').fill('4');
    await page.locator('#figure-says', { hasText: /kg \(/ }).waitFor();
    await press(page, 'Compare');
    await page.locator('#compared:not([hidden])').waitFor();
    const lines = await page.locator('#compared-lines li').allInnerTexts();
    const ridge = hall.joints.find(({ y }) => y === 3).id;
    assert.ok(lines.includes(`Joint ${ridge}: at (9, 4) in the first, at (9, 3) in the second.`), lines.join(' | '));
    assert.deepEqual((await page.locator('#compared-table tbody tr').nth(1).allInnerTexts())[0].split('\t'), ['Height, m', '4', '3', '−1']);
    assert.equal(await page.locator('#compared svg').count(), 2);
    const widths = await page.locator('#compared svg').evaluateAll((all) => all.map((svg) => // of a panel of the tie: 3 m
        svg.querySelector('path[class^=line]').getBoundingClientRect().width));
    assert.ok(Math.abs(widths[0] - widths[1]) < 0.01 * widths[0], 'to one scale');
    await page.reload();
    await page.locator('html[data-ready]').waitFor();
    assert.equal((await cells(page, '#compare-table', 1)).length, 1);
    await press(page, `Remove 1: Howe roof truss, rise 3 m, 6 panels`);
    assert.equal(await page.locator('#compare-table').isVisible(), false);
    assert.match(await page.locator('#comparing-says').innerText(), /is kept no more/);
    await press(page, 'Compare');
    assert.match(await page.locator('#comparing-says').innerText(), /Paste the link/);
    await page.fill('#compare-link', 'no truss');
    await press(page, 'Compare');
    await page.locator('#comparing-says', { hasText: 'The other truss:' }).waitFor();
    await page.fill('#compare-link', linkTo('footbridge.json'));
    await press(page, 'Compare');
    await page.locator('#compared:not([hidden])').waitFor();
    await context.close();
});

for (const name of ['desktop', 'phone']) {
    test(`on a ${name} a joint is dragged in the drawing, the mass follows, and it is taken back`, async () => {
        const { page, context } = await arrive(sizes[name], linkOf(hall));
        await choose(page);
        const ridge = hall.joints.find(({ y }) => y === 3).id;
        const grip = page.locator(`.grip[data-joint="${ridge}"]`);
        await grip.scrollIntoViewIfNeeded();
        const box = await grip.boundingBox();
        const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
        if (name === 'phone') { // a finger
            const session = await context.newCDPSession(page);
            const touch = (type, y) => session.send('Input.dispatchTouchEvent', { type, touchPoints: type === 'touchEnd' ? [] : [{ x: from.x, y }] });
            await touch('touchStart', from.y);
            await touch('touchMove', from.y - 15);
            await touch('touchMove', from.y - 30);
            await page.locator('#figure .ghost').first().waitFor({ state: 'attached' });
            await touch('touchEnd');
        } else {
            await page.mouse.move(from.x, from.y);
            await page.mouse.down();
            await page.mouse.move(from.x, from.y - 30, { steps: 3 });
            await page.locator('#figure .ghost').first().waitFor({ state: 'attached' });
            await page.mouse.up();
        }
        await page.locator('#figure-says', { hasText: new RegExp(`^${ridge} at \\(9, .*kg \\(`) }).waitFor();
        assert.ok(Number(await page.inputValue('#joint-y')) > 3, 'it went up');
        assert.equal(Number(await page.inputValue('#joint-x')), 9);
        assert.equal(await page.locator('#shape').isVisible(), false, 'it is no more as a form makes it');
        await page.selectOption('#joint', ridge);
        await page.fill('#joint-y', '3,5');
        await press(page, 'Put it there');
        await page.locator('#figure-says', { hasText: `${ridge} at (9, 3.5) m:` }).waitFor();
        await page.fill('#joint-x', '18');
        await page.fill('#joint-y', '0');
        await press(page, 'Put it there');
        await page.locator('#figure-says', { hasText: 'a joint needs a place of its own' }).waitFor();
        await page.fill('#joint-x', 'there');
        await press(page, 'Put it there');
        await page.locator('#figure-says', { hasText: 'two numbers' }).waitFor();
        await press(page, 'As it was');
        await page.locator('#shape:not([hidden])').waitFor();
        assert.equal(await page.inputValue('#rise'), '3');
        await context.close();
    });
}

test('mass over a range is drawn and stands in a table', async () => {
    const { page, context } = await arrive(sizes.desktop, linkOf(hall));
    await page.fill('#from', '1,5');
    await page.fill('#to', '5.5');
    await press(page, 'Draw it');
    await page.locator('#chart svg').waitFor();
    const masses = (await cells(page, '#range-table', 1)).map(massOf);
    assert.equal(masses.length, 9);
    assert.equal(await page.locator('#chart circle').count() + await page.locator('#chart svg > path[stroke="#2a2927"]').count() > 9, true);
    assert.match(await page.locator('#ranging-says').innerText(), /^The lightest of these has a rise of [\d.]+ m: [\d.]+\s*kg\.$/);
    assert.equal(massOf(await page.locator('#ranging-says').innerText()), Math.min(...masses));
    const { text } = await downloaded(page, 'Save the table');
    assert.equal(text.trim().split('\n').length, 10);
    await page.fill('#to', '1');
    await press(page, 'Draw it');
    await page.locator('#ranging-says', { hasText: 'must begin above zero and rise' }).waitFor();
    await context.close();
});

test('a drawing goes out and comes in, with what is missing in it', async () => {
    const { page, context } = await arrive(sizes.desktop, linkOf(hall));
    const { name, text } = await downloaded(page, 'Save its lines as DXF');
    assert.equal(name, 'truss.dxf');
    await press(page, 'Another truss');
    await page.setInputFiles('#drawing-file', { name: 'hall.dxf', mimeType: 'image/vnd.dxf', buffer: Buffer.from(text) });
    await page.locator('#notes li').first().waitFor();
    assert.equal(await page.locator('#figure .member').count(), hall.members.length);
    await press(page, 'Choose the profiles');
    await page.locator('#choosing-says:not(:text("Choosing …"))').waitFor();
    assert.match(await page.locator('#choosing-says').innerText(), /no supports yet/);
    await press(page, 'Another truss');
    await page.setInputFiles('#drawing-file', { name: 'x.dxf', mimeType: 'image/vnd.dxf', buffer: Buffer.from('nothing') });
    await page.locator('#beginning-says:not(:empty)').waitFor();
    await press(page, 'Back');
    assert.equal(await page.locator('#figure .member').count(), hall.members.length, 'what was there stays');
    await context.close();
});

test('the board leads to the page, and a link that is none is said', async () => {
    const { page, context, board } = await openBoard(shared.browser, shared.site.address, sizes.desktop,
        linkTo('footbridge.json'));
    await board.press('Share');
    await board.reveal('Choose profiles');
    await Promise.allSettled([board.press('Choose profiles')]); // the board leaves under the press
    await page.locator('#choosing-title').waitFor();
    await context.close();
    const other = await arrive(sizes.phone, '#m=1.nonsense');
    assert.notEqual(await other.page.locator('#beginning-says').innerText(), '');
    assert.equal(await other.page.locator('#truss-part').isVisible(), false);
    await other.context.close();
});

test('every state can be read and hit by a thumb, in every size, and in both themes', async () => {
    for (const [name, size] of Object.entries(sizes)) {
        for (const colorScheme of name === 'phone' ? ['light', 'dark'] : ['light']) {
            const { page, context } = await arrive(size, linkOf(hall), { colorScheme });
            await choose(page);
            await press(page, 'Keep it to compare');
            await press(page, 'Compare');
            await page.locator('#compared:not([hidden])').waitFor();
            await press(page, 'Draw it');
            await page.locator('#chart svg').waitFor();
            await page.locator('details').evaluateAll((all) => all.forEach((each) => { each.open = true; }));
            assert.deepEqual(await faultsByAxe(page), [], `${name}, ${colorScheme}`);
            assert.deepEqual(await tooSmall(page), [], name);
            await page.evaluate(() => scrollTo(0, 0));
            await screenshot(page, `workshop-${name}-${colorScheme}`);
            await context.close();
        }
    }
});
