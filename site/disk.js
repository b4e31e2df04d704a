// A further copy of the work, in IndexedDB. Local storage accepts it at once, but the browser writes that to disk
// seconds later: if the whole browser is killed, or the power fails, those seconds are lost. What is put here is on
// its way to the disk when the write is done ('strict'), which takes some milliseconds.
const store = 'work'; // place → the text with its number, as in local storage
// ms: then the page starts without it. A slow device may take seconds, after a failure above all, when only this copy is
// left; a database that hangs is rare.
const patience = 5000;
const longestWrite = 3000; // ms: then it counts as stuck

function done(request) {
    return new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
    });
}

let database = null; // a promise; null before it is opened, or if it must be reopened
let isWorking = false; // as of the last attempt

async function openDatabase() {
    const request = indexedDB.open('gusset', 1);
    request.onupgradeneeded = () => request.result.createObjectStore(store);
    const opened = await done(request);
    opened.onclose = () => { database = null; }; // by the browser, for example when its data are cleared
    opened.onversionchange = () => {
        opened.close();
        database = null;
    };
    return opened;
}

async function transaction(mode) {
    database ??= openDatabase();
    return (await database).transaction(store, mode, { durability: 'strict' });
}

async function readAll() {
    const texts = (await transaction('readonly')).objectStore(store);
    const [names, values] = await Promise.all([done(texts.getAllKeys()), done(texts.getAll())]);
    isWorking = true;
    return new Map(names.map((name, i) => [name, values[i]]));
}

// Begun when the page is loaded, and ready by the time that the program is. Resolves to a map, empty if the browser
// has no such storage.
const begun = readAll().catch(() => new Map());

export function onDisk() {
    const late = new Promise((resolve) => setTimeout(() => resolve(new Map()), patience));
    return Promise.race([begun, late]);
}

const waiting = new Map(); // place → text, or null to forget it
let writing = null; // a promise

async function write(changes) {
    const all = await transaction('readwrite');
    const texts = all.objectStore(store);
    changes.forEach(([name, text]) => (text === null ? texts.delete(name) : texts.put(text, name)));
    await new Promise((resolve, reject) => {
        all.oncomplete = resolve;
        all.onabort = () => reject(all.error);
    });
}

function writeAgain(changes) {
    database = null;
    return write(changes);
}

async function writeAll() {
    while (waiting.size > 0) {
        const now = [...waiting];
        waiting.clear();
        const timer = setTimeout(() => { isWorking = false; }, longestWrite);
        try {
            await write(now).catch(() => writeAgain(now));
            isWorking = true;
        } catch {
            isWorking = false;
            database = null;
            now.filter(([name]) => !waiting.has(name)).forEach(([name, text]) => waiting.set(name, text));
            return; // they go with the next change
        } finally {
            clearTimeout(timer);
        }
    }
}

// One write at a time: changes that arrive meanwhile go together with the next.
function change(name, text) {
    waiting.set(name, text);
    writing ??= writeAll().finally(() => { writing = null; });
}

export const putOnDisk = change;
export const forgetOnDisk = (name) => change(name, null);

// Whether what is put here is likely to be stored.
export const diskWorks = () => isWorking;

// Resolves when everything put so far is stored.
export async function reachedDisk() {
    await writing;
}
