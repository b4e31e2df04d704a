// A film put together from recorders' streams (site/lesson/webm.js), made and read by hand here.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { createJoiner, durationBytes, emptyFilm, joined } from '../../site/lesson/webm.js';

// An element of RFC 8794: its id as it is written, a size of eight bytes, its content.
const element = (id, ...content) => {
    const body = content.flatMap((each) => [...each]);
    return Uint8Array.from([...id, 0x01, 0, 0, 0, 0, 0, body.length >> 8, body.length & 255, ...body]);
};
const endless = (id) => Uint8Array.from([...id, 0x01, 255, 255, 255, 255, 255, 255, 255]);
const track = (number, kind) => element([0xae], element([0xd7], [number]), element([0x83], [kind]));
const head = (picture, sound) => joined([element([0x1a, 0x45, 0xdf, 0xa3]), endless([0x18, 0x53, 0x80, 0x67]),
    element([0x15, 0x49, 0xa9, 0x66], element([0x4d, 0x80], [65])),
    element([0x16, 0x54, 0xae, 0x6b], track(picture, 1), track(sound, 2))]);
const cluster = (time, ...blocks) => joined([endless([0x1f, 0x43, 0xb6, 0x75]), element([0xe7], [time >> 8, time & 255]), ...blocks]);
const block = (number, since, content) => element([0xa3], [0x80 + number, since >> 8, since & 255, 0x80, content]);

// The blocks of a film, as [track, ms, content], by a reader of its own: every element here has a size of eight bytes
// or, for blocks and tracks, is passed on as above.
function blocksOf(film) {
    const blocks = [];
    const view = new DataView(film.buffer);
    let time = 0;
    for (let at = 0; at < film.length;) {
        const idLength = [0xe7, 0xa3].includes(film[at]) ? 1 : 4;
        if (film[at] === 0xe7) { // a size of one byte and a time of eight
            time = Number(view.getBigUint64(at + 2));
            at += 10;
            continue;
        }
        const size = view.getUint16(at + idLength + 6);
        const from = at + idLength + 8;
        if (film[at] === 0xa3) {
            blocks.push([film[from] - 0x80, time + view.getInt16(from + 1), film[from + 4]]);
        }
        at = size === 0xffff ? from : from + size;
    }
    return blocks;
}

const first = joined([head(1, 2), cluster(0, block(1, 0, 10), block(2, 20, 11), block(1, 1000, 12)), cluster(2000, block(2, 0, 13), block(1, 500, 14))]);

test('a stream is the same film in whatever pieces it comes', () => {
    const whole = createJoiner(emptyFilm(), 0)(first);
    for (const size of [1, 7, 64]) {
        const film = emptyFilm();
        const push = createJoiner(film, 0);
        const parts = [];
        for (let at = 0; at < first.length; at += size) {
            parts.push(push(first.slice(at, at + size)));
        }
        assert.deepEqual(joined(parts), whole);
        assert.equal(film.size, whole.length);
    }
    assert.deepEqual(blocksOf(whole), [[1, 0, 10], [2, 20, 11], [1, 1000, 12], [2, 2000, 13], [1, 2500, 14]]);
});

test('a film that is cut at a mark goes on there, whatever the numbers of the next stream’s tracks', () => {
    const film = emptyFilm();
    const mark = { time: 1900 };
    film.marks.push(mark);
    const before = createJoiner(film, 0)(first);
    assert.deepEqual([film.lastPicture, film.lastTime, film.pictures], [2500, 2500, 3]);
    const kept = before.slice(0, mark.at);
    const after = createJoiner(film, 1900)(joined([head(2, 1), cluster(0, block(2, 0, 20), block(1, 30, 21)), cluster(700, block(2, 10, 22))]));
    assert.deepEqual(blocksOf(joined([kept, after])), [[1, 0, 10], [2, 20, 11], [1, 1000, 12], [1, 1900, 20], [2, 1930, 21], [1, 2610, 22]]);
    assert.equal(film.lastPicture, 2610);
});

test('the head has a place for the length', () => {
    const film = emptyFilm();
    const bytes = createJoiner(film, 0)(first);
    assert.deepEqual([...bytes.slice(film.durationAt - 3, film.durationAt)], [0x44, 0x89, 0x88], 'Duration, eight bytes');
    bytes.set(durationBytes(2540), film.durationAt);
    assert.equal(new DataView(bytes.buffer).getFloat64(film.durationAt), 2540);
    assert.equal(blocksOf(bytes).length, 5);
});
