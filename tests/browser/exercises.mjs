// What tests of the exercise's page share.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { linkOf, root } from './support.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
export const bridge = JSON.parse(readFileSync(path.join(root, 'site/examples/footbridge.json'), 'utf8'));
export const asking = (exercise) => linkOf({ ...bridge, exercise });

// A page of the exercise's, once it shows one or says why not. `shared`: siteAndBrowser's.
export async function arrive(shared, size, fragment, { address = shared.site.address, ...options } = {}) {
    const context = await shared.browser.newContext({ ...size, ...options });
    context.setDefaultTimeout(Number(process.env.PATIENCE ?? 10000));
    const page = await context.newPage();
    page.on('pageerror', (error) => { throw error; });
    await page.goto(`${address}exercise/${fragment}`);
    await page.locator('#work:not([hidden]), #setting:not([hidden]), #says:has-text(".")').first().waitFor();
    return { page, context };
}

export async function faultsByAxe(page) {
    await page.evaluate(axe);
    const { violations } = await page.evaluate(() => window.axe.run(document,
        { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }));
    return violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)]);
}

// Targets that a thumb would miss, and what is wider than the page.
export const tooSmall = (page) => page.evaluate(() => [
    ...[...document.querySelectorAll('button, select, .choice label, .members label, input[type=text], summary, header a')]
        .filter((one) => one.offsetParent).map((one) => [one.outerHTML.slice(0, 60), one.getBoundingClientRect()])
        .filter(([, box]) => box.height < 44 || box.width < 43.9).map(([html]) => html),
    ...document.documentElement.scrollWidth <= innerWidth ? [] : ['the page']]);
