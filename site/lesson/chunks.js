// What was recorded, kept on the disk of this device while the lesson goes on, so that an hour of it takes no memory:
// the recorder's chunks go to the browser's database as they come.
const database = 'gusset-recording';

function done(request) {
    return new Promise((resolve, reject) => {
        request.addEventListener('success', () => resolve(request.result));
        request.addEventListener('error', () => reject(request.error));
    });
}

async function open() {
    const request = indexedDB.open(database, 1);
    request.addEventListener('upgradeneeded', () => request.result.createObjectStore('chunks', { keyPath: 'part' }));
    return done(request);
}

export async function createChunks() {
    const base = await open();
    const store = (mode) => base.transaction('chunks', mode, { durability: 'relaxed' }).objectStore('chunks');
    return {
        clear: () => done(store('readwrite').clear()),
        keep: (part, blob) => done(store('readwrite').put({ part, blob })),
        async film(type) {
            const chunks = await done(store('readonly').getAll());
            return new Blob(chunks.map(({ blob }) => blob), { type });
        },
    };
}
