// How soon a shared link shows its truss, solved, on a slow phone, and how soon it can be edited: a processor slowed
// down four times, 1.6 Mbit/s, a round trip of 150 ms, an empty cache. For each encoding that a host may serve.
import { launch, linkTo, openPage, serve, sizes } from '../browser/support.mjs';

const visits = 5; // medians are printed
const slow = { offline: false, latency: 150, downloadThroughput: 1.6e6 / 8, uploadThroughput: 0.75e6 / 8 };
const codings = { brotli: 'br', gzip: 'gzip', none: 'identity' };

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

// Marks `on-screen` when the frame drawn at the mark `drawn` has reached the screen.
function watchScreen(drawn) {
    new PerformanceObserver((list) => {
        if (list.getEntriesByName(drawn).length > 0) {
            requestAnimationFrame(() => setTimeout(() => performance.mark('on-screen')));
        }
    }).observe({ type: 'mark', buffered: true });
}

async function visit(browser, address, coding) {
    const { page, context, responses } = await openPage(browser, address, sizes.phone);
    await page.setExtraHTTPHeaders({ 'Accept-Encoding': coding });
    const session = await context.newCDPSession(page);
    await session.send('Network.enable');
    await session.send('Network.emulateNetworkConditions', slow);
    await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    await page.addInitScript(watchScreen, 'first-frame');
    await page.goto(`${address}${linkTo('footbridge.json')}`);
    const marks = ['runtime-ready', 'on-screen', 'can-edit'];
    await page.waitForFunction((names) =>
        names.every((name) => performance.getEntriesByName(name).length > 0), marks, { timeout: 120_000 });
    const times = await page.evaluate((names) =>
        names.map((name) => performance.getEntriesByName(name)[0].startTime), marks);
    const program = responses.find((response) => response.url().endsWith('gusset.wasm'));
    if ((program.headers()['content-encoding'] ?? 'identity') !== coding) {
        throw new Error(`The program did not come as ${coding}.`);
    }
    await context.close();
    return times;
}

const browser = await launch();
const { address, stop } = await serve();
try {
    const heads = ['program runs', 'truss seen', 'can be edited'];
    console.log(`${'a linked truss, cold, slow'.padEnd(36)}${heads.map((head) => head.padStart(15)).join('')}`);
    for (const [name, coding] of Object.entries(codings)) {
        const all = [];
        for (let count = 0; count < visits; ++count) {
            all.push(await visit(browser, address, coding));
        }
        const cells = heads.map((_, i) => `${(median(all.map((one) => one[i])) / 1000).toFixed(2)} s`.padStart(15));
        console.log(`${`  host's coding: ${name}`.padEnd(36)}${cells.join('')}`);
    }
} finally {
    await browser.close();
    stop();
}
