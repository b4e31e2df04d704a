// Pieces of a recording put together: each piece is a WebM file of its own (a MediaRecorder writes one from start to
// stop), and what comes out is one file with the head of the first and the clusters of all, each moved to its time.
// Elements and their numbers: RFC 8794 (EBML), and the WebM container guidelines, webmproject.org.

const ids = { segment: 0x18538067, cluster: 0x1f43b675, timecode: 0xe7, info: 0x1549a966, scale: 0x2ad7b1, duration: 0x4489 };

// An element's id or size at a place: its value and its length in bytes.
function readNumber(bytes, at, isId) {
    const length = Math.clz32(bytes[at]) - 23;
    if (length > 8 || at + length > bytes.length) {
        return null;
    }
    let value = isId ? bytes[at] : bytes[at] & (0xff >> length);
    let unknown = !isId && value === 0xff >> length;
    for (let i = 1; i < length; i += 1) {
        value = value * 256 + bytes[at + i];
        unknown = unknown && bytes[at + i] === 0xff;
    }
    return { value, length, unknown: unknown && !isId };
}

function elementAt(bytes, at) {
    const id = readNumber(bytes, at, true);
    const size = id && readNumber(bytes, at + id.length, false);
    if (!size) {
        return null;
    }
    const from = at + id.length + size.length;
    return { id: id.value, at, from, to: size.unknown ? null : from + size.value };
}

// Where an element without a size ends: where the next cluster begins.
function endOf(bytes, element) {
    if (element.to !== null) {
        return Math.min(element.to, bytes.length);
    }
    for (let at = element.from; at < bytes.length;) {
        const child = elementAt(bytes, at);
        if (!child || child.id === ids.cluster || child.to === null) {
            return at;
        }
        at = child.to;
    }
    return bytes.length;
}

function numberOf(bytes, { from, to }) {
    let value = 0;
    for (let at = from; at < to; at += 1) {
        value = value * 256 + bytes[at];
    }
    return value;
}

// The head of a file, up to its first cluster, and the clusters: { time (ms), body }, without their own timecodes.
export function partsOf(bytes) {
    const clusters = [];
    let head = bytes.length;
    const walk = (start, end) => {
        for (let at = start; at < end;) {
            const element = elementAt(bytes, at);
            if (!element) {
                return;
            }
            if (element.id === ids.segment) {
                walk(element.from, bytes.length);
                return;
            }
            const to = endOf(bytes, element);
            if (element.id === ids.cluster) {
                head = Math.min(head, at);
                const timecode = elementAt(bytes, element.from); // the first child, by the guidelines
                clusters.push({ time: numberOf(bytes, timecode), body: bytes.subarray(timecode.to, to) });
            }
            at = to;
        }
    };
    walk(0, bytes.length);
    return { head: bytes.subarray(0, head), clusters };
}

// A cluster at a time (ms), with the sizes that it needs.
function clusterBytes(time, body) {
    const size = body.length + 10;
    const head = new Uint8Array(22);
    const view = new DataView(head.buffer);
    view.setUint32(0, ids.cluster);
    view.setUint32(4, 0x01000000 | Math.floor(size / 2 ** 32)); // a size of eight bytes
    view.setUint32(8, size >>> 0);
    head[12] = ids.timecode;
    head[13] = 0x88; // eight bytes
    view.setUint32(14, Math.floor(time / 2 ** 32));
    view.setUint32(18, time >>> 0);
    return [head, body];
}

// The clusters of a piece that begins at `start` ms, as parts of a Blob.
export function movedTo(start, clusters) {
    return clusters.flatMap(({ time, body }) => clusterBytes(Math.round(start + time), body));
}
