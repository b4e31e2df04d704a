// A recorder's file as one film that can be cut and gone on with. A recorder writes WebM in one go, from start to stop;
// of its stream, head and clusters are passed on as they come, so that nothing waits in memory: clusters of the film
// after a cut are moved in time, the head has a length, and every cluster and block is where the film says it is.
// Elements and their numbers: RFC 8794 (EBML), RFC 9559 (Matroska), and the WebM container guidelines. Times are in
// ms, which is what the recorders of all browsers write (the default TimestampScale).

const ids = {
    head: 0x1a45dfa3, segment: 0x18538067, info: 0x1549a966, tracks: 0x1654ae6b, cluster: 0x1f43b675,
    time: 0xe7, simpleBlock: 0xa3, blockGroup: 0xa0, block: 0xa1, duration: 0x4489,
    track: 0xae, trackNumber: 0xd7, trackType: 0x83,
};
const pictureKind = 1; // a TrackType
const unknownSize = [0x01, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff];

// An element's id or size at a place; null if it isn't all there yet.
function readNumber(bytes, at, isId) {
    const length = Math.clz32(bytes[at]) - 23;
    if (at >= bytes.length || at + length > bytes.length) {
        return null;
    }
    const first = bytes[at] & (0xff >> length);
    let value = isId ? bytes[at] : first;
    let isUnknown = first === 0xff >> length;
    for (let i = 1; i < length; i += 1) {
        value = value * 256 + bytes[at + i];
        isUnknown = isUnknown && bytes[at + i] === 0xff;
    }
    return { value, length, isUnknown };
}

function elementAt(bytes, at) {
    const id = readNumber(bytes, at, true);
    const size = id && readNumber(bytes, at + id.length, false);
    if (!size) {
        return null;
    }
    const from = at + id.length + size.length;
    return { id: id.value, at, from, to: size.isUnknown ? Infinity : from + size.value };
}

function childrenOf(bytes, { from, to }) {
    const children = [];
    for (let at = from; at < to;) {
        const child = elementAt(bytes, at);
        if (!child) {
            break;
        }
        children.push(child);
        at = child.to;
    }
    return children;
}

function bytesOf(number, count) {
    const bytes = new Uint8Array(count);
    for (let i = count - 1, left = number; i >= 0; i -= 1) {
        bytes[i] = left % 256;
        left = Math.floor(left / 256);
    }
    return bytes;
}

const valueOf = (bytes, { from, to }) => bytes.subarray(from, to).reduce((value, byte) => value * 256 + byte, 0);

const idBytes = (id) => bytesOf(id, id > 0xffffff ? 4 : id > 0xff ? 2 : 1);

export function joined(parts) {
    const all = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
    let at = 0;
    for (const part of parts) {
        all.set(part, at);
        at += part.length;
    }
    return all;
}

export function durationBytes(milliseconds) {
    const bytes = new Uint8Array(8);
    new DataView(bytes.buffer).setFloat64(0, milliseconds);
    return bytes;
}

// What is known about the film so far: its size in bytes, where its duration stands, when its last picture and its last
// block of all begin (ms), how many pictures it has,
// the numbers of its tracks by their kinds, and for each of `marks`, { time }, the place of its first block.
export const emptyFilm = () => ({ size: 0, durationAt: null, lastPicture: 0, lastTime: 0, pictures: 0, tracks: new Map(), marks: [] });

// Takes a recorder's stream, piece by piece, and gives the bytes to add to the film, of which it begins at `start` ms.
export function createJoiner(film, start) {
    const isFirst = film.size === 0;
    let rest = new Uint8Array(0);
    let cluster = 0; // ms
    const kinds = new Map(); // of tracks, by their numbers in this stream; a recorder numbers them as they come

    function infoWithDuration(element) {
        const kept = childrenOf(rest, element).filter(({ id }) => id !== ids.duration).map(({ at, to }) => rest.subarray(at, to));
        const body = joined([...kept, idBytes(ids.duration), [0x88], durationBytes(0)]);
        const info = joined([idBytes(ids.info), [0x01], bytesOf(body.length, 7), body]);
        film.durationAt = film.size + info.length - 8;
        return info;
    }
    function findTracks(element) {
        for (const track of childrenOf(rest, element).filter(({ id }) => id === ids.track)) {
            const fields = childrenOf(rest, track);
            const value = (wanted) => valueOf(rest, fields.find(({ id }) => id === wanted));
            kinds.set(value(ids.trackNumber), value(ids.trackType));
            if (isFirst) {
                film.tracks.set(value(ids.trackType), value(ids.trackNumber));
            }
        }
    }
    // A block, in the film's track of its kind; null if the film has none.
    function blockOf(element) {
        const block = element.id === ids.simpleBlock ? element : childrenOf(rest, element).find(({ id }) => id === ids.block);
        const track = readNumber(rest, block.from, false);
        const kind = kinds.get(track.value);
        if (!film.tracks.has(kind)) {
            return null;
        }
        const since = new DataView(rest.buffer, rest.byteOffset + block.from + track.length).getInt16(0);
        const time = start + cluster + since;
        film.marks.filter((mark) => mark.at === undefined && time >= mark.time).forEach((mark) => { mark.at = film.size; });
        film.lastTime = Math.max(film.lastTime, time);
        if (kind === pictureKind) {
            film.pictures += 1;
            film.lastPicture = Math.max(film.lastPicture, time);
        }
        const bytes = rest.slice(element.at, element.to);
        bytes[block.from - element.at] = 0x80 + film.tracks.get(kind); // of one byte: there are two tracks
        return bytes;
    }
    function partsFor(element) {
        const whole = () => rest.slice(element.at, element.to);
        switch (element.id) {
        case ids.head: return isFirst ? whole() : null;
        case ids.segment: return isFirst ? joined([idBytes(ids.segment), unknownSize]) : null;
        case ids.info: return isFirst ? infoWithDuration(element) : null;
        case ids.tracks:
            findTracks(element);
            return isFirst ? whole() : null;
        case ids.cluster: return joined([idBytes(ids.cluster), unknownSize]);
        case ids.time:
            cluster = valueOf(rest, element);
            return joined([[ids.time, 0x88], bytesOf(Math.round(start + cluster), 8)]);
        case ids.simpleBlock:
        case ids.blockGroup:
            return blockOf(element);
        default: return null; // an index of the stream, which is no index of the film; padding
        }
    }
    return function push(bytes) {
        rest = joined([rest, bytes]);
        const out = [];
        let at = 0;
        for (;;) {
            const element = elementAt(rest, at);
            const isEntered = element?.id === ids.segment || element?.id === ids.cluster; // its children come one by one
            if (!element || (!isEntered && element.to > rest.length)) {
                break;
            }
            const part = partsFor(element);
            if (part) {
                out.push(part);
                film.size += part.length;
            }
            at = isEntered ? element.from : element.to;
        }
        rest = rest.slice(at);
        return joined(out);
    };
}
