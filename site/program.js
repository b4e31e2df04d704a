// The program: one instance of the WebAssembly module, and whether it has failed. It comes in two parts
// (site/split): the first is enough for the first picture of most boards, and the rest has all other functions and
// sentences.
import createGusset from './gusset.js';

// Promises: a program that restarts needs neither the network nor a cache.
let first = null;
let rest = null;

class LacksRest extends Error {}

async function compile(name) {
    const response = await fetch(new URL(name, import.meta.url)); // the same request as index.html's preload
    if (!response.ok) {
        throw new Error(`the server answers ${response.status} for the program`);
    }
    const isNamed = response.headers.get('content-type')?.startsWith('application/wasm');
    // Compiled while it downloads, if the server gives its type.
    return isNamed ? WebAssembly.compileStreaming(response) : WebAssembly.compile(await response.arrayBuffer());
}

function compileFirst() {
    first ??= compile('gusset.wasm');
    if (rest === null) {
        rest = first.then(() => compile('gusset-rest.wasm')); // not earlier: they would compete for bandwidth
        rest.catch(() => {}); // becomeWhole() fails then: a report from here could be covered by the picture's message
    }
    return first;
}

// Each part imports the other's functions under a name that only the two parts of one build share.
async function instantiate(imports) {
    const module = await compileFirst();
    const { module: name } = WebAssembly.Module.imports(module).find((wanted) => !(wanted.module in imports));
    const missing = new Proxy({}, { get: () => () => { throw new LacksRest(); } });
    const instance = await WebAssembly.instantiate(module, { ...imports, [name]: missing });
    // Its effect is to fill the table of functions, through which the parts call each other.
    const take = async () => WebAssembly.instantiate(await rest, { [name]: instance.exports });
    return { instance, take };
}

function create(page) {
    return new Promise((resolve, reject) => {
        const theRest = {};
        const instantiateWasm = (imports, done) => {
            instantiate(imports).then(({ instance, take }) => {
                theRest.take = take;
                done(instance);
            }).catch(reject);
            return {}; // its exports come later
        };
        const bringSentence = () => { throw new LacksRest(); };
        createGusset({ page, instantiateWasm, bringSentence }).then((module) => resolve(Object.assign(module, { theRest })), reject);
    });
}

// Resolves to the module's functions. When one of them aborts, traps or runs out of memory, `failed` is called,
// once; from then on they all do nothing, since the instance's memory may be corrupt. With `isEarly` the rest need
// not be loaded yet: it comes with becomeWhole(), and an earlier call that needs it ends the program too.
export async function startProgram(page, failed, { isEarly = false } = {}) {
    const instance = await create(page);
    let isOver = false;
    let lacksRest = false;
    let whole = null; // a promise

    const guarded = (name) => (...all) => {
        const nothing = name === 'UTF8ToString' ? '' : 0;
        if (isOver) {
            return nothing;
        }
        try {
            return instance[name](...all);
        } catch (error) {
            isOver = true;
            lacksRest = error instanceof LacksRest;
            if (lacksRest) {
                performance.mark('waited-for-the-rest');
            } else {
                console.error(error);
            }
            queueMicrotask(failed); // after the caller has returned
            return nothing;
        }
    };
    const names = Object.keys(instance).filter((name) => typeof instance[name] === 'function');
    const program = Object.fromEntries(names.map((name) => [name, guarded(name)]));
    program.hasFailed = () => isOver;
    program.lacksRest = () => lacksRest; // the reason for the failure
    program.becomeWhole = () => (whole ??= instance.theRest.take());
    if (!isEarly) {
        await program.becomeWhole();
    }

    // Texts go in as zero-terminated UTF-8.
    program.withTexts = (texts, call) => {
        const addresses = texts.map((text) => {
            const size = program.lengthBytesUTF8(text) + 1;
            const address = program._malloc(size);
            if (address === 0) {
                program._gussetAbort(); // out of memory
            }
            program.stringToUTF8(text, address, size);
            return address;
        });
        const result = call(...addresses);
        addresses.forEach((address) => program._free(address));
        return result;
    };
    return program;
}
