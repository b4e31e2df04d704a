// What tests of the exercise's page share.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { linkOf, root, undisturbed } from './support.mjs';

export const bridge = JSON.parse(readFileSync(path.join(root, 'site/examples/footbridge.json'), 'utf8'));
export const asking = (exercise) => linkOf({ ...bridge, exercise });

// A page of the exercise's, once it shows one or says why not. `shared`: siteAndBrowser's.
export async function arrive(shared, size, fragment, { address = shared.site.address, ...options } = {}) {
    const context = await shared.browser.newContext({ ...undisturbed, ...size, ...options });
    context.setDefaultTimeout(Number(process.env.PATIENCE ?? 10000));
    const page = await context.newPage();
    page.on('pageerror', (error) => { throw error; });
    await page.goto(`${address}exercise/${fragment}`);
    await page.locator('#work:not([hidden]), #setting:not([hidden]), #says:has-text(".")').first().waitFor();
    return { page, context };
}
