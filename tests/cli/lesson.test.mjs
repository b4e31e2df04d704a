// Lessons on the command line: slides, captions, pictures, words, and a step that moves.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { after, test } from 'node:test';
import { answered, gusset, root } from './support.mjs';

const bridge = 'site/examples/footbridge.json';
const cases = 'tests/published/cases';
const folder = mkdtempSync(path.join(tmpdir(), 'gusset-lesson-'));
after(() => rmSync(folder, { recursive: true }));

const modelOf = (file) => JSON.parse(readFileSync(path.join(root, file), 'utf8'));
function fileOf(name, model) {
    const file = path.join(folder, `${name}.json`);
    writeFileSync(file, JSON.stringify(model));
    return file;
}
const slidesIn = (html) => html.split('<section class="slide">').slice(1);
const titleOf = (slide) => slide.match(/<title>([^<]*)<\/title>/)[1];
const wordsOf = (slide) => slide.match(/<div class="words"[^>]*>([^]*?)<\/div>/)?.[1] ?? '';
const textOf = (html) => html.replace(/<[^>]*>/g, '');

// By a parser that is not ours.
function assertXml(...texts) {
    const files = texts.map((text, i) => {
        const file = path.join(folder, `drawing${i}.svg`);
        writeFileSync(file, text);
        return file;
    });
    execFileSync('python3', ['-c', 'import sys, xml.etree.ElementTree as tree\nfor f in sys.argv[1:]: tree.parse(f)', ...files]);
    files.forEach((file) => rmSync(file));
}

// WebVTT (W3C, Candidate Recommendation 2019), section 4.1: a signature, then cues between blank lines, each with its
// times in order and a payload without "-->" in which "&" and "<" are escaped.
function cuesOf(vtt) {
    const [head, ...blocks] = vtt.trimEnd().split(/\n{2,}/);
    assert.equal(head, 'WEBVTT');
    let now = 0;
    return blocks.map((block) => {
        const [times, ...payload] = block.split('\n');
        const [, from, to] = times.match(/^(\d{2,}:[0-5]\d:[0-5]\d\.\d{3}) --> (\d{2,}:[0-5]\d:[0-5]\d\.\d{3})$/);
        const [start, end] = [from, to].map((time) => {
            const [hours, minutes, seconds] = time.split(':').map(Number);
            return 3600 * hours + 60 * minutes + seconds;
        });
        assert.ok(start >= now - 1e-9, `${from} is not before ${now}`);
        assert.ok(end > start, times);
        now = end;
        const text = payload.join('\n');
        assert.notEqual(text.trim(), '');
        assert.doesNotMatch(text, /-->|<|&(?!(?:amp|lt|gt);)/);
        return { start, end, text };
    });
}

test('a lesson is slides, one for each stroke or each step, in two shapes', () => {
    const html = answered(['lesson', bridge]);
    assert.equal(html, answered(['lesson', bridge, '--html']));
    const strokes = slidesIn(html);
    assert.ok(strokes.every((slide) => slide.includes('viewBox="0 0 1600 900"') && wordsOf(slide) === ''));
    assert.match(html, /@page \{ size: 1600px 900px; margin: 0; \}/);
    const steps = slidesIn(answered(['lesson', bridge, '--by-step', '--shape', '4:3']));
    assert.ok(steps.every((slide) => slide.includes('viewBox="0 0 1200 900"')));
    // The titles of strokes in a row are those of their steps: an equation and its answer share one.
    assert.ok(steps.length < strokes.length);
    assert.deepEqual(new Set(steps.map(titleOf)), new Set(strokes.map(titleOf)));
    assert.doesNotMatch(html.replaceAll('http://www.w3.org/2000/svg', ''), /https?:|src=|href=|<script/);
});

test('words below the slides are those of the transcript and of the captions', () => {
    const said = (...more) => slidesIn(answered(['lesson', bridge, '--with-words', ...more]))
        .map((slide) => textOf(wordsOf(slide)).trim()).join(' ').replace(/\s+/g, ' ');
    assert.ok(said().length > 1000);
    assert.equal(said('--by-step'), said());
    const titles = new Set(slidesIn(answered(['lesson', bridge])).map(titleOf));
    const transcript = answered(['lesson', bridge, '--text']).split('\n').filter((line) => !titles.has(line)).join(' ');
    const plain = (text) => text.replace(/&amp;/g, '&').replace(/&lt;/g, '<').replace(/&gt;/g, '>').replace(/[.\s]+/g, ' ').trim();
    assert.equal(plain(said()), plain(transcript));
    const captions = cuesOf(answered(['lesson', bridge, '--vtt'])).map(({ text }) => text).join(' ');
    assert.equal(plain(captions), plain(transcript));
});

test('captions are WebVTT for every kind of derivation', () => {
    const derivations = [
        [bridge], [bridge, '--member', 'D-F'], [bridge, '--section', 'B-D,C-D,C-E'], [bridge, '--polygon'],
        [`${cases}/DF-01.json`, '--displacement', 'C:y'], [`${cases}/IN-05.json`], [`${cases}/IN-05.json`, '--force-method'],
        [`${cases}/IL-02.json`, '--influence', 'member:C-G', '--path', 'A,B,C,D,E'],
        [`${cases}/IL-02.json`, '--influence', 'reaction:A:y', '--path', 'A,B,C,D,E'],
    ];
    for (const words of derivations) {
        const cues = cuesOf(answered(['lesson', ...words, '--vtt']));
        assert.ok(cues.length > 3, words.join(' '));
        assert.ok(cues.every(({ text }) => text.length <= 84), words.join(' '));
        assert.equal(cues[0].start, 0);
    }
});

test('pictures are numbered files in the order of the slides, each a drawing of its own', () => {
    const into = path.join(folder, 'pictures');
    const { status, stdout, stderr } = gusset(['lesson', bridge, '--svg', into, '--by-step', '--shape', '4:3']);
    assert.equal(status, 0);
    const files = readdirSync(into).sort();
    const slides = slidesIn(answered(['lesson', bridge, '--by-step', '--shape', '4:3']));
    assert.equal(stdout, `${slides.length} pictures\n`);
    assert.equal(stderr.trim().split('\n').length, slides.length);
    assert.deepEqual(files, slides.map((_, i) => `${String(i + 1).padStart(4, '0')}.svg`));
    const pictures = files.map((file) => readFileSync(path.join(into, file), 'utf8'));
    pictures.forEach((picture, i) => assert.ok(slides[i].startsWith(`\n${picture}`), files[i]));
    assertXml(...pictures);
});

test('a step that moves: its strokes one after the other, without a script, and still for those who want no motion', () => {
    const byName = answered(['lesson', bridge, '--animate', 'joint-sum A y']);
    const steps = slidesIn(answered(['lesson', bridge, '--by-step']));
    const svg = answered(['lesson', bridge, '--animate', '3']);
    const drawn = (text) => text.match(/<title>[^<]*<\/title>/)[0];
    assert.equal(drawn(svg), [...new Set(steps.map(drawn))][2], 'a step may have several slides');
    for (const each of [svg, byName]) {
        assertXml(each);
        const frames = each.split('<g>').length - 1;
        assert.ok(frames >= 2, `${frames} frames`);
        assert.equal(each.match(/@keyframes/g).length, frames);
        assert.doesNotMatch(each, /<script|<animate|<set|on\w+="/);
        assert.match(each, /g\{visibility:hidden\}\ng:last-of-type\{visibility:visible\}\n@media \(prefers-reduced-motion:no-preference\)/);
        assert.match(each, /animation:[\d.]+s step-end 1 forwards/);
    }
    assert.match(answered(['lesson', bridge, '--animate', '3', '--loop', '--shape', '4:3']),
        /viewBox="0 0 1200 900"[^]*s step-end infinite/);
});

const planned = {
    ...modelOf(bridge),
    lesson: { values: 'hidden', shows: [
        { of: 'forces', without: ['count'], pauses: [
            { before: 'whole', says: 'First the whole.' }, { before: 'joint A', says: 'Look at A.', asks: ['A', 'B'] },
            { says: 'That was all of it.' }] },
        { of: 'member', member: ['D', 'F'] }, 'polygon'] },
};

test('the plan of a lesson decides what is shown, unless a derivation is named', () => {
    const file = fileOf('planned', planned);
    const html = answered(['lesson', file, '--with-words']);
    const titles = slidesIn(html).map(titleOf);
    assert.ok(!titles.includes('Count'));
    assert.ok(titles.includes('The force polygon, line by line'));
    const remarks = slidesIn(html).map((slide) => [...wordsOf(slide).matchAll(/<p class="remark">([^<]*)/g)].map(([, text]) => text));
    assert.deepEqual(remarks.flat(), ['First the whole.', 'Look at A.', 'What is the force in AB?', 'That was all of it.']);
    assert.deepEqual(remarks[titles.indexOf('Joint A')], ['Look at A.', 'What is the force in AB?']);
    assert.doesNotMatch(answered(['lesson', file]), /First the whole|What is the force/);
    const one = slidesIn(answered(['lesson', file, '--member', 'D-F'])).map(titleOf);
    assert.ok(!one.includes('The force polygon, line by line'));
    assert.ok(one.length < titles.length);
});

// 48 kN in the tie at A: reaction 36, slope 3 in 4, 36 · 4 / 3.
test('values on the truss are hidden when asked, or when the plan says so', () => {
    const labels = (...words) => {
        const ofA = slidesIn(answered(['lesson', ...words])).filter((slide) => titleOf(slide).startsWith('Joint A'));
        return ofA.flatMap((slide) => [...slide.matchAll(/<text [^>]*>(.*?)<\/text>/g)].map(([, inside]) => textOf(inside)));
    };
    const shows = (list) => list.some((label) => label === '48.00 T');
    assert.equal(shows(labels(bridge)), true);
    assert.equal(shows(labels(bridge, '--hide-values')), false);
    assert.equal(shows(labels(fileOf('hidden', { ...modelOf(bridge), lesson: { shows: ['forces'], values: 'hidden' } }))), false);
});

test('an indeterminate truss is shown by the force method, a mechanism as it moves', () => {
    const indeterminate = slidesIn(answered(['lesson', `${cases}/IN-05.json`, '--by-step']));
    assert.deepEqual(indeterminate.map(titleOf), slidesIn(answered(['lesson', `${cases}/IN-05.json`, '--force-method', '--by-step'])).map(titleOf));
    const { status, stdout, stderr } = gusset(['lesson', 'site/examples/missing_diagonal.json', '--with-words']);
    assert.equal(status, 1);
    assert.match(stderr, /mechanism/);
    assert.equal(titleOf(slidesIn(stdout).at(-1)), 'How it moves');
    assertXml(gusset(['lesson', 'site/examples/missing_diagonal.json', '--animate', '1']).stdout);
});

const gable = { gusset: 1, joints: [{ id: 'A', x: 0, y: 0 }, { id: 'B', x: 4, y: 0 }, { id: 'C', x: 2, y: 1.5 }],
    members: [{ a: 'A', b: 'B' }, { a: 'B', b: 'C' }, { a: 'A', b: 'C' }],
    supports: [{ joint: 'A', kind: 'pin' }, { joint: 'B', kind: 'roller', reaction: 90 }], loads: [{ joint: 'C', fy: -10 }] };

test('a board without joints, or with one, has its slides too', () => {
    for (const joints of [[], [{ id: 'A', x: 0, y: 0 }]]) {
        const { status, stdout, stderr } = gusset(['lesson', '-'], JSON.stringify({ gusset: 1, joints, members: [] }));
        assert.equal(status, gusset(['working', '-'], JSON.stringify({ gusset: 1, joints, members: [] })).status, stderr);
        assert.ok(slidesIn(stdout).length > 0);
    }
});

test('what can’t be done is said, with the name and the cure', () => {
    const refusals = [
        [['--shape', '3:2'], 3, /--shape: is 16:9 or 4:3/],
        [['--loop'], 3, /--loop: goes with --animate/],
        [['--vtt', '--text'], 3, /--vtt.*--text|--text.*--vtt/],
        [['--member', 'A-B', '--polygon'], 3, /--member.*--polygon|--polygon.*--member/],
        [['--svg'], 3, /--svg/],
        [['--member', 'A-Z'], 2, /Z/],
        [['--section', 'A-B,Q-R'], 2, /Q/],
        [['--displacement', 'Z:y'], 2, /Z/],
        [['--influence', 'member:A-B'], 2, /--path A,B,C/],
        [['--influence', 'member:A-Z', '--path', 'A,B'], 2, /Z/],
        [['--influence', 'member:A-B', '--path', 'A,Q'], 2, /Q/],
        [['--animate', '99'], 2, /--animate: there is no such step: give a number from 1 to \d+/],
        [['--animate', 'joint Z'], 2, /--animate: there is no such step/],
        [['--case', 'snow'], 2, /snow/],
        [['--combination', 'winter'], 2, /winter/],
    ];
    for (const [words, exit, says] of refusals) {
        const { status, stdout, stderr } = gusset(['lesson', '-', ...words], JSON.stringify(gable));
        assert.equal(status, exit, `${words.join(' ')}: ${stderr}`);
        assert.equal(stdout, '', words.join(' '));
        assert.match(stderr, says);
    }
});

test('a bad file, a broken plan or a plan with names that are not there: said with its place', () => {
    const lesson = (shows) => JSON.stringify({ ...gable, lesson: { shows } });
    for (const [input, says] of [
        ['{', /./], [JSON.stringify({ ...gable, members: [{ a: 'A', b: 'K' }] }), /K/], [lesson(['waltz']), /lesson.*waltz/],
        [lesson([{ of: 'member', member: ['A', 'Zoe'] }]), /lesson.*Zoe/], [lesson(5), /lesson/],
        [lesson([{ of: 'influence', path: ['A', 'Zoe'], member: ['A', 'B'] }]), /lesson.*Zoe/],
    ]) {
        const { status, stdout, stderr } = gusset(['lesson', '-'], input);
        assert.equal(status, 2, `${input}: ${stderr}`);
        assert.equal(stdout, '');
        assert.match(stderr, says);
    }
    assert.match(gusset(['lesson', 'no/such.json']).stderr, /there is no such file/);
});

test('a folder that can’t be written is said, with exit status 4', () => {
    const taken = fileOf('taken', gable);
    for (const into of [taken, path.join(folder, 'no/such/place'), '/proc/gusset']) {
        const { status, stdout, stderr } = gusset(['lesson', '-', '--svg', into], JSON.stringify(gable));
        assert.equal(status, 4, stderr);
        assert.equal(stdout, '');
        assert.match(stderr, /^gusset: the folder .* could not be written \(.+\): make room, or write it somewhere else\n$/);
    }
    assert.deepEqual(modelOf(path.relative(root, taken)), gable);
});

test('names that would break a drawing or a page are escaped in all of it', () => {
    const odd = JSON.parse(JSON.stringify(gable).replaceAll('"C"', '"<b>&amp;\\"--> "'));
    for (const form of [['--html', '--with-words'], ['--animate', '3'], ['--vtt']]) {
        const text = answered(['lesson', '-', ...form], JSON.stringify(odd));
        assert.doesNotMatch(text, /<b>/);
        if (form[0] === '--animate') {
            assertXml(text);
        } else if (form[0] === '--vtt') {
            cuesOf(text);
        } else {
            assertXml(...text.match(/<svg [^]*?<\/svg>/g));
        }
    }
});
