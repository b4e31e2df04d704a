// What was recorded, kept on the disk of this device while the lesson goes on, so that an hour of it takes no memory:
// one take for each step that was shown. Chunks go to the browser's database as they come.
const database = 'gusset-recording';

function done(request) {
    return new Promise((resolve, reject) => {
        request.addEventListener('success', () => resolve(request.result));
        request.addEventListener('error', () => reject(request.error));
    });
}

async function open() {
    const request = indexedDB.open(database, 1);
    request.addEventListener('upgradeneeded', () => request.result.createObjectStore('chunks', { keyPath: ['take', 'part'] }));
    return done(request);
}

export async function createTakes() {
    const base = await open();
    const store = (mode) => base.transaction('chunks', mode, { durability: 'relaxed' }).objectStore('chunks');
    return {
        clear: () => done(store('readwrite').clear()),
        keep: (take, part, blob) => done(store('readwrite').put({ take, part, blob })),
        dropFrom: (take) => done(store('readwrite').delete(IDBKeyRange.lowerBound([take, 0]))),
        // One take at a time: it is a step long.
        async read(take) {
            const chunks = await done(store('readonly').getAll(IDBKeyRange.bound([take, 0], [take, Infinity])));
            return new Blob(chunks.map(({ blob }) => blob));
        },
    };
}
