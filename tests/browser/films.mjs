// Readers of what a recording leaves: films by ffmpeg, captions by the grammar of WebVTT.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';

function run(program, words) {
    const { status, stdout, stderr } = spawnSync(program, words, { maxBuffer: 2 ** 28 });
    assert.equal(status, 0, String(stderr));
    return stdout;
}

// The times of a film's pictures or of its pieces of sound, s.
export function timesIn(file, kind) {
    const text = String(run('ffprobe', ['-v', 'error', '-select_streams', kind[0], '-show_entries', 'packet=pts_time', '-of',
        'default=nw=1:nk=1', file]));
    return text.split('\n').filter((line) => line.trim() !== '').map(Number);
}

export const streamsIn = (file) => JSON.parse(run('ffprobe', ['-v', 'error', '-show_streams', '-show_format', '-of', 'json', file]));

const small = 'scale=1280:720:force_original_aspect_ratio=decrease,pad=1280:720:(ow-iw)/2:(oh-ih)/2:color=#fcf9f2,scale=320:180,format=gray';

// Small grey pictures: of a picture's file, or of each picture of a film.
export function greysOf(file) {
    const bytes = run('ffmpeg', ['-v', 'error', '-copyts', '-i', file, '-vsync', 'passthrough', '-vf', small, '-f', 'rawvideo', '-']);
    const size = 320 * 180;
    return Array.from({ length: bytes.length / size }, (_, i) => bytes.subarray(i * size, (i + 1) * size));
}

export function difference(one, other) {
    let sum = 0;
    for (let i = 0; i < one.length; i += 1) {
        sum += Math.abs(one[i] - other[i]);
    }
    return sum / one.length;
}

// The loudest sound within some seconds, dB.
export function loudestIn(file, from, to) {
    const { stderr } = spawnSync('ffmpeg', ['-copyts', '-i', file, '-af', `atrim=${from}:${to},volumedetect`, '-vn', '-f', 'null', '-']);
    return Number(String(stderr).match(/max_volume: (-?[\d.]+) dB/)?.[1] ?? -Infinity);
}

// Cues by the grammar of W3C's "WebVTT: The Web Video Text Tracks Format", section 4.1 (file structure) and 4.2.2 (cue
// text): { from, to, words }. Of what it allows, files of ours have neither comments, styles, identifiers nor settings.
export function cuesOf(vtt) {
    assert.ok(!vtt.includes('\0') && !vtt.includes('\r'));
    const lines = vtt.split('\n');
    assert.equal(lines.shift(), 'WEBVTT');
    const cues = [];
    while (lines.length > 0) {
        assert.equal(lines.shift(), '', 'an empty line before a cue, and at the end');
        if (lines.length === 0) {
            break;
        }
        const timing = lines.shift().match(/^(?:(\d{2,}):)?([0-5]\d):([0-5]\d)\.(\d{3}) --> (?:(\d{2,}):)?([0-5]\d):([0-5]\d)\.(\d{3})$/);
        assert.ok(timing, 'a line of times');
        const secondsOf = ([h = 0, m, s, ms]) => 3600 * Number(h) + 60 * Number(m) + Number(s) + Number(ms) / 1000;
        const [from, to] = [secondsOf(timing.slice(1, 5)), secondsOf(timing.slice(5))];
        assert.ok(to > from, `a cue ends after it begins: ${from}, ${to}`);
        assert.ok(cues.length === 0 || from >= cues.at(-1).from, 'cues stand in their order');
        const text = [];
        while (lines.length > 1 && lines[0] !== '') {
            text.push(lines.shift());
        }
        assert.ok(text.length > 0, 'a cue says something');
        const words = text.join(' ');
        assert.ok(!words.includes('-->') && !words.includes('<'), words);
        assert.ok(!/&(?!(?:amp|lt|gt|lrm|rlm|nbsp);)/.test(words), words);
        cues.push({ from, to, words: words.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&') });
    }
    return cues;
}
