// The sentences of the program (engine/core/phrase) are constants in one section of its data. Those that a first
// picture does not say are taken out of the first part, where zeros remain, and put into the second, which writes
// them into the memory that both share as soon as it is there.
const codeSection = 10;
const dataSection = 11;
const leastGap = 8; // bytes; the header of a segment takes up about as many as a shorter gap would

function readNumber(bytes, at) {
    let value = 0;
    for (let shift = 0; ; shift += 7) {
        const byte = bytes[at++];
        value |= (byte & 127) << shift;
        if (byte < 128) {
            return [value >>> 0, at];
        }
    }
}

function unsigned(value) {
    const bytes = [];
    for (; value > 127; value >>>= 7) {
        bytes.push((value & 127) | 128);
    }
    return [...bytes, value];
}

function signed(value) {
    const bytes = [];
    for (; value < -64 || value > 63; value >>= 7) {
        bytes.push((value & 127) | 128);
    }
    return [...bytes, value & 127];
}

function sectionsOf(module) {
    const sections = [];
    for (let at = 8; at < module.length;) {
        const id = module[at];
        const [size, begin] = readNumber(module, at + 1);
        at = begin + size;
        sections.push({ id, body: module.subarray(begin, at) });
    }
    return sections;
}

const moduleOf = (sections, head) => Buffer.concat([head,
    ...sections.flatMap(({ id, body }) => [Buffer.from([id, ...unsigned(body.length)]), body])]);

// Active segments of the memory, each at a constant address: { address, bytes }.
function segmentsOf(body) {
    let [count, at] = readNumber(body, 0);
    const segments = [];
    for (; count > 0; --count) {
        if (body[at] !== 0 || body[at + 1] !== 0x41) { // of the first memory, i32.const
            throw new Error('the data of the program has another form than is known here');
        }
        let address;
        let size;
        [address, at] = readNumber(body, at + 2); // addresses are below 2^31, so signs don't matter
        [size, at] = readNumber(body, at + 1); // after the end of the expression
        segments.push({ address, bytes: body.subarray(at, at += size) });
    }
    return segments;
}

const dataOf = (segments) => Buffer.concat([Buffer.from(unsigned(segments.length)),
    ...segments.flatMap(({ address, bytes }) =>
        [Buffer.from([0, 0x41, ...signed(address), 0x0B, ...unsigned(bytes.length)]), bytes])]);

// The parts of the segments for which `belongs(address)`.
function partsWhere(segments, belongs) {
    const parts = [];
    for (const { address, bytes } of segments) {
        let begin = -1;
        let end = -1; // after the last byte that belongs
        const take = () => begin >= 0 && parts.push({ address: address + begin, bytes: bytes.subarray(begin, end) });
        for (let at = 0; at < bytes.length; ++at) {
            if (bytes[at] === 0 || !belongs(address + at)) {
                continue; // memory is zero to begin with
            }
            if (begin < 0 || at - end >= leastGap || !isAll(address + end, address + at, belongs)) {
                take();
                begin = at;
            }
            end = at + 1;
        }
        take();
    }
    return parts;
}

function isAll(from, to, belongs) {
    for (let address = from; address < to; ++address) {
        if (!belongs(address)) {
            return false;
        }
    }
    return true;
}

// Where the sentences are, and their bytes, in an instance that has just been created.
export function sentencesIn(exports) {
    const begin = exports.__start_sentences.value;
    const end = exports.__stop_sentences.value;
    const memory = Object.values(exports).find((one) => one instanceof WebAssembly.Memory);
    return { begin, end, memory, bytes: new Uint8Array(memory.buffer, begin, end - begin).slice() };
}

// [first, rest] with the sentences moved; `said` has the addresses of those that stay.
export function withSentencesMoved(first, rest, { begin, end, bytes }, said) {
    const stays = new Set();
    for (const address of said) {
        for (let at = address; bytes[at - begin] !== 0; ++at) {
            stays.add(at);
        }
    }
    const isSentence = (address) => address >= begin && address < end;
    const firstSections = sectionsOf(first);
    const data = firstSections.find(({ id }) => id === dataSection);
    const segments = segmentsOf(data.body);
    const moved = partsWhere(segments, (address) => isSentence(address) && !stays.has(address));
    data.body = dataOf([
        ...segments.filter(({ address, bytes: { length } }) => address + length <= begin || address >= end),
        ...partsWhere(segments.filter(({ address, bytes: { length } }) => address + length > begin && address < end),
            (address) => !isSentence(address) || stays.has(address)),
    ]);
    const restSections = sectionsOf(rest);
    if (restSections.some(({ id }) => id === dataSection)) {
        throw new Error('the second part has data already');
    }
    restSections.splice(restSections.findIndex(({ id }) => id === codeSection) + 1, 0,
        { id: dataSection, body: dataOf(moved) });
    return [moduleOf(firstSections, first.subarray(0, 8)), moduleOf(restSections, rest.subarray(0, 8))];
}
