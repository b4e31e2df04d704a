// node compress.mjs FOLDER: writes FILE.br and FILE.gz beside each file of a finished site that they make smaller,
// for hosts that serve these. Those of unchanged files are kept.
import { readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';

const [folder] = process.argv.slice(2);
const kinds = {
    '.br': (bytes) => brotliCompressSync(bytes, { params: {
        [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY,
        [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length,
    } }),
    '.gz': (bytes) => gzipSync(bytes, { level: 9 }),
};

const isPacked = (file) => Object.hasOwn(kinds, path.extname(file));
const timeOf = (file) => statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;

const filesIn = (place) => readdirSync(place, { withFileTypes: true }).flatMap((entry) => {
    const here = path.join(place, entry.name);
    return entry.isDirectory() ? filesIn(here) : [here];
});

const files = filesIn(folder);
for (const file of files.filter(isPacked)) { // its file is gone
    if (timeOf(file.slice(0, -3)) === 0) {
        rmSync(file);
    }
}
for (const file of files.filter((name) => !isPacked(name))) {
    for (const [kind, pack] of Object.entries(kinds)) {
        const packed = file + kind;
        if (timeOf(packed) >= timeOf(file)) {
            continue;
        }
        const bytes = readFileSync(file);
        const small = pack(bytes);
        rmSync(packed, { force: true });
        if (small.length < 0.95 * bytes.length) {
            writeFileSync(packed, small);
        }
    }
}
