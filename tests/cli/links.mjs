// Makes links of form 1 independently of the engine, so that tests can forge them:
// m=1.<base64url of varint size and raw deflate>.<length>.<CRC-32 in base 36, least digit first>
import zlib from 'node:zlib';

function crc32(text) {
    let crc = 0xffffffff;
    for (const byte of Buffer.from(text)) {
        crc ^= byte;
        for (let bit = 0; bit < 8; ++bit) {
            crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
        }
    }
    return (crc ^ 0xffffffff) >>> 0;
}

function check(base64) {
    let rest = crc32(base64);
    let digits = '';
    for (let i = 0; i < 5; ++i) {
        digits += (rest % 36).toString(36);
        rest = Math.floor(rest / 36);
    }
    return digits;
}

export function sealed(deflated) {
    const size = [];
    let rest = deflated.length;
    for (; rest >= 128; rest = Math.floor(rest / 128)) {
        size.push(128 + (rest % 128));
    }
    size.push(rest);
    const base64 = Buffer.concat([Buffer.from(size), deflated]).toString('base64url');
    return `#m=1.${base64}.${base64.length}.${check(base64)}`;
}

export function deflated(compactJson) {
    return zlib.deflateRawSync(Buffer.from(compactJson), { level: 9 });
}

export function forged(compactJson) {
    return sealed(deflated(compactJson));
}
