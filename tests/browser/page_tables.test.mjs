// The model is created and changed in the page's own tables, by keyboard only, with and without the board.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { test } from 'node:test';
import { emptyBoard, openBoard } from './board.mjs';
import { firstFrame, linkTo, openPage, root, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

const cell = (page, key) => page.locator(`[data-cell="page.${key}"]`);

// By keys only, once the first cell has the focus: Enter opens it and goes down, Tab goes on.
async function typeTriangle(page) {
    await cell(page, 'joint.0.x').focus();
    await page.keyboard.press('Enter');
    for (const x of ['0', '6', '3']) {
        await page.keyboard.type(x);
        await page.keyboard.press('Enter');
    }
    await page.keyboard.press('Escape');
    await cell(page, 'joint.2.y').focus();
    await page.keyboard.press('Enter');
    await page.keyboard.type('4');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Escape');
    const rows = { 'member.0.ends': ['AB', 'BC', 'CA'], 'support.0.joint': ['A', 'B'], 'load.0.joint': ['C'] };
    for (const [key, texts] of Object.entries(rows)) {
        await cell(page, key).focus();
        await page.keyboard.press('Enter');
        for (const text of texts) {
            await page.keyboard.type(text);
            await page.keyboard.press('Enter');
        }
        await page.keyboard.press('Escape');
    }
    await cell(page, 'load.0.first').focus();
    await page.keyboard.press('Enter');
    await page.keyboard.type('10');
    await page.keyboard.press('Enter');
}

const forces = (page) => page.evaluate(() => {
    const table = [...document.querySelectorAll('#tables-content table')].find((one) =>
        one.caption.textContent.startsWith('Member forces'));
    return table && [...table.tBodies[0].rows].map((row) => [...row.cells].slice(0, 2).map((one) => one.textContent));
});

// As in drawing.test.mjs: legs 5 long with a rise of 4 over 3; 10 kN at the top; two pins would make it statically
// indeterminate, so the second is changed into a roller.
test('a triangle is typed, held, loaded and solved without the board', async () => {
    const { page, board, context, errors } = await openBoard(shared.browser, shared.site.address, sizes.desktop);
    await emptyBoard(board);
    await page.locator('#skip').focus();
    await page.keyboard.press('Enter');
    await typeTriangle(page);
    const { model } = await board.observe();
    assert.equal(model.joints.length, 3);
    const kind = page.locator('[data-press="page.support.1.kind"]');
    if ((await kind.textContent()) === 'pin') {
        await kind.focus();
        await page.keyboard.press('Enter');
    }
    assert.deepEqual(await forces(page), [['AB', '3.75'], ['BC', '−6.25'], ['CA', '−6.25']]);
    assert.deepEqual(errors, []);
    await context.close();
});

test('a text that cannot be read is explained in sight, and stays to be mended', async () => {
    const { page, board, context } = await openBoard(shared.browser, shared.site.address, sizes.phone);
    const before = (await board.observe()).model;
    await page.locator('#skip').focus();
    await page.keyboard.press('Enter');
    await cell(page, 'joint.1.x').click();
    await page.keyboard.type('about three');
    await page.keyboard.press('Enter');
    assert.equal(await cell(page, 'joint.1.x').getAttribute('aria-invalid'), 'true');
    assert.ok(await page.locator('#announcer').isVisible());
    assert.match(await page.locator('#announcer').textContent(), /about three|number/i);
    assert.deepEqual((await board.observe()).model, before);
    await page.keyboard.press('Control+a');
    await page.keyboard.type('3.5');
    await page.keyboard.press('Enter');
    assert.equal((await board.observe()).model.joints[1].x, 3.5);
    assert.equal(await page.evaluate(() => document.activeElement.dataset.cell), 'page.joint.2.x', 'Enter goes down');
    await context.close();
});

test('without WebGL2 the tables are the way to work', async () => {
    const { page, context } = await openPage(shared.browser, shared.site.address, sizes.desktop);
    await page.addInitScript(() => {
        HTMLCanvasElement.prototype.getContext = () => null;
    });
    await page.goto(shared.site.address);
    await firstFrame(page);
    const before = await forces(page);
    await page.locator('[data-press="page.load.0.remove"]').click();
    assert.notDeepEqual(await forces(page), before);
    await context.close();
});

const tables = async (page, board) => {
    await page.locator('#skip').focus();
    await page.keyboard.press('Enter');
    await board.idle();
};

test('typing on a cell begins an edit, and undo and redo are on the page, by buttons and by keys', async () => {
    const { page, board, context, errors } = await openBoard(shared.browser, shared.site.address, sizes.desktop);
    const before = (await board.observe()).model;
    await tables(page, board);
    await cell(page, 'joint.1.x').focus();
    await page.keyboard.type('4.5');
    await page.keyboard.press('Enter');
    assert.equal((await board.observe()).model.joints[1].x, 4.5);
    await page.keyboard.press('Escape'); // the cell below, which has an undo of its own while it is typed in
    await page.keyboard.press('Control+z');
    assert.deepEqual((await board.observe()).model, before);
    assert.match(await page.locator('#announcer').textContent(), /^Undone: Move joint B/);
    await page.locator('[data-press="page.redo"]').click();
    assert.equal((await board.observe()).model.joints[1].x, 4.5);
    await page.locator('[data-press="page.undo"]').focus();
    await page.keyboard.press('Enter');
    assert.deepEqual((await board.observe()).model, before);
    assert.equal(await page.evaluate(() => document.activeElement.dataset.press), 'page.undo', 'the focus stays');
    assert.deepEqual(errors, []);
    await context.close();
});

test('numbers of a column stand below each other by their decimal signs', async () => {
    const { page, board, context } = await openBoard(shared.browser, shared.site.address, sizes.desktop);
    await tables(page, board);
    await cell(page, 'joint.1.x').focus();
    await page.keyboard.type('4.125');
    await page.keyboard.press('Enter');
    await board.idle();
    // Where the last figure before the decimal sign ends, in px.
    const ends = await page.evaluate(() => [...document.querySelectorAll('[data-cell^="page.joint."][data-cell$=".x"]')]
        .filter((one) => one.classList.contains('number'))
        .map((one) => {
            const range = document.createRange();
            const text = one.firstChild;
            const point = text.data.search(/[.,]/);
            range.setStart(text, 0);
            range.setEnd(text, point < 0 ? text.length : point);
            return range.getBoundingClientRect().right;
        }));
    assert.ok(ends.length > 4);
    assert.ok(Math.max(...ends) - Math.min(...ends) < 1, ends.join(', '));
    await context.close();
});

// The command line's own table of the same model.
function printed(example) {
    const gusset = process.env.GUSSET ?? path.join(root, 'build/dev/engine/gusset');
    const { stdout } = spawnSync(gusset, ['solve', path.join(root, 'site/examples', example)], { encoding: 'utf8' });
    return stdout;
}

for (const example of ['footbridge.json', 'farm_bridge.json', 'porch_roof.json']) {
    test(`the tables of ${example} hold what the command line prints`, async () => {
        const { page, board, context } =
            await openBoard(shared.browser, shared.site.address, sizes.desktop, linkTo(example));
        await tables(page, board);
        const rows = await page.evaluate(() => [...document.querySelectorAll('#tables-content table:not(.model)')]
            .filter((one) => /^(Member forces|Reactions)/.test(one.caption.textContent))
            .flatMap((one) => [...one.tBodies[0].rows].map((row) => [...row.cells].map((it) => it.textContent))));
        const text = printed(example);
        assert.ok(rows.length > 5);
        for (const row of rows) {
            const pattern = row.map((one) => one.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('\\s+');
            assert.match(text, new RegExp(`^\\s*${pattern}\\s*$`, 'm'));
        }
        await context.close();
    });
}

// Of the results, which come before the working and its own tables.
const resultCaptions = (page) => page.locator('#tables-content').evaluate((content) => {
    const working = [...content.querySelectorAll('h3')].find(({ textContent }) => textContent === 'The working');
    const isBefore = (one) => working.compareDocumentPosition(one) & Node.DOCUMENT_POSITION_PRECEDING;
    return [...content.querySelectorAll('table:not(.model) caption')].filter(isBefore)
        .map(({ textContent }) => textContent);
});

test('what is asked for is made, with the choices of the notebook, and captions of results name their loads', async () => {
    const { page, board, context, errors } =
        await openBoard(shared.browser, shared.site.address, sizes.desktop, linkTo('farm_bridge.json'));
    await tables(page, board);
    const ask = async (label, answer) => {
        await page.locator('label', { hasText: new RegExp(`^${label} `) }).first().locator('select')
            .selectOption({ label: answer });
        await board.idle();
    };
    const captions = () => page.locator('#tables-content caption').allTextContents();
    const { model } = await board.observe();
    const [combination] = model.combinations;
    const envelope = /tension and compression of each member/i;
    await ask('Under', combination.id);
    const ofResults = await resultCaptions(page);
    assert.ok(ofResults.length >= 2, 'reactions and forces');
    for (const caption of ofResults) {
        assert.ok(caption.includes(`under ${combination.id}`), caption);
    }
    await page.locator('button', { hasText: 'Show: Envelope' }).click();
    await board.idle();
    await page.locator('caption', { hasText: envelope }).first().waitFor();
    await ask('Working of', 'Force');
    await ask('About', 'Member AB');
    await page.locator('#tables-content h4').first().waitFor();
    assert.equal((await board.observe()).selected.members, 1);
    await page.locator('button', { hasText: 'Hide: Envelope' }).click();
    await board.idle();
    assert.ok(!(await captions()).some((one) => envelope.test(one)));
    assert.deepEqual(errors, []);
    await context.close();
});

test('on paper no column is hidden behind an edge', async () => {
    const { page, board, context } =
        await openBoard(shared.browser, shared.site.address, sizes.phone, linkTo('farm_bridge.json'));
    await tables(page, board);
    await page.emulateMedia({ media: 'print' });
    const overflow = await page.locator('#tables-content').evaluate((one) => getComputedStyle(one).overflowX);
    assert.equal(overflow, 'visible');
    await context.close();
});
