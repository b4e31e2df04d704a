// Names in scripts that the embedded typefaces lack are drawn by the browser. Which scripts a machine has typefaces
// for varies: Arabic and Hebrew are in DejaVu Sans, which every Debian desktop includes; for any other the browser
// draws something of its own.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { openBoard } from './board.mjs';
import { linkOf, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

function roofNamed(name) {
    const model = {
        gusset: 1,
        title: 'A roof',
        joints: [['A', 0, 0], ['B', 6, 0], [name, 3, 4]].map(([id, x, y]) => ({ id, x, y })),
        members: [['A', 'B'], ['B', name], [name, 'A']].map(([a, b]) => ({ a, b })),
        supports: [{ joint: 'A', kind: 'pin' }, { joint: 'B', kind: 'roller', reaction: 90 }],
        loads: [{ joint: name, fx: 0, fy: -10 }],
    };
    return linkOf(model);
}

async function pictureOf(name, size = sizes.desktop) {
    const { page, board, context } = await openBoard(
        shared.browser, shared.site.address, size, roofNamed(name));
    await board.idle();
    const picture = (await page.screenshot()).toString('base64');
    const { frames } = await board.observe();
    await page.waitForTimeout(500);
    assert.equal((await board.observe()).frames, frames, 'nothing is drawn while nothing changes');
    await context.close();
    return picture;
}

test('a name in another script is drawn, and not a question mark', async () => {
    const asked = await pictureOf('?');
    assert.equal(await pictureOf('?'), asked); // the same board gives the same picture
    for (const name of ['مفصل', 'צומת', '節点', '👷']) {
        assert.notEqual(await pictureOf(name), asked, name);
    }
});

test('what is typed in another script is drawn as soon as it is there', async () => {
    const { page, board, context } = await openBoard(
        shared.browser, shared.site.address, sizes.desktop, roofNamed('C'));
    await board.press('Model');
    await board.press('joint.2.label');
    const input = page.locator('#field-input');
    await input.waitFor({ state: 'visible' });
    await input.fill('ראש');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Escape');
    await board.idle();
    assert.equal((await board.observe()).model.joints[2].id, 'ראש');
    assert.deepEqual((await board.table('Joints')).map(([label]) => label), ['A', 'B', 'ראש']);
    await context.close();
});
