// The exercise in a frame of a page of another origin: what it tells that page, and what it tells nobody.
import assert from 'node:assert/strict';
import { createServer } from 'node:http';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { after, before, test } from 'node:test';
import { linkOf, root, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();
const bridge = JSON.parse(readFileSync(path.join(root, 'site/examples/footbridge.json'), 'utf8'));
const fragment = linkOf({ ...bridge, exercise: { ask: ['reactions'] } });

// The page around the frame, on a port, hence an origin, of its own. It keeps every message with its origin.
let school = null;
before(async () => {
    const server = createServer((request, response) => {
        response.setHeader('content-type', 'text/html');
        const source = new URL(request.url, 'http://x').searchParams.get('source') ?? '';
        response.end(`<!doctype html><title>A course</title><script>
            window.messages = [];
            addEventListener('message', ({ data, origin, source }) => {
                messages.push({ ...data, origin });
                if (data.type === 'gusset-answers') {
                    source.postMessage({ type: 'gusset-received' }, origin);
                }
            });
            </script><iframe title="Exercise" width="320" height="600" src="${source.replace(/"/g, '&quot;')}"></iframe>`);
    });
    await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
    school = { origin: `http://127.0.0.1:${server.address().port}`, stop: () => server.close() };
});
after(() => school?.stop());

async function framed(query, hash = fragment) {
    const context = await shared.browser.newContext(sizes.desktop);
    context.setDefaultTimeout(Number(process.env.PATIENCE ?? 10000));
    const page = await context.newPage();
    const source = `${shared.site.address}exercise/?${new URLSearchParams(query)}${hash}`;
    await page.goto(`${school.origin}/?source=${encodeURIComponent(source)}`);
    const frame = page.frameLocator('iframe');
    await frame.locator('#work:not([hidden])').waitFor();
    return { page, context, frame };
}

const answersIn = (page) => page.evaluate(() => window.messages.filter(({ type }) => type === 'gusset-answers'));

test('the answers go to the page around it when the student hands them in, and to the origin that the link names', async () => {
    const { page, context, frame } = await framed({ frame: school.origin, theme: 'dark' });
    assert.equal(await frame.locator('html').getAttribute('data-theme'), 'dark');
    assert.equal(await frame.locator('header .home').isVisible(), false);
    assert.deepEqual(await frame.locator('html').evaluate((html) => [html.clientWidth <= 320, html.scrollWidth <= 320]), [true, true]);
    await frame.locator('.answer[data-of="A:y"]').getByLabel('size').fill('36');
    await frame.locator('.answer[data-of="A:y"]').getByLabel('up', { exact: true }).check({ force: true });
    await frame.getByRole('button', { name: 'Review and hand in' }).click();
    assert.deepEqual(await answersIn(page), [], 'nothing before the student says so');
    await screenshot(page, 'embedded-dark');
    await frame.getByRole('button', { name: `Hand in to ${new URL(school.origin).host}` }).click();
    await frame.locator('#review-says', { hasText: 'has received your answers' }).waitFor();
    const [message] = await answersIn(page);
    assert.equal(message.origin, new URL(shared.site.address).origin);
    assert.equal(message.version, 1);
    assert.equal(message.variant, 0);
    assert.match(message.exercise, /^[0-9a-f]{8}$/);
    assert.deepEqual(message.answers.reactions, [{ of: 'A:y', size: 36, sign: '+' }]);
    assert.equal(message.code, message.answers.code);
    assert.deepEqual([message.right, message.of], [1, 3]); // A_y = 3 · 24 / 2
    assert.ok(await page.evaluate(() => window.messages.some(({ type, height }) => type === 'gusset-size' && height > 300)));
    await context.close();
});

test('nothing is told to a page whose origin the link does not name, nor to any where it names none', async () => {
    for (const query of [{ frame: 'https://school.example' }, { frame: '*' }, { frame: `${school.origin}/` }, {}]) {
        const { page, context, frame } = await framed(query);
        await frame.getByRole('button', { name: 'Review and hand in' }).click();
        const hand = frame.locator('#hand-over');
        if (await hand.count() > 0) {
            await hand.click();
            await frame.locator('#review-says', { hasText: 'Given to school.example, which has not confirmed it' }).waitFor();
        } else {
            await frame.locator('#review-part:not([hidden])').waitFor();
        }
        assert.deepEqual(await page.evaluate(() => window.messages), [], JSON.stringify(query));
        await context.close();
    }
});

test('the truss alone is shown where the link says so, with or without a question', async () => {
    for (const hash of [fragment, linkOf(bridge)]) {
        const { context, frame } = await framed({ show: 'truss', theme: 'sun' }, hash);
        await frame.locator('#figure svg').waitFor();
        assert.equal(await frame.locator('#answering').isVisible(), false);
        await context.close();
    }
});
