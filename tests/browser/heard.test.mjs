// What is announced: a truss is drawn, held, loaded, solved, explained and changed by keys alone, and each line that a
// screen reader is given is compared with what was done.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { dragJoint, openBoard } from './board.mjs';
import { linkOf, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

async function open(fragment = '', size = sizes.desktop) {
    const opened = await openBoard(shared.browser, shared.site.address, size, fragment);
    const { page, board } = opened;
    await page.evaluate(() => {
        window.lines = [];
        new MutationObserver(() => window.lines.push(document.getElementById('announcer').textContent))
            .observe(document.getElementById('announcer'), { childList: true });
        document.getElementById('board').focus();
    });
    // What was announced after this key or text; at most one line.
    const strike = async (key) => {
        await page.evaluate(() => { window.lines.length = 0; });
        await page.keyboard.press(key);
        await board.idle();
        const lines = await page.evaluate(() => window.lines);
        assert.ok(lines.length <= 1, `${key}: ${lines.join(' | ')}`);
        return lines[0] ?? '';
    };
    // The same for a value that is typed on the board.
    const type = async (text) => {
        await page.keyboard.press(text[0]);
        await page.locator('#field-input').waitFor({ state: 'visible' });
        await page.keyboard.type(text.slice(1));
        return strike('Enter');
    };
    // In the menu of what is picked.
    const choose = async (label) => {
        let line = await strike('ContextMenu');
        assert.match(line, /, menu\. /);
        for (let i = 0; i < 10 && !line.includes(label); ++i) {
            line = await strike('ArrowDown');
        }
        assert.match(line, /, \d of \d$/);
        assert.ok(line.includes(label), `no line "${label}": ${line}`);
        return strike('Enter');
    };
    return { ...opened, strike, type, choose };
}

// Legs 5 long with a rise of 4 over 3; 20 kN at the top: −12.5 kN in the legs, 12.5 · 3/5 = 7.5 kN in the tie.
test('a truss is drawn, held, loaded, explained, changed and taken back by keys, and every step is heard', async () => {
    const { page, board, context, errors, strike, type, choose } =
        await open(linkOf({ gusset: 1, joints: [], members: [] }));
    assert.match(await choose('Draw a member'), /type: 3, 3 @ 30°/);
    assert.match(await type('6, 0'), /^Done: Draw member\b.*/);
    assert.match(await type('-3, 4'), /^Done: Draw member\b/);
    assert.match(await type('-3, -4'), /^Done: Draw member\b/);
    await strike('Escape');
    assert.deepEqual((await board.observe()).model.joints.length, 3);
    assert.match(await strike('j'), /^Joint A, x /);
    assert.match(await choose('in'), /^Done: Pin at A/);
    assert.match(await strike('j'), /^Joint B, x /);
    assert.match(await choose('oll'), /^Done: Roller at B\. .*determinate/);
    assert.match(await strike('j'), /^Joint C, x /);
    await choose('Load');
    await page.locator('#field-input').waitFor({ state: 'visible' });
    await page.keyboard.type('20');
    assert.match(await strike('Enter'),
        /^Done: Change load at C\. Largest tension now 7\.50\skN in AB, largest compression 12\.50\skN in (BC|CA)\.$/);
    assert.match(await strike('m'), /^Member AB, 6\.00\sm, 7\.50\skN tension$/);
    assert.match(await strike('l'), /^Load at C, size 20, direction down$/);
    assert.match(await strike(' '), /^Step 1 of \d+: /);
    const steps = [];
    for (let line = await strike(' '); line !== ''; line = await strike(' ')) {
        steps.push(line);
    }
    const { length } = steps;
    assert.ok(length > 3, `${length} steps`);
    steps.forEach((line, i) => assert.ok(line.startsWith(`Step ${i + 2} of ${length + 1}: `), line));
    assert.ok(steps.some((line) => /Sum of F y equals 0: A y plus B y minus P C equals 0/.test(line)), 'sums are said in words');
    assert.doesNotMatch(steps.join(' '), /[Σ=·−_↑↓]/, 'and no sign is left');
    await strike('Escape');
    assert.match(await strike('Shift+J'), /^Joint C, /);
    assert.match(await strike('ArrowUp'), /^C moved to \S+, \S+\. Largest tension now /);
    assert.match(await strike('Control+z'), /^Undone: Move joint C\. Largest tension now 7\.50\skN in AB/);
    assert.match(await strike('Control+y'), /^Done again: Move joint C\. /);
    assert.match(await strike('Delete'), /^Done: Remove joint C\. /);
    assert.deepEqual(errors, []);
    await context.close();
});

test('in the panels the item under the focus is heard, with its panel, its state and its columns', async () => {
    const { context, strike } = await open();
    assert.match(await strike('F6'), /^Header: /);
    const tools = await strike('F6');
    assert.match(tools, /^Tools: Select, chosen$/);
    assert.equal(await strike('Tab'), 'Member');
    assert.equal(await strike('Enter'), 'Member, chosen');
    let line = await strike('F6');
    assert.match(line, /^Notebook: /);
    const seen = [];
    for (let i = 0; i < 40 && !/^member \S+, force /.test(line); ++i) {
        line = await strike('Tab');
        seen.push(line);
    }
    assert.match(line, /^member \S+, force \S+, T or C [TC0]/, seen.join(' | '));
    assert.match(await strike('Enter'), /^Member \S+, .* (tension|compression)$|no force$/, 'it is picked');
    assert.equal(await strike('Escape'), 'The board');
    await context.close();
});

test('a drag is announced once, at its end, and what cannot be done with its cure', async () => {
    const { page, board, context } = await open();
    await page.evaluate(() => { window.lines.length = 0; });
    await dragJoint(board, 'C', 60, 0);
    const lines = await page.evaluate(() => window.lines);
    assert.equal(lines.filter((line) => line.startsWith('C moved to ')).length, 1, lines.join(' | '));
    assert.ok(lines.length <= 2, lines.join(' | ')); // the second: that it is picked
    await context.close();
});

test('Ctrl+S saves the board as a file and says so: on the board, in a field and in the tables', async () => {
    const { page, board, context, errors } = await open();
    const saved = async () => {
        const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')]);
        await board.idle();
        const said = await page.locator('#announcer').textContent();
        assert.equal(said, `Saved as ${download.suggestedFilename()}.`);
        return JSON.parse(await (await import('node:fs/promises')).readFile(await download.path(), 'utf8'));
    };
    assert.equal((await saved()).gusset, 1);
    await board.press('Model');
    await board.press('joint.1.x');
    await page.locator('#field-input').waitFor({ state: 'visible' });
    await page.keyboard.type('4.25');
    assert.equal((await saved()).joints[1].x, 4.25, 'what is being typed is in it');
    await page.locator('#skip').focus();
    await page.keyboard.press('Enter');
    await page.locator('[data-cell="page.joint.1.x"]').click();
    await page.keyboard.type('4.5');
    assert.equal((await saved()).joints[1].x, 4.5);
    assert.equal(await page.evaluate(() => document.activeElement.dataset.cell), 'page.joint.1.x');
    assert.deepEqual(errors, []);
    await context.close();
});
