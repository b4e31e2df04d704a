// Our page against the bare one: the bytes of a first visit, and how soon each is ready.
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { firstPicture, launch, openPage, root, serve } from '../browser/support.mjs';

const visits = 11; // the pages take turns; medians are printed

function median(values) {
    const sorted = [...values].sort((a, b) => a - b);
    return sorted[Math.floor(sorted.length / 2)];
}

function marks(page) {
    return page.evaluate(() => {
        const at = (name) => performance.getEntriesByName(name)[0].startTime;
        return { ready: at('runtime-ready'), frame: at('first-frame') };
    });
}

const rest = 'gusset-rest.wasm'; // what comes after the first frame

// What a browser fetches for the first frame of a first visit: the size of the files, and compressed as a host may send
// them.
async function bytes(browser, address) {
    const { page, context, responses } = await openPage(browser, address);
    await page.goto(address);
    await firstPicture(page);
    const seen = responses.map((response) => response.url())
        .filter((url) => url.startsWith(address) && !url.endsWith(rest));
    await context.close();
    return weigh(seen);
}

async function weigh(urls) {
    const bodies = await Promise.all(urls.map(async (url) => Buffer.from(await (await fetch(url)).arrayBuffer())));
    const sum = (measure) => bodies.reduce((total, body) => total + measure(body), 0);
    return { raw: sum((body) => body.length), gzip: sum((body) => gzipSync(body, { level: 9 }).length) };
}

// A visit with a fresh profile, and a reload: ms from the start of the navigation.
async function visit(browser, address) {
    const { page, context } = await openPage(browser, address);
    await page.goto(address);
    await firstPicture(page);
    const { ready } = await marks(page);
    await page.reload();
    await firstPicture(page);
    const reload = (await marks(page)).frame;
    await context.close();
    return { ready, reload };
}

function row(what, ours, bare, unit) {
    const cells = [ours, bare].map((value) => `${value.toFixed(0)} ${unit}`.padStart(12));
    console.log(`${what.padEnd(36)}${cells.join('')}${(ours / bare).toFixed(2).padStart(8)}`);
}

const browser = await launch();
const sites = [await serve(), await serve(path.join(root, 'build/bare'))];
const [ours, bare] = sites.map(({ address }) => address);
try {
    const sizes = [await bytes(browser, ours), await bytes(browser, bare)];
    const after = await weigh([ours + rest]);
    const ourVisits = [];
    const bareVisits = [];
    for (let count = 0; count < visits; ++count) {
        ourVisits.push(await visit(browser, ours));
        bareVisits.push(await visit(browser, bare));
    }
    const medians = (key) => [ourVisits, bareVisits].map((all) => median(all.map((one) => one[key])));
    console.log(`${''.padEnd(36)}${'our page'.padStart(12)}${'bare page'.padStart(12)}${'ratio'.padStart(8)}`);
    row('bytes for the first frame, raw', sizes[0].raw, sizes[1].raw, 'B');
    row('bytes for the first frame, gzip', sizes[0].gzip, sizes[1].gzip, 'B');
    row('and with what follows, gzip', sizes[0].gzip + after.gzip, sizes[1].gzip, 'B');
    row('runtime ready, fresh profile', ...medians('ready'), 'ms');
    row('first frame, reload', ...medians('reload'), 'ms');
} finally {
    await browser.close();
    sites.forEach((site) => site.stop());
}
