// Sentences that a first picture does not say come with the second part of the program (site/split/sentences.mjs).
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { sentencesIn, withSentencesMoved } from '../../site/split/sentences.mjs';

const head = [0, 0x61, 0x73, 0x6D, 1, 0, 0, 0];
const text = (name) => [name.length, ...Buffer.from(name)];
const section = (id, ...body) => [id, body.length, ...body];
const address = (value) => [0x41, (value & 127) | 128, value >> 7, 0x0B]; // i32.const, from 64 to 8191
const segment = (at, letters) => [0, ...address(at), letters.length, ...Buffer.from(letters, 'latin1')];
const constant = (value) => [0x7F, 0, ...address(value)];

const begin = 110;
const sentences = 'Hold it\0Tap a joint to put a pin there\0Open\0Nothing is asked here\0';
const end = begin + sentences.length;

// One page of memory that it exports, with data before, in and after the sentences, in two segments.
const firstPart = Buffer.from([...head,
    ...section(5, 1, 0, 1),
    ...section(6, 2, ...constant(begin), ...constant(end)),
    ...section(7, 3, ...text('memory'), 2, 0, ...text('__start_sentences'), 3, 0, ...text('__stop_sentences'), 3, 1),
    ...section(11, 2, ...segment(100, `before\0\0\0\0${sentences.slice(0, 30)}`),
        ...segment(begin + 30, `${sentences.slice(30)}\xE9after`))]);
// The other has the memory too, and one empty function.
const restPart = Buffer.from([...head,
    ...section(1, 1, 0x60, 0, 0),
    ...section(2, 1, ...text('name'), ...text('memory'), 2, 0, 1),
    ...section(3, 1, 0),
    ...section(10, 1, 2, 0, 0x0B)]);

const instance = (module, imports) => new WebAssembly.Instance(new WebAssembly.Module(module), imports);
const memoryOf = ({ exports }) => Buffer.from(exports.memory.buffer).subarray(0, 256).toString('latin1');

function divided(said) {
    const whole = instance(firstPart);
    const [first, rest] = withSentencesMoved(firstPart, restPart, sentencesIn(whole.exports), said);
    const before = instance(first);
    const alone = memoryOf(before);
    instance(rest, { name: before.exports });
    return { whole: memoryOf(whole), alone, together: memoryOf(before), first, rest };
}

const startsOf = (sentence) => begin + sentences.indexOf(sentence);

test('the first part has the sentences that are said, and all that is no sentence', () => {
    const { alone } = divided(new Set([startsOf('Open')]));
    const silent = (letters) => letters.replaceAll(/[^\0]/g, '\0');
    const expected = `${silent(sentences.slice(0, startsOf('Open') - begin))}Open\0${silent('Nothing is asked here')}\0`;
    assert.equal(alone.slice(begin, end), expected);
    assert.equal(alone.slice(100, begin), 'before\0\0\0\0');
    assert.equal(alone.slice(end, end + 6), '\xE9after');
});

test('with the second part every byte is there', () => {
    for (const said of [[], ['Hold it'], ['Tap a joint', 'Nothing is asked here'], sentences.split('\0').slice(0, -1)]) {
        const { whole, together } = divided(new Set(said.map(startsOf)));
        assert.equal(together, whole);
    }
});

test('a sentence that is moved stands in one part only', () => {
    const { first, rest } = divided(new Set([startsOf('Open')]));
    const has = (part, sentence) => part.toString('latin1').includes(sentence);
    assert.deepEqual([has(first, 'Tap a joint'), has(rest, 'Tap a joint')], [false, true]);
    assert.deepEqual([has(first, 'Open'), has(rest, 'Open')], [true, false]);
});

test('data of a form that is not known is refused', () => {
    const passive = Buffer.from([...head, ...section(11, 1, 1, 1, 0x61)]);
    const where = { begin, end, bytes: new Uint8Array(end - begin) };
    assert.throws(() => withSentencesMoved(passive, restPart, where, new Set()), /another form/);
    assert.throws(() => withSentencesMoved(firstPart, firstPart, where, new Set()), /has data already/);
});
