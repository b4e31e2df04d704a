// Numbers in narrow columns are shown with all their digits: counted in the pixels.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { openBoard } from './board.mjs';
import { linkOf, screenshot, siteAndBrowser, sizes } from './support.mjs';

const shared = siteAndBrowser();

// Two rafters and a tie under 48 MN and 36 MN; with a slope of 1 the tie carries half of the load in tension:
// 24000.00 kN or 18000.00 kN, eight characters each.
const gable = {
    gusset: 1,
    units: { force: 'kN', length: 'm' },
    joints: [{ id: 'A', x: 0, y: 0 }, { id: 'B', x: 2, y: 0 }, { id: 'C', x: 1, y: 1 }],
    members: [{ a: 'A', b: 'B' }, { a: 'A', b: 'C' }, { a: 'C', b: 'B' }],
    supports: [{ joint: 'A', kind: 'pin' }, { joint: 'B', kind: 'roller', reaction: 90 }],
    loads: [
        { joint: 'C', fx: 0, fy: -48000, case: 'permanent loads' },
        { joint: 'C', fx: 0, fy: -36000, case: 'variable loads' },
    ],
};

// The number of characters in the row in the colour of tension: runs of pixel columns that contain ink.
async function signsInRow(page, row) {
    const reader = await page.context().newPage(); // a blank one, where any picture may be opened
    const picture = (await page.screenshot({
        clip: { x: row.x, y: row.y + 2, width: row.width, height: row.height - 4 },
    })).toString('base64');
    return reader.evaluate(async (png) => {
        const image = await createImageBitmap(
            await (await fetch(`data:image/png;base64,${png}`)).blob());
        const canvas = new OffscreenCanvas(image.width, image.height);
        const context = canvas.getContext('2d');
        context.drawImage(image, 0, 0);
        const { data } = context.getImageData(0, 0, image.width, image.height);
        let signs = 0;
        let before = false;
        for (let x = 0; x < image.width; ++x) {
            let ink = false;
            for (let y = 0; y < image.height; ++y) {
                const at = 4 * (y * image.width + x);
                const [red, green, blue] = [data[at], data[at + 1], data[at + 2]];
                ink ||= blue > green + 50 && red > green; // violet, like nothing else in the row
            }
            signs += ink && !before ? 1 : 0;
            before = ink;
        }
        return signs;
    }, picture);
}

for (const size of ['phone', 'desktop']) {
    test(`the envelope of thousands of kilonewtons keeps their first figures, ${size}`, async () => {
        const link = linkOf(gable);
        const { page, board, context } =
            await openBoard(shared.browser, shared.site.address, sizes[size], link);
        await board.press('Results');
        await board.press('Envelope');
        await board.reveal('row');
        const [[name, tension]] = await board.table('Greatest tension and compression');
        assert.deepEqual([name, tension], ['AB', '24000.00']);
        const row = (await board.observe()).items.find(({ label }) => label === 'row');
        await screenshot(page, `cells-${size}`);
        assert.equal(await signsInRow(page, row), tension.length);
        await context.close();
    });
}
