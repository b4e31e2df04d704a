// The page as a whole: it loads, only from its own origin, and under its content security policy.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { firstFrame, openPage, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

for (const [name, size] of Object.entries(sizes)) {
    test(`the page draws its first frame on a ${name} without an error`, async () => {
        const { page, context, errors, strangers } = await openPage(shared.browser, shared.site.address, size);
        await page.goto(shared.site.address);
        await firstFrame(page);
        await screenshot(page, `start-${name}`);
        assert.deepEqual(errors, []);
        assert.deepEqual(strangers, [], 'nothing is asked of another origin');
        await context.close();
    });
}

test('every file comes with the type that browsers insist on', async () => {
    const { page, context, responses } = await openPage(shared.browser, shared.site.address);
    await page.goto(shared.site.address);
    await firstFrame(page);
    const types = new Map(
        responses.map((response) => [
            new URL(response.url()).pathname,
            response.headers()['content-type'],
        ]),
    );
    assert.match(types.get('/'), /^text\/html/);
    assert.match(types.get('/style.css'), /^text\/css/);
    assert.match(types.get('/app.js'), /^text\/javascript/);
    assert.match(types.get('/gusset.js'), /^text\/javascript/);
    assert.equal(types.get('/gusset.wasm'), 'application/wasm');
    await context.close();
});

test('the content security policy refuses an inline script', async () => {
    const { page, context, errors } = await openPage(shared.browser, shared.site.address);
    await page.goto(shared.site.address);
    await firstFrame(page);
    const ran = await page.evaluate(() => {
        const script = document.createElement('script');
        script.textContent = 'window.inlineScriptRan = true;';
        document.body.append(script);
        return window.inlineScriptRan === true;
    });
    assert.equal(ran, false);
    assert.ok(errors.some((text) => text.includes('Content Security Policy')), errors.join('\n'));
    await context.close();
});

test('without script the page says what it is and what to do', async () => {
    const { page, context } = await openPage(shared.browser, shared.site.address, { javaScriptEnabled: false });
    await page.goto(shared.site.address);
    assert.equal(await page.locator('h1').innerText(), 'Gusset');
    assert.match(await page.locator('main noscript').innerText(), /Allow scripts/);
    await context.close();
});
