// The main path through the page in the two other engines: a link is opened and solved, a truss is drawn, the board
// is shared as a link, and all of it works offline.
import assert from 'node:assert/strict';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { test } from 'node:test';
import path from 'node:path';
import { boardOf } from './board.mjs';
import { openFirefox, openWebKit } from './other_browsers.mjs';
import { firstFrame, linkTo, root, serve } from './support.mjs';

const engines = { Firefox: openFirefox, WebKitGTK: openWebKit };

async function picture(page, name) {
    const folder = path.join(root, 'build/screenshots');
    mkdirSync(folder, { recursive: true });
    writeFileSync(path.join(folder, `${name}.png`), await page.screenshot());
}

const inPage = (page, selector) =>
    page.evaluate((wanted) => document.querySelector(wanted)?.textContent, selector);

// The link opens with its own model and its forces: those of the command line's test of this example.
async function opensALink(page, address) {
    await page.goto(`${address}?test${linkTo('cottage_roof.json')}`);
    const board = await boardOf(page, {});
    const wanted = JSON.parse(readFileSync(path.join(root, 'site/examples/cottage_roof.json'), 'utf8'));
    const { model } = await board.observe();
    assert.deepEqual(model.joints.map(({ id }) => id), wanted.joints.map(({ id }) => id));
    assert.match(await inPage(page, '#tables-content p'), /determinate/i);
    assert.equal((await board.table('Member forces')).length, wanted.members.length);
    return board;
}

// One more member, from a joint to a new one, by mouse; then a roller under the new joint, which keeps the truss
// statically determinate: one joint adds two equations, the member and the roller two unknowns.
async function drawsAMember(board) {
    const before = (await board.observe()).model;
    const { joints } = await board.observe();
    const right = joints.reduce((far, joint) => (joint.x > far.x ? joint : far));
    await board.press('Member');
    const end = { x: right.x + 60, y: right.y + 40 };
    await board.drag(right, end);
    const after = (await board.observe()).model;
    assert.equal(after.members.length, before.members.length + 1, 'a member is drawn');
    assert.equal(after.joints.length, before.joints.length + 1);
    const { joints: now } = await board.observe();
    await board.press('Roller');
    await board.tap(now.find(({ label }) => label === after.joints.at(-1).id));
    assert.match(await board.page.evaluate(() => document.querySelector('#tables-content p').textContent),
        /determinate/i);
    return after;
}

// Without the test hook, which is not among the files kept for offline use.
const countMembers = () => [...document.querySelectorAll('#tables-content table')]
    .find((table) => table.caption.textContent.startsWith('Member forces')).tBodies[0].rows.length;

for (const [name, open] of Object.entries(engines)) {
    test(`in ${name} a link opens, a truss is drawn, solved, shared, and kept without a network`, async () => {
        const site = await serve();
        const { page, close } = await open();
        try {
            const board = await opensALink(page, site.address);
            const drawn = await drawsAMember(board);
            await board.press('Share');
            await picture(page, name.toLowerCase());
            await page.waitForFunction(() => navigator.serviceWorker.controller);
            // The address is updated when the board has come to rest. A reload within that half second may come before
            // WebKit's storage process has received what was stored last.
            await page.waitForFunction(() => location.hash.startsWith('#m='));
            site.stop();
            await page.reload();
            await firstFrame(page);
            assert.equal(await page.evaluate(countMembers), drawn.members.length);
        } finally {
            await close();
            site.stop();
        }
    }, { timeout: 120000 });
}
