// The whole browser is killed, as by a phone short of memory or a power failure: what reached the disk is there
// when it starts again.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { after, before, test } from 'node:test';
import { boardOf, dragJoint } from './board.mjs';
import { launchIn, serve, sizes } from './support.mjs';

let site;

before(async () => {
    site = await serve();
});

after(() => site?.stop());

async function openBoardIn(profile) {
    const context = await launchIn(profile);
    const page = context.pages()[0] ?? await context.newPage();
    await page.goto(`${site.address}?test`);
    return { context, page, board: await boardOf(page, sizes.desktop) };
}

// Kills all processes of the browser at once, without a chance to write anything.
async function kill(context, profile) {
    const closed = context.waitForEvent('close').catch(() => {});
    const list = execFileSync('ps', ['-eo', 'pid=,args='], { encoding: 'utf8' }).split('\n');
    for (const line of list.filter((one) => one.includes(`--user-data-dir=${profile}`))) {
        try {
            process.kill(Number.parseInt(line, 10), 'SIGKILL');
        } catch {
            // it has ended together with another
        }
    }
    await closed;
}

// Each kill takes two starts of the browser; KILLS=20 for a longer run.
const kills = Number(process.env.KILLS ?? 3);

test('an edit of which the page knows that it reached the disk survives the death of the browser', async () => {
    const profile = mkdtempSync(path.join(tmpdir(), 'gusset-profile-'));
    const waits = [];
    let opened;
    try {
        for (let round = 0; round < kills; ++round) {
            opened = await openBoardIn(profile);
            const { page, board } = opened;
            await dragJoint(board, 'C', round % 2 === 0 ? 60 : -30, 0); // never back to where it is in the example
            const { model } = await board.observe();
            waits.push(await page.evaluate(async () => {
                const begun = performance.now();
                await window.gussetTest.reachedDisk();
                return performance.now() - begun;
            }));
            await kill(opened.context, profile);
            opened = await openBoardIn(profile);
            const after = await opened.board.observe();
            assert.deepEqual(after.model, model, `round ${round}`);
            assert.match(after.undo, /Move joint C/);
            await kill(opened.context, profile);
        }
    } finally {
        await opened?.context.close(); // else the file would not end when it has failed
        rmSync(profile, { recursive: true, force: true });
    }
    console.log(`after the frames that show an edit its way to the disk took ${waits.map((ms) => ms.toFixed(0))} ms`);
});
