// The program: one instance of the WebAssembly module, and what is known of its ending. It comes in two parts
// (site/split): the first is enough for most boards' first picture, and the rest has all other functions.
import createGusset from './gusset.js';

// Promises: a program that starts again asks neither the network nor a cache.
let first = null;
let rest = null;

class LacksRest extends Error {}

async function compile(name) {
    const response = await fetch(new URL(name, import.meta.url)); // as index.html has the first fetched before
    if (!response.ok) {
        throw new Error(`the server answers ${response.status} for the program`);
    }
    const isNamed = response.headers.get('content-type')?.startsWith('application/wasm');
    // While it comes in, where the server says what it is.
    return isNamed ? WebAssembly.compileStreaming(response) : WebAssembly.compile(await response.arrayBuffer());
}

function compileFirst() {
    first ??= compile('gusset.wasm');
    rest ??= first.then(() => compile('gusset-rest.wasm')); // not before: they would share the line
    return first;
}

// Each part asks the other for its functions by a name that only the two of one build have in common.
async function instantiate(imports) {
    const module = await compileFirst();
    const { module: name } = WebAssembly.Module.imports(module).find((wanted) => !(wanted.module in imports));
    const missing = new Proxy({}, { get: () => () => { throw new LacksRest(); } });
    const instance = await WebAssembly.instantiate(module, { ...imports, [name]: missing });
    // What it does: the table of functions, which both call each other by, is filled.
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
            return {}; // its functions come later
        };
        createGusset({ page, instantiateWasm }).then((module) => resolve(Object.assign(module, { theRest })), reject);
    });
}

// Gives back the module's functions. When one of them aborts, traps or has no memory left, `failed` hears of
// it, once; from then on all of them do nothing, since what the instance remembers may be wrong. With `isEarly` the
// rest need not be there yet: it comes with becomeWhole(), and a call that needs it before ends the program too.
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
            queueMicrotask(failed); // behind what called
            return nothing;
        }
    };
    const names = Object.keys(instance).filter((name) => typeof instance[name] === 'function');
    const program = Object.fromEntries(names.map((name) => [name, guarded(name)]));
    program.hasFailed = () => isOver;
    program.lacksRest = () => lacksRest; // that is why it has
    program.becomeWhole = () => (whole ??= instance.theRest.take());
    if (!isEarly) {
        await program.becomeWhole();
    }

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
