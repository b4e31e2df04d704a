// The minimum of a browser that the program starts in: a canvas whose WebGL2 accepts everything and draws nothing,
// and a page that accepts everything. It lets node run the program's first frames when the page is built.
import { readFileSync } from 'node:fs';
import { sentencesIn } from './sentences.mjs';

const canvas = {};

// Results of calls that the program uses.
const answers = {
    getParameter: (what) => parameters[what] ?? 0,
    getSupportedExtensions: () => [],
    getExtension: () => null,
    getShaderParameter: () => true,
    getProgramParameter: (_, what) => (counts.includes(what) ? 0 : true),
    getShaderInfoLog: () => '',
    getProgramInfoLog: () => '',
    getAttribLocation: () => 0,
    isProgram: () => true,
};
// By the numbers of the OpenGL ES 3.0 specification.
const counts = [0x8B86, 0x8B89]; // of active uniforms and attributes
const parameters = {
    0x1F02: 'WebGL 2.0', 0x8B8C: 'WebGL GLSL ES 3.00', // versions
    0x0BA2: [0, 0, 1, 1], 0x0C10: [0, 0, 1, 1], // viewport, scissor box
};

function answerTo(name) {
    if (answers[name]) {
        return answers[name];
    }
    return String(name).startsWith('create') ? () => ({}) : () => undefined;
}

const context = new Proxy({ canvas }, {
    get: (known, name) => (name in known ? known[name] : answerTo(name)),
});
Object.assign(canvas, { getContext: () => context, addEventListener() {} });
Object.assign(globalThis, { window: globalThis, document: { querySelector: () => canvas }, WebGLRenderingContext: class {} });

// The requests to the page (site/app.js, pageFor) whose results the program uses. `stored` is recorded.
function pageThatTakesAll() {
    const page = { stored: '', canShareLinks: () => true, runWidth: () => 8 };
    page.storeWork = (text) => {
        page.stored = text;
        return true;
    };
    return new Proxy(page, { get: (known, name) => (name in known ? known[name] : () => {}) });
}

// Resolves to a program of this module: { texts, page, write, sentences, said, ...functions }. `write()` returns its
// profile, in the format of wasm-split's instrumentation. Sentences are brought when they are said, and their addresses
// are added to `said`.
export async function startHere(create, file) {
    const page = pageThatTakesAll();
    const module = await WebAssembly.compile(readFileSync(file));
    let exports;
    let sentences;
    const said = new Set();
    const program = await create({
        page,
        printErr() {}, // the message of an abort
        bringSentence(address) {
            const from = address - sentences.begin;
            const text = sentences.bytes.subarray(from, sentences.bytes.indexOf(0, from));
            new Uint8Array(sentences.memory.buffer, address).set(text);
            said.add(address);
        },
        instantiateWasm(imports, done) {
            WebAssembly.instantiate(module, imports).then((instance) => {
                ({ exports } = instance);
                sentences = sentencesIn(exports);
                new Uint8Array(sentences.memory.buffer, sentences.begin, sentences.bytes.length).fill(0);
                done(instance);
            });
            return {};
        },
    });
    const put = (text) => {
        const size = program.lengthBytesUTF8(text) + 1;
        const at = program._malloc(size);
        program.stringToUTF8(text, at, size);
        return at;
    };
    const write = () => {
        const size = exports.__write_profile(0, 0);
        const at = program._malloc(size);
        exports.__write_profile(at, size);
        const { buffer } = Object.values(exports).find((one) => one instanceof WebAssembly.Memory);
        return new Uint8Array(buffer, at, size);
    };
    return { ...program, texts: (all, call) => call(...all.map(put)), page, write, sentences, said };
}
