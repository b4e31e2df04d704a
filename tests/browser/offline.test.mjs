// Without a network, and with a newer version on the server.
import assert from 'node:assert/strict';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { after, before, test } from 'node:test';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { firstFrame, launch, openPage, root, serve } from './support.mjs';

let browser;
let folder; // a copy of the site, to be changed

before(async () => {
    browser = await launch();
});

after(async () => {
    await browser?.close();
    if (folder) {
        rmSync(folder, { recursive: true });
    }
});

const controlled = (page) => page.waitForFunction(() => navigator.serviceWorker.controller);

test('after the first visit the page starts without a network', async () => {
    const site = await serve();
    const { page, context, errors } = await openPage(browser, site.address);
    await page.goto(site.address);
    await firstFrame(page);
    await controlled(page);
    site.stop();
    await page.reload();
    await firstFrame(page);
    assert.match(await page.locator('#tables-content h2').textContent(), /\w/);
    const example = await page.evaluate(async () => (await fetch('examples/footbridge.json')).ok);
    assert.equal(example, true, 'the examples are there too');
    assert.deepEqual(errors, []);
    await context.close();
});

test('a newer version is offered, taken when the person says so, and leaves one cache', async () => {
    folder = mkdtempSync(path.join(tmpdir(), 'gusset-site-'));
    cpSync(path.join(root, 'build/site'), folder, { recursive: true });
    const site = await serve(folder);
    const { page, context } = await openPage(browser, site.address);
    await page.goto(site.address);
    await firstFrame(page);
    await controlled(page);

    const change = (name, edit) => {
        const file = path.join(folder, name);
        writeFileSync(file, edit(readFileSync(file, 'utf8')));
    };
    change('index.html', (html) => html.replace('<h1>Gusset</h1>', '<h1>Gusset, next</h1>'));
    change('sw.js', (script) => script.replace(/version = '\w+'/, "version = 'next'"));
    await page.reload();
    await firstFrame(page);
    assert.equal(await page.locator('h1').textContent(), 'Gusset', 'not forced');

    await page.locator('#update').waitFor({ state: 'visible' });
    await Promise.all([
        page.waitForEvent('load'),
        page.locator('#update-now').click(),
    ]);
    await firstFrame(page);
    assert.equal(await page.locator('h1').textContent(), 'Gusset, next');
    assert.deepEqual(await page.evaluate(() => caches.keys()), ['gusset next']);
    await context.close();
    site.stop();
});
