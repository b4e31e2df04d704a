// A recording of a scripted lesson, decoded: its length, its sound, the picture of each chapter, captions and chapters
// at the times at which they were shown.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { after, before, test } from 'node:test';
import { launch, linkTo, serve, sizes } from './support.mjs';

const shared = {};
before(async () => {
    shared.site = await serve();
    // A microphone that beeps once a second.
    shared.browser = await launch(['--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream']);
});
after(async () => {
    await shared.browser?.close();
    shared.site?.stop();
});

const folder = mkdtempSync(path.join(tmpdir(), 'gusset-recording-'));

function run(program, words) {
    const { status, stdout, stderr } = spawnSync(program, words, { maxBuffer: 2 ** 28 });
    assert.equal(status, 0, String(stderr));
    return stdout;
}

// A small grey picture, whatever the size of what it is made from, with the bars that the film has beside it.
const grey = (input) => [...run('ffmpeg', ['-v', 'error', ...input, '-frames:v', '1', '-vf',
    'scale=1280:720:force_original_aspect_ratio=decrease,pad=1280:720:(ow-iw)/2:(oh-ih)/2:color=#fcf9f2,scale=320:180,format=gray',
    '-f', 'rawvideo', '-'])];
const difference = (one, other) => one.reduce((sum, value, i) => sum + Math.abs(value - other[i]), 0) / one.length;

const secondsOf = (time) => time.split(':').reduce((sum, part) => 60 * sum + Number(part), 0);
function cuesOf(vtt) {
    const [head, ...blocks] = vtt.trim().split('\n\n');
    assert.equal(head, 'WEBVTT');
    return blocks.map((block) => {
        const [times, ...words] = block.split('\n');
        const [, from, to] = times.match(/^(\d\d:\d\d:\d\d\.\d{3}) --> (\d\d:\d\d:\d\d\.\d{3})$/);
        assert.ok(words.length > 0 && words.every((line) => line !== '' && !line.includes('-->')));
        return { from: secondsOf(from), to: secondsOf(to), words: words.join(' ') };
    });
}

async function saved(page, button, name) {
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: button }).click();
    const file = path.join(folder, name);
    await (await download).saveAs(file);
    return file;
}

// Until so many seconds are recorded.
const recorded = (page, seconds) => page.waitForFunction((least) =>
    Number(document.getElementById('recording-says').textContent.match(/Recording: (\d+) s/)?.[1]) >= least, seconds);

test('a recorded lesson decodes to its pictures, sound and captions', async () => {
    const context = await shared.browser.newContext({ ...sizes.desktop, acceptDownloads: true });
    context.setDefaultTimeout(Number(process.env.PATIENCE ?? 20000));
    const page = await context.newPage();
    page.on('pageerror', (error) => { throw error; });
    await page.goto(`${shared.site.address}lesson/${linkTo('footbridge.json')}`);
    await page.locator('#picture svg').waitFor();
    await page.locator('#contents-open').click();
    await page.locator('#contents button').nth(2).click();
    await page.locator('#more-open').click();
    await page.getByRole('button', { name: 'Record', exact: true }).click();
    await page.keyboard.press('Escape');
    const pictures = [];
    const steps = [];
    let number = 0;
    const visit = async (shown) => {
        number += 2;
        await recorded(page, number);
        const shot = path.join(folder, `step${shown}.png`);
        await page.locator('#picture').screenshot({ path: shot });
        pictures[shown] = shot;
        steps[shown] = (await page.locator('#where').textContent()).replace(/^.*?: /, '');
    };
    const nextStep = async () => {
        const title = (await page.locator('#where').textContent()).replace(/^.*?: /, '');
        while ((await page.locator('#where').textContent()).endsWith(`: ${title}`)) {
            await page.keyboard.press('ArrowRight');
        }
    };
    await visit(0);
    await nextStep();
    await visit(1);
    await nextStep();
    await visit(2);
    await page.evaluate(() => document.getElementById('finish').click());
    await page.locator('#recording-says', { hasText: 'Recorded' }).waitFor({ state: 'attached' });
    await page.locator('#more-open').click();
    const film = await saved(page, 'Save the film', 'lesson.webm');
    const captions = cuesOf(readFileSync(await saved(page, 'Captions', 'captions.vtt'), 'utf8'));
    const chapters = cuesOf(readFileSync(await saved(page, 'Chapters', 'chapters.vtt'), 'utf8'));

    assert.deepEqual(chapters.map(({ words }) => words), steps);
    const streams = JSON.parse(run('ffprobe', ['-v', 'error', '-show_streams', '-of', 'json', film])).streams;
    assert.deepEqual(streams.map(({ codec_type: type }) => type).sort(), ['audio', 'video']);
    // Decoded to the end, as a film whose head knows no length: the last time that ffmpeg reports.
    const packets = String(run('ffprobe', ['-v', 'error', '-select_streams', 'v', '-show_entries', 'packet=pts_time', '-of',
        'default=nw=1:nk=1', film])).split('\n').filter((line) => line !== '').map(Number);
    assert.ok(packets.every((time, i) => i === 0 || time >= packets[i - 1]), 'times run on');
    const { to: end } = chapters.at(-1);
    const sound = String(run('ffprobe', ['-v', 'error', '-select_streams', 'a', '-show_entries', 'packet=pts_time', '-of',
        'default=nw=1:nk=1', film])).trim().split('\n').map(Number);
    assert.ok(Math.abs(sound.at(-1) - end) < 0.7, `${sound.at(-1)} s of ${end} s`);
    assert.ok(packets.at(-1) > chapters.at(-1).from, 'there is a picture in the last chapter');
    assert.equal(captions[0].from, 0);
    assert.ok(captions.every(({ from }, i) => i === 0 || Math.abs(from - captions[i - 1].to) < 0.0015));
    assert.equal(captions.at(-1).to, end);

    const shots = pictures.map((shot) => grey(['-i', shot]));
    chapters.forEach(({ from, to }, i) => {
        const frame = grey(['-ss', String((from + to) / 2), '-i', film]);
        const differences = shots.map((shot) => difference(frame, shot));
        assert.equal(differences.indexOf(Math.min(...differences)), i, `${i}: ${differences}`);
    });
    const loudest = String(spawnSync('ffmpeg', ['-i', film, '-af', 'volumedetect', '-f', 'null', '-']).stderr)
        .match(/max_volume: (-?[\d.]+) dB/);
    assert.ok(Number(loudest[1]) > -40, `the tone is there: ${loudest[1]} dB`);
    writeFileSync(path.join(folder, 'done'), '');
    await context.close();
});

test('without a microphone, the page says so and records nothing', async () => {
    const context = await shared.browser.newContext(sizes.desktop);
    const page = await context.newPage();
    await page.addInitScript(() => {
        navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('', 'NotAllowedError'));
    });
    await page.goto(`${shared.site.address}lesson/${linkTo('footbridge.json')}`);
    await page.locator('#picture svg').waitFor();
    await page.locator('#more-open').click();
    await page.getByRole('button', { name: 'Record', exact: true }).click();
    await page.locator('#recording-says', { hasText: 'not allowed' }).waitFor();
    assert.equal(await page.getByRole('button', { name: 'Finish' }).isDisabled(), true);
    await context.close();
});
