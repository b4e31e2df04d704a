// node split.mjs gusset.js OUT WASM_SPLIT EXAMPLES: splits the program, gusset.wasm beside gusset.js, into two
// files in the folder OUT. gusset.wasm has what the first picture needs, gusset-rest.wasm the other functions.
//
// Which functions these are is not listed anywhere: the program is run here, on a page that draws nothing, with the
// boards that people open first, and Binaryen's wasm-split records each function that is called. A board that needs
// another one waits for the rest before its first picture (site/program.js). Sentences are divided in the same way.
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { startHere } from './bare_page.mjs';
import { withSentencesMoved } from './sentences.mjs';

const [script, out, wasmSplit, examples] = process.argv.slice(2);
// These need more than the method of joints, or have checks and moving loads: what is added for them is a tenth of
// what the others need.
const later = ['braced_tower.json', 'farm_bridge.json', 'missing_diagonal.json'];
const settled = 8; // frames, after which nothing changes any more
const sizes = [
    { width: 1366, height: 768, ratio: 1, preferences: 0 },
    { width: 390, height: 844, ratio: 3, preferences: 15 }, // all of them: dark, touched, …
];

const split = (...options) => execFileSync(wasmSplit, options, { stdio: ['ignore', 'inherit', 'inherit'] });
const whole = path.join(path.dirname(script), 'gusset.wasm');
const probe = path.join(out, 'probe.wasm');

// As site/app.js starts it: reads what is stored, puts the board there, opens the link and draws.
function showBoard(program, { size, link = '', work = '' }) {
    if (work !== '') {
        program.texts([work], program._gussetReads);
    }
    const page = program.texts(['http://localhost/', work, ''], (...all) => program._gussetStart(...all, 0));
    program._gussetWorkingInPageText(page, 0);
    program._gussetViewport(size.width, size.height, size.ratio, 0, size.preferences);
    const isHere = program.texts([link], (text) => program._gussetTakeAddress(page, text)) === 1;
    if (link !== '' && !isHere) {
        program.texts([link, ''], (...all) => program._gussetOpened(...all, 1)); // openedFrom.link
    }
    if (!program._gussetDraws(page)) {
        throw new Error('the program does not draw here');
    }
    for (let count = 0; count < settled; ++count) {
        program._gussetFrame(page, size.width * size.ratio, size.height * size.ratio);
    }
    return page;
}

// A program that fails in its first frame must fail at once, and not wait for the rest.
function fail(program) {
    try {
        program._gussetAbort();
    } catch {
        // as it should
    }
}

// The page without a link; and each example by a handwritten link at every size, by a generated one, and as saved work.
async function boardsOpenedFirst(create) {
    const { examples: index } = JSON.parse(readFileSync(path.join(examples, 'index.json'), 'utf8'));
    const files = index.map(({ file }) => file).filter((file) => !later.includes(file));
    const boards = sizes.map((size) => ({ size }));
    for (const [at, file] of files.entries()) {
        const program = await startHere(create, whole);
        const model = JSON.stringify(JSON.parse(readFileSync(path.join(examples, file), 'utf8')));
        const size = sizes[at % sizes.length];
        const written = { size, link: `#j=${encodeURIComponent(model)}` };
        const page = showBoard(program, written);
        const ours = program.texts([''], (now) => program.UTF8ToString(program._gussetAddress(page, now)));
        program._gussetLeave(page);
        boards.push({ size, link: `#${ours}` }, { size, link: `#${ours}`, work: program.page.stored });
        boards.push(...sizes.map((each) => ({ ...written, size: each }))); // what has room differs
    }
    return boards;
}

mkdirSync(out, { recursive: true });
const module = path.join(out, 'gusset.mjs'); // its extension tells node that it is a module
copyFileSync(script, module);
split('--instrument', whole, '-o', probe);
const { default: create } = await import(pathToFileURL(module));
const profiles = [];
const said = new Set(); // addresses of sentences
let sentences;
for (const board of await boardsOpenedFirst(create)) {
    const program = await startHere(create, probe);
    showBoard(program, board);
    fail(program);
    program.said.forEach((address) => said.add(address));
    ({ sentences } = program);
    profiles.push(path.join(out, `${profiles.length}.profile`));
    writeFileSync(profiles.at(-1), program.write());
}
const profile = path.join(out, 'first.profile');
split('--merge-profiles', ...profiles, '-o', profile);
// Both parts use a hash of the program in the names of their imports, so that parts of different builds don't fit.
const parts = ['gusset.wasm', 'gusset-rest.wasm'].map((file) => path.join(out, file));
const name = createHash('sha256').update(readFileSync(whole)).digest('hex').slice(0, 8);
split(whole, `--profile=${profile}`, '--enable-mutable-globals', '--export-prefix=%',
    `--placeholder-namespace=${name}`, `--import-namespace=${name}`,
    '-o1', parts[0], '-o2', parts[1]);
withSentencesMoved(...parts.map((file) => readFileSync(file)), sentences, said)
    .forEach((part, at) => writeFileSync(parts[at], part));
