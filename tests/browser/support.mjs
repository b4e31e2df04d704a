// What every browser test needs: the site on a free port, Chromium, a monitored page.
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { createInterface } from 'node:readline';
import path from 'node:path';
import { after, before } from 'node:test';
import { chromium } from 'playwright-core';

export const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
const screenshots = path.join(root, 'build/screenshots');

// The fragment that opens an example, as if written by hand.
export function linkTo(example) {
    return linkOf(JSON.parse(readFileSync(path.join(root, 'site/examples', example), 'utf8')));
}

export const linkOf = (model) => `#j=${encodeURIComponent(JSON.stringify(model))}`;

// A beam, as the simplest board with that title.
export const beam = (title) => ({ gusset: 1, title, joints: [{ id: 'A', x: 0, y: 0 }, { id: 'B', x: 3, y: 0 }],
    members: [{ a: 'A', b: 'B' }] });

// The page sizes that are tested, in CSS pixels.
export const sizes = {
    desktop: { viewport: { width: 1366, height: 768 }, deviceScaleFactor: 1 },
    tablet: { viewport: { width: 1024, height: 768 }, deviceScaleFactor: 2, hasTouch: true },
    phone: {
        viewport: { width: 390, height: 844 },
        deviceScaleFactor: 3,
        hasTouch: true,
        isMobile: true,
    },
};

function chromiumPath() {
    const candidates = [process.env.CHROMIUM, '/usr/bin/chromium', '/usr/bin/google-chrome'];
    const found = candidates.find((candidate) => candidate && existsSync(candidate));
    if (!found) {
        throw new Error('No Chromium here: run site/setup --tests, or name one in CHROMIUM.');
    }
    return found;
}

// Serves a folder on a free port. Resolves to { address, stop }.
export async function serve(folder = path.join(root, 'build/site')) {
    const server = spawn(
        'python3',
        [path.join(root, 'site/static_server.py'), folder, '--port', '0'],
        { stdio: ['ignore', 'pipe', 'inherit'] },
    );
    for await (const line of createInterface({ input: server.stdout })) {
        const address = line.match(/http:\/\/\S+/)?.[0];
        if (address) {
            return { address, stop: () => server.kill() };
        }
    }
    throw new Error('The static server ended before it was listening.');
}

// WebGL2 by SwiftShader, so that no graphics card is needed; and no background requests by the browser.
function launchOptions(more = []) {
    return {
        executablePath: chromiumPath(),
        args: [
            '--headless',
            '--no-sandbox',
            '--disable-quic',
            '--no-first-run',
            '--disable-background-networking',
            '--disable-component-update',
            '--disable-sync',
            '--use-angle=swiftshader',
            '--enable-unsafe-swiftshader',
            ...more,
        ],
    };
}

export function launch(more) {
    return chromium.launch(launchOptions(more));
}

// What a page does beside its work takes the processor from all tests: a first visit fetches the whole site for use
// without a network, and a mechanism moves for seconds. Tests of these ask for them.
export const undisturbed = { serviceWorkers: 'block', reducedMotion: 'reduce' };

// Pages of this context open the board directly, as a tab does in which somebody has left the start page before.
function openBoardFirst(context) {
    return context.addInitScript(() => {
        try {
            if (history.state === null) {
                history.replaceState({ view: 'board' }, '');
            }
        } catch {
            // about:blank has no history to write to
        }
    });
}

// A browser whose profile is in this folder.
export async function launchIn(profile, options = sizes.desktop, more = []) {
    const context = await chromium.launchPersistentContext(profile, { ...launchOptions(more), ...undisturbed, ...options });
    context.setDefaultTimeout(Number(process.env.PATIENCE ?? 10000));
    await openBoardFirst(context);
    return context;
}

// The site and Chromium for all tests of a file: call it once, at the file's top level; both are available when the
// first test runs.
export function siteAndBrowser(more) {
    const shared = { site: null, browser: null };
    before(async () => {
        shared.site = await serve();
        shared.browser = await launch(more);
    });
    after(async () => {
        await shared.browser?.close();
        shared.site?.stop();
    });
    return shared;
}

// A page in a fresh profile, and a record of what it should not have done: `errors` from the console or uncaught,
// `strangers` requested from outside `address`. With `atStart` a bare address opens the start page, as it does for
// everybody who comes for the first time.
export async function openPage(browser, address, { atStart = false, ...options } = sizes.desktop) {
    const context = await browser.newContext({ ...undisturbed, ...options });
    if (!atStart) {
        await openBoardFirst(context);
    }
    context.setDefaultTimeout(Number(process.env.PATIENCE ?? 10000));
    const page = await context.newPage();
    const errors = [];
    const strangers = [];
    const responses = [];
    page.on('console', (message) => {
        if (message.type() === 'error') {
            errors.push(message.text());
        }
    });
    page.on('pageerror', (error) => errors.push(String(error)));
    context.on('request', (request) => {
        const url = new URL(request.url());
        if (url.protocol.startsWith('http') && url.origin !== new URL(address).origin) {
            strangers.push(request.url());
        }
    });
    context.on('response', (response) => responses.push(response));
    return { page, context, errors, strangers, responses };
}

// Waits until the page has drawn its first picture, which can't be edited yet.
export function firstPicture(page) {
    return page.waitForFunction(() => performance.getEntriesByName('first-frame').length > 0);
}

// Waits until the page has drawn its first frame and the board can be edited.
export function firstFrame(page) {
    return page.waitForFunction(() => performance.getEntriesByName('can-edit').length > 0);
}

// For tests that only make pictures for people; other tests open the same states.
export const forPeople = { skip: process.env.PICTURES ? false : 'made with PICTURES=1' };

// Saves a picture under build/screenshots for a person to look at.
export async function screenshot(page, name) {
    mkdirSync(screenshots, { recursive: true });
    await page.screenshot({ path: path.join(screenshots, `${name}.png`) });
}
