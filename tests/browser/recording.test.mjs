// A recording of a scripted lesson, decoded: its length, its sound, the picture of each chapter, captions and chapters as
// they were shown, a step taken again; and what is said and kept when something is in the way.
import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { after, test } from 'node:test';
import { cuesOf, difference, greysOf, loudestIn, streamsIn, timesIn } from './films.mjs';
import { faultsByAxe } from './judged.mjs';
import { linkOf, linkTo, root, screenshot, siteAndBrowser, sizes } from './support.mjs';

// A microphone that beeps once a second.
const shared = siteAndBrowser(['--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream']);
const folder = mkdtempSync(path.join(tmpdir(), 'gusset-recording-'));
after(() => rmSync(folder, { recursive: true }));

async function newContext(size = sizes.desktop) {
    const context = await shared.browser.newContext({ ...size, acceptDownloads: true });
    context.setDefaultTimeout(Number(process.env.PATIENCE ?? 30000));
    return context;
}

// A lesson's page that is about to record, with that sound.
async function arrive(context, { before = () => {}, link = linkTo('footbridge.json') } = {}) {
    const page = await context.newPage();
    page.on('pageerror', (error) => { throw error; });
    await page.addInitScript(before);
    await page.goto(`${shared.site.address}lesson/${link}`);
    await page.locator('#picture svg').waitFor();
    return page;
}

async function record(page, sound) {
    await page.locator('#more-open').click();
    await page.locator('#sound').selectOption(sound);
    await page.getByRole('button', { name: 'Record', exact: true }).click();
}

async function saved(page, button, name, place = '#films') {
    const download = page.waitForEvent('download');
    await page.locator(place).getByRole('button', { name: button, exact: true }).click();
    const file = path.join(folder, name);
    await (await download).saveAs(file);
    return file;
}
const savedText = async (...words) => readFileSync(await saved(...words), 'utf8');

const clock = async (page) => (await page.locator('#recording-time').textContent()).split(':')
    .reduce((sum, part) => 60 * sum + Number(part), 0);

// Until the film has a second more of pictures than at the time at which this is asked.
async function filmed(page) {
    const again = page.locator('#again', { hasText: /\d:\d\d/ });
    const [, minutes, seconds] = (await again.textContent()).match(/(\d+):(\d+)/);
    const begun = Math.max(await clock(page), 60 * Number(minutes) + Number(seconds));
    await page.waitForFunction((least) => {
        const [minutes, seconds] = document.getElementById('recording-time').textContent.split(':').map(Number);
        return 60 * minutes + seconds >= least;
    }, begun + 2);
}

const titleOf = async (page) => (await page.locator('#where').textContent()).replace(/^.*?: /, '');
async function nextStep(page) {
    const title = await titleOf(page);
    while (await titleOf(page) === title) {
        await page.keyboard.press('ArrowRight');
    }
}
async function finish(page) {
    await page.locator('#finish').click();
    await page.locator('#films').getByRole('button', { name: 'Save the film' }).waitFor();
}

test('a recorded lesson decodes to its pictures, sound and captions, with a step taken again', async () => {
    const context = await newContext();
    const page = await arrive(context);
    await page.locator('#contents-open').click();
    await page.locator('#contents button').nth(3).click();
    await record(page, 'microphone');
    const shots = [];
    const titles = [];
    const visit = async () => {
        await filmed(page);
        const shot = path.join(folder, `${shots.length}.png`);
        await page.locator('#stage').screenshot({ path: shot, style: '* { outline: none !important; }' }); // the film has no focus
        shots.push(greysOf(shot)[0]);
        titles.push(await titleOf(page));
    };
    await visit();
    await nextStep(page);
    await visit();
    await nextStep(page);
    await visit();
    // The third step is taken again, with a stroke of the pen: the film has it with the stroke only.
    const [before] = shots.splice(2);
    titles.splice(2);
    await page.keyboard.press('t');
    await page.locator('#recording-says', { hasText: 'again from' }).waitFor();
    const [, cutAt] = (await page.locator('#recording-says').textContent()).match(/again from (\d+:\d\d)/);
    await page.keyboard.press('p');
    const stage = await page.locator('#stage').boundingBox();
    await page.mouse.move(stage.x + 60, stage.y + stage.height / 2);
    await page.mouse.down();
    await page.mouse.move(stage.x + stage.width - 60, stage.y + stage.height / 2 + 40, { steps: 5 });
    await page.mouse.up();
    await page.keyboard.press('p');
    await visit();
    await nextStep(page);
    await page.keyboard.press('o'); // the ring
    await page.mouse.move(stage.x + 200, stage.y + 200);
    await visit();
    await screenshot(page, 'lesson-recording');
    await finish(page);
    await screenshot(page, 'lesson-recorded');
    const film = await saved(page, 'Save the film', 'lesson.webm');
    const captions = cuesOf(await savedText(page, 'Captions', 'captions.vtt'));
    const chapters = cuesOf(await savedText(page, 'Chapters', 'chapters.vtt'));
    const list = await savedText(page, 'List of chapters', 'chapters.txt');
    const transcript = await savedText(page, 'Transcript', 'transcript.txt');

    assert.deepEqual(chapters.map(({ words }) => words), titles);
    assert.equal(list, chapters.map(({ from, words }) => `${Math.floor(from / 60)}:${String(Math.floor(from % 60)).padStart(2, '0')} ${words}\n`).join(''));
    const plain = (text) => text.replace(/\s+/g, ' ').trim();
    assert.equal(plain(transcript.split('\n\n').filter((part) => !titles.includes(part.trim())).join(' ')),
        plain(captions.map(({ words }) => words).join(' ')));
    assert.equal(chapters[0].from, 0);
    assert.equal(captions[0].from, 0);
    assert.ok(captions.every(({ from }, i) => i === 0 || Math.abs(from - captions[i - 1].to) < 0.0015), 'one caption after the other');

    const { streams, format } = streamsIn(film);
    assert.deepEqual(streams.map(({ codec_type: type }) => type).sort(), ['audio', 'video']);
    const { to: end } = chapters.at(-1);
    assert.ok(Math.abs(Number(format.duration) - end) < 0.2, `the film says ${format.duration} s, its captions ${end} s`);
    const times = timesIn(film, 'video');
    const sounds = timesIn(film, 'audio');
    assert.ok([times, sounds].every((all) => all.every((time, i) => i === 0 || time >= all[i - 1])), 'times run on');
    assert.ok(times.at(-1) > chapters.at(-1).from && times.at(-1) <= end + 0.1);
    assert.ok(sounds.at(-1) > chapters.at(-1).from && sounds.at(-1) <= end + 0.1);

    // The last picture of each chapter is what the stage showed then, and none shows a step before its chapter.
    const pictures = greysOf(film);
    assert.equal(pictures.length, times.length);
    const nearest = (picture) => {
        const differences = [...shots, before].map((shot) => difference(picture, shot));
        return differences.indexOf(Math.min(...differences));
    };
    chapters.forEach(({ from, to }, i) => {
        const last = times.findLastIndex((time) => time < to - 0.1);
        assert.ok(times[last] >= from, `chapter ${i} has a picture`);
        assert.equal(nearest(pictures[last]), i, `chapter ${i}`);
        // A key picture is coarse, and those after it become fine.
        const finest = Math.min(...pictures.filter((_, k) => times[k] >= from && k <= last).map((picture) => difference(picture, shots[i])));
        assert.ok(finest < 2, `chapter ${i}: ${finest} of 255`);
        const first = times.findLastIndex((time) => time < from - 0.1);
        assert.ok(first < 0 || nearest(pictures[first]) === i - 1, `a picture at ${times[first]} s shows more than chapter ${i - 1}`);
    });
    assert.equal(cutAt, list.split('\n')[2].split(' ')[0], 'the chapter begins where the film was cut');
    // A beep a second.
    assert.ok(loudestIn(film, 0, chapters[2].from) > -40, 'sound before the cut');
    assert.ok(loudestIn(film, chapters[2].from, end) > -40, 'sound after it');
    await context.close();
});

test('without a microphone, the page says so and records nothing', async () => {
    const context = await newContext();
    const page = await arrive(context, { before: () => {
        navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('', 'NotAllowedError'));
    } });
    await record(page, 'microphone');
    await page.locator('#recording-says', { hasText: 'not allowed' }).waitFor();
    assert.equal(await page.locator('#finish').isVisible(), false);
    assert.equal(await page.locator('#record').isDisabled(), false, 'with another sound it can be tried again');
    await context.close();
});

// A browser without files of its own keeps the film in its database; here that has room for some pieces only.
function littleRoom() {
    delete StorageManager.prototype.getDirectory;
    const { put } = IDBObjectStore.prototype;
    let pieces = 0;
    IDBObjectStore.prototype.put = function counted(...words) {
        pieces += 1;
        if (pieces > 6) {
            throw new DOMException('', 'QuotaExceededError');
        }
        return put.apply(this, words);
    };
}

test('when storage is full the recording ends, says so, and all of it can be saved', async () => {
    const context = await newContext();
    const page = await arrive(context, { before: littleRoom });
    await record(page, 'none');
    await page.locator('#recording-says', { hasText: 'There is no room left on this device' }).waitFor();
    const film = await saved(page, 'Save the film', 'full.webm');
    assert.deepEqual(streamsIn(film).streams.map(({ codec_type: type }) => type), ['video']);
    const { to } = cuesOf(await savedText(page, 'Chapters', 'full.vtt')).at(-1);
    const times = timesIn(film, 'video');
    assert.ok(times.at(-1) <= to + 0.1 && times.at(-1) > to - 2.5, `${times.at(-1)} of ${to}`);
    await context.close();
});

test('a hidden page pauses and says so; a page closed in the midst has its film at the next visit', async () => {
    const context = await newContext();
    const page = await arrive(context);
    await record(page, 'none');
    await filmed(page);
    await page.evaluate(() => {
        Object.defineProperty(document, 'hidden', { configurable: true, value: true });
        document.dispatchEvent(new Event('visibilitychange'));
    });
    await page.locator('#recording-says', { hasText: 'hidden' }).waitFor();
    assert.equal(await page.locator('#hold').textContent(), 'Go on');
    await page.keyboard.press('r');
    await page.locator('#recording-says', { hasText: 'Recording.' }).waitFor();
    await nextStep(page);
    await filmed(page);
    const atLeast = await clock(page) - 1;
    const titles = [await titleOf(page)];
    await page.close();

    const later = await arrive(context);
    await later.locator('#recording-says', { hasText: 'a recording on this device' }).waitFor();
    await screenshot(later, 'lesson-recording-left');
    const film = await saved(later, 'Save the film', 'left.webm');
    assert.ok(timesIn(film, 'video').at(-1) >= atLeast);
    assert.ok(Number(streamsIn(film).format.duration) >= atLeast, 'the film says its length');
    const chapters = cuesOf(await savedText(later, 'Chapters', 'left.vtt'));
    assert.equal(chapters.length, 2);
    assert.equal(chapters[1].words, titles[0]);
    await later.locator('#films').getByRole('button', { name: 'Delete' }).click();
    await later.locator('#recorder').waitFor({ state: 'hidden' });
    await later.close();
    const last = await arrive(context);
    await last.locator('#more-open').click();
    assert.equal(await last.locator('#record').isDisabled(), false);
    assert.equal(await last.locator('#films button').count(), 0);
    await context.close();
});

// Its last two strokes take 16 s to be said.
test('a silent film turns at the pace of the spoken words, and ends with them', async () => {
    const bridge = JSON.parse(readFileSync(path.join(root, 'site/examples/footbridge.json'), 'utf8'));
    const context = await newContext();
    const page = await arrive(context, { link: linkOf({ ...bridge, lesson: { shows: [{ of: 'member', member: ['A', 'C'] }] } }) });
    await page.keyboard.press('End');
    await page.keyboard.press('ArrowLeft');
    await record(page, 'words');
    await page.locator('#recording-says', { hasText: 'Recorded' }).waitFor({ timeout: 120_000 });
    assert.equal(await page.locator('#next').isDisabled(), true);
    const captions = cuesOf(await savedText(page, 'Captions', 'words.vtt'));
    await page.locator('#more-open').click();
    const all = cuesOf(await savedText(page, 'Captions', 'paced.vtt', '#paced'));
    const words = (cues) => cues.map((cue) => cue.words);
    assert.deepEqual(words(captions), words(all).slice(-captions.length), 'the last of those that nobody recorded');
    await context.close();
});

test('where only MP4 can be recorded, a step taken again begins a second film', async () => {
    const context = await newContext();
    const page = await arrive(context, { before: () => {
        const { isTypeSupported } = MediaRecorder;
        MediaRecorder.isTypeSupported = (type) => !type.includes('webm') && isTypeSupported.call(MediaRecorder, type);
    } });
    await record(page, 'none');
    await page.waitForFunction(() => document.getElementById('recording-time').textContent > '0:01');
    await page.getByRole('button', { name: 'Again as a second film' }).click();
    await page.locator('#recording-says', { hasText: 'a second one begins' }).waitFor();
    await page.waitForFunction(() => document.getElementById('recording-time').textContent > '0:01');
    await page.locator('#finish').click();
    await page.locator('#films p').nth(1).waitFor();
    for (const i of [0, 1]) {
        const film = await saved(page, 'Save the film', `${i}.mp4`, `#films p:nth-child(${i + 1})`);
        assert.ok(timesIn(film, 'video').length > 0);
    }
    await context.close();
});

test('on a phone the controls fit and can be hit', async () => {
    const context = await newContext(sizes.phone);
    const page = await arrive(context);
    await page.locator('#more-open').tap();
    await page.locator('#sound').selectOption('none');
    await screenshot(page, 'lesson-recording-phone-more');
    await page.getByRole('button', { name: 'Record', exact: true }).tap();
    await filmed(page);
    const judge = async () => {
        const little = await page.locator('button:visible, select:visible').evaluateAll((all) => all
            .filter((each) => Math.min(each.getBoundingClientRect().height, each.getBoundingClientRect().width) < 43.9)
            .map((each) => each.outerHTML));
        assert.deepEqual(little, []);
        assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), 390);
        assert.deepEqual(await faultsByAxe(page), []);
    };
    await judge();
    await screenshot(page, 'lesson-recording-phone');
    await page.locator('#finish').tap();
    await page.locator('#films').getByRole('button', { name: 'Save the film' }).waitFor();
    await judge();
    await screenshot(page, 'lesson-recorded-phone');
    const film = await saved(page, 'Save the film', 'phone.webm');
    const [{ width, height }] = streamsIn(film).streams;
    assert.deepEqual([width, height], [720, 1280], 'upright, as the phone');
    await context.close();
});

// An hour of a recorder's chunks, one a second, through the joiner into the keeper.
async function hourOf({ name, withFiles }) {
    if (!withFiles) {
        delete StorageManager.prototype.getDirectory;
    }
    const { createKeeper } = await import('./keeper.js');
    const { createJoiner, emptyFilm } = await import('./webm.js');
    const film = emptyFilm();
    const push = createJoiner(film, 0);
    const keeper = await createKeeper(name);
    await keeper.cut(0);
    const tracks = [0x16, 0x54, 0xae, 0x6b, 0x88, 0xae, 0x86, 0xd7, 0x81, 1, 0x83, 0x81, 1];
    const pieces = 3600;
    const size = 20_000;
    let sent = 0;
    for (let i = 0; i < pieces; i += 1) {
        // A cluster of one second with one block: its time, and a picture of some size.
        const cluster = new Uint8Array(size + 24);
        cluster.set([0x1f, 0x43, 0xb6, 0x75, 0x01, 255, 255, 255, 255, 255, 255, 255, 0xe7, 0x84]);
        const view = new DataView(cluster.buffer);
        view.setUint32(14, 1000 * i);
        cluster.set([0xa3, 0x20 | (size + 2) >> 16, (size + 2) >> 8, size + 2, 0x81, 0], 18);
        const out = push(i === 0 ? Uint8Array.from([...tracks, ...cluster]) : cluster);
        sent += out.length;
        await keeper.append(out);
    }
    const { size: kept } = await keeper.film();
    await keeper.cut(0);
    await keeper.rest();
    return { kept, sent, pictures: film.pictures, last: film.lastPicture };
}

test('an hour of recording leaves the memory as it was', async () => {
    for (const withFiles of [true, false]) {
        const context = await newContext();
        const page = await arrive(context);
        const tools = await context.newCDPSession(page);
        const memory = async () => {
            await tools.send('HeapProfiler.collectGarbage');
            const { usedSize, backingStorageSize = 0 } = await tools.send('Runtime.getHeapUsage');
            return usedSize + backingStorageSize;
        };
        const before = await memory();
        const { kept, sent, pictures, last } = await page.evaluate(hourOf, { name: 'test', withFiles });
        assert.equal(kept, sent, 'all of it is kept');
        assert.equal(pictures, 3600);
        assert.equal(last, 3_599_000);
        const grown = await memory() - before;
        assert.ok(kept > 70e6 && grown < 2e6, `${grown} bytes more after ${kept} recorded`);
        await context.close();
    }
});
