// Pictures of every state at every size, for people to look at: with PICTURES=1, in build/screenshots.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import path from 'node:path';
import { openBoard } from './board.mjs';
import { forPeople, linkTo, openPage, root, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

async function picture(size, fragment, name, prepare = async () => {}, options = {}) {
    const { board, context, page, errors } =
        await openBoard(shared.browser, shared.site.address, { ...size, ...options }, fragment);
    await prepare(board);
    await board.idle();
    await screenshot(page, name);
    assert.deepEqual(errors, []);
    await context.close();
}

for (const [name, size] of Object.entries(sizes)) {
    test(`pictures on a ${name}`, forPeople, async () => {
        await picture(size, '', `demo-${name}`);
        await picture(size, linkTo('missing_diagonal.json'), `mechanism-${name}`);
        await picture(size, linkTo('cottage_roof.json'), `working-${name}`, async (board) => {
            await board.press('Working');
            for (let step = 0; step < 5; ++step) {
                await board.press('Next step');
            }
        });
        await picture(size, '#m=1.abc.9.xyz', `bad-link-${name}`);
    });
}

test('pictures of the dark theme and the one for sunlight, the model’s tables, the page to read', forPeople, async () => {
    await picture(sizes.desktop, '', 'dark', undefined, { colorScheme: 'dark' });
    await picture(sizes.desktop, '', 'sun', undefined, { contrast: 'more' });
    await picture(sizes.desktop, '', 'model', (board) => board.press('Model'));
    await picture(sizes.desktop, '', 'page', async (board) => {
        await board.press('Share');
        await board.reveal('Tables and print');
        await board.press('Tables and print');
    });
});

// For systems that don't take SVG; the maskable one keeps clear of the edge that they crop.
test('icons of every size are made of the one drawing', async () => {
    const svg = readFileSync(path.join(root, 'site/icons/gusset.svg'), 'utf8');
    const icons = { 'gusset-180': [180, 1], 'gusset-192': [192, 1], 'gusset-512': [512, 1], 'gusset-maskable-512': [512, 0.8] };
    for (const [name, [size, share]] of Object.entries(icons)) {
        const page = await shared.browser.newPage({ viewport: { width: size, height: size } });
        await page.setContent(`<style>body { margin: 0; background: #f6f1e4; display: grid; place-items: center;
            height: ${size}px } svg { width: ${Math.round(size * share)}px }</style>${svg}`);
        await screenshot(page, name);
        await page.close();
        const kept = readFileSync(path.join(root, `site/icons/${name}.png`));
        assert.equal(kept.readUInt32BE(16), size, `${name}.png is ${size} wide (PNG, W3C, §11.2.2)`);
    }
});

test('pictures for the manual', forPeople, async () => {
    const once = { deviceScaleFactor: 1 };
    const farm = linkTo('farm_bridge.json');
    const start = await openPage(shared.browser, shared.site.address, { ...sizes.desktop, ...once, atStart: true });
    await start.page.goto(shared.site.address);
    await start.page.locator('#form-put:enabled').waitFor();
    await screenshot(start.page, 'help-start');
    await start.context.close();
    await picture(sizes.desktop, linkTo('cottage_roof.json'), 'help-board', undefined, once);
    await picture(sizes.desktop, farm, 'help-displacements', async (board) => {
        await board.press('Results');
        await board.press('Displacements');
    }, once);
    await picture(sizes.desktop, farm, 'help-influence', async (board) => {
        const [e, f] = [await board.joint('E'), await board.joint('F')];
        await board.tap({ x: (e.x + f.x) / 2, y: (e.y + f.y) / 2 });
        await board.press('Results');
        await board.press('Influence lines');
    }, once);
    await picture(sizes.desktop, linkTo('cottage_roof.json'), 'help-working', async (board) => {
        await board.press('Working');
        for (let step = 0; step < 10; ++step) {
            await board.press('Next step');
        }
    }, once);
});
