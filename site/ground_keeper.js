// Photographs on this device, each under the name of the place in which its board is kept (storage.js). They have a
// database of their own: disk.js reads all of its one when the page starts.
const store = 'photographs';

const done = (request) => new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
});

let database = null; // a promise

function openDatabase() {
    const request = indexedDB.open('gusset-ground', 1);
    request.onupgradeneeded = () => request.result.createObjectStore(store);
    return done(request).then((opened) => {
        const forget = () => { database = null; };
        opened.onclose = forget;
        opened.onversionchange = () => {
            opened.close();
            forget();
        };
        return opened;
    });
}

// Resolves to what the request gives, once the whole is stored.
async function transact(mode, use) {
    database ??= openDatabase();
    database.catch(() => { database = null; });
    const all = (await database).transaction(store, mode);
    const ended = new Promise((resolve, reject) => {
        all.oncomplete = resolve;
        all.onabort = () => reject(all.error);
    });
    const [result] = await Promise.all([done(use(all.objectStore(store))), ended]);
    return result;
}

export const keptUnder = (place) => transact('readonly', (all) => all.get(place));
export const keep = (place, photograph) => transact('readwrite', (all) => all.put(photograph, place));
export const forget = (place) => transact('readwrite', (all) => all.delete(place));

// Removes those of boards that are no longer kept.
export async function forgetAllBut(places) {
    for (const place of await transact('readonly', (all) => all.getAllKeys())) {
        if (!places.includes(place)) {
            await forget(place);
        }
    }
}
