// The program: one instance of the WebAssembly module, and what is known of its ending.
import createGusset from './gusset.js';

let compiled = null; // a promise: a program that starts again asks neither the network nor a cache

async function compile() {
    const response = await fetch(new URL('gusset.wasm', import.meta.url)); // as index.html has it fetched before
    if (!response.ok) {
        throw new Error(`the server answers ${response.status} for the program`);
    }
    const isNamed = response.headers.get('content-type')?.startsWith('application/wasm');
    // While it comes in, where the server says what it is.
    return isNamed ? WebAssembly.compileStreaming(response) : WebAssembly.compile(await response.arrayBuffer());
}

async function instantiate(imports) {
    compiled ??= compile();
    return WebAssembly.instantiate(await compiled, imports);
}

function create(page) {
    return new Promise((resolve, reject) => {
        const instantiateWasm = (imports, done) => {
            instantiate(imports).then(done).catch(reject);
            return {}; // its functions come later
        };
        createGusset({ page, instantiateWasm }).then(resolve, reject);
    });
}

// Gives back the module's functions. When one of them aborts, traps or has no memory left, `failed` hears of
// it, once; from then on all of them do nothing, since what the instance remembers may be wrong.
export async function startProgram(page, failed) {
    const instance = await create(page);
    let isOver = false;

    const guarded = (name) => (...all) => {
        const nothing = name === 'UTF8ToString' ? '' : 0;
        if (isOver) {
            return nothing;
        }
        try {
            return instance[name](...all);
        } catch (error) {
            isOver = true;
            console.error(error);
            queueMicrotask(failed); // behind what called
            return nothing;
        }
    };
    const names = Object.keys(instance).filter((name) => typeof instance[name] === 'function');
    const program = Object.fromEntries(names.map((name) => [name, guarded(name)]));
    program.hasFailed = () => isOver;

    // Texts go in as zero-ended UTF-8.
    program.withTexts = (texts, call) => {
        const addresses = texts.map((text) => {
            const size = program.lengthBytesUTF8(text) + 1;
            const address = program._malloc(size);
            if (address === 0) {
                program._gussetAbort(); // there is no memory left
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
