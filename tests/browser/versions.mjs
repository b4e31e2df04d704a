// A visit to one version of the site while its server moves to another.
import { firstFrame, openPage, sizes } from './support.mjs';
import { openServer } from './upload.mjs';

// An edit of index.html that distinguishes the versions.
export const title = (from, to) => (html) => html.replace(`<h1>${from}</h1>`, `<h1>${to}</h1>`);

// Options for a page that is kept for use without a network.
export const keeping = { serviceWorkers: 'allow' };

export const controlled = (page) => page.waitForFunction(() => navigator.serviceWorker.controller);
export const heading = (page) => page.locator('h1').textContent();
export const cached = (page) => page.evaluate(() => caches.keys());

// The page of the version in this folder, controlled by its worker.
export async function visit(browser, folder, options = sizes.desktop, query = '') {
    const server = await openServer(() => folder);
    const opened = await openPage(browser, server.address, { ...options, ...keeping });
    await opened.page.goto(`${server.address}${query}`);
    await firstFrame(opened.page);
    await controlled(opened.page);
    await opened.page.waitForFunction(async () => (await caches.keys()).length === 1);
    const close = async () => {
        await opened.context.close();
        server.stop();
    };
    return { ...opened, server, close };
}

// Resolves to the state of the worker that the server now has: installed, redundant if it refused, or the browser's
// error for its script.
export const updated = (page) => page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    return new Promise((resolve) => {
        registration.addEventListener('updatefound', () => {
            const worker = registration.installing;
            worker.addEventListener('statechange', () => {
                if (['installed', 'redundant'].includes(worker.state)) {
                    resolve(worker.state);
                }
            });
        });
        registration.update().catch((error) => resolve(error.name));
    });
});

export async function takesUpdate(page) {
    await page.locator('#update').waitFor({ state: 'visible' });
    await Promise.all([page.waitForEvent('load'), page.locator('#update-now').click()]);
    await firstFrame(page);
}
