// Keeps what is recorded on the disk of this device while the lesson goes on, so that an hour of it takes no memory: in
// a file of this browser's own where it has such files, else in its database, in pieces by their place in the film.

function done(request) {
    return new Promise((resolve, reject) => {
        request.addEventListener('success', () => resolve(request.result));
        request.addEventListener('error', () => reject(request.error));
    });
}

async function inFile(name) {
    const folder = await navigator.storage.getDirectory();
    const worker = new Worker(new URL('keeper_worker.js', import.meta.url));
    const waiting = new Map();
    let last = 0;
    worker.addEventListener('message', ({ data: { id, fault } }) => {
        const { resolve, reject } = waiting.get(id);
        waiting.delete(id);
        (fault ? reject : resolve)(fault && new DOMException('', fault));
    });
    worker.addEventListener('error', () => waiting.forEach(({ reject }) => reject(new Error('no worker'))));
    const ask = (request) => new Promise((resolve, reject) => {
        last += 1;
        waiting.set(last, { resolve, reject });
        worker.postMessage({ ...request, id: last });
    });
    try {
        await ask({ do: 'open', name });
    } catch (error) {
        worker.terminate();
        throw error;
    }
    return {
        append: (bytes) => ask({ do: 'append', bytes }),
        patch: (at, bytes) => ask({ do: 'patch', at, bytes }),
        cut: (at) => ask({ do: 'cut', at }),
        film: async () => (await folder.getFileHandle(name)).getFile(),
        async rest() {
            await ask({ do: 'close' });
            worker.terminate();
        },
    };
}

async function inDatabase(name) {
    const request = indexedDB.open(`gusset-${name}`, 1);
    request.addEventListener('upgradeneeded', () => request.result.createObjectStore('pieces'));
    const base = await done(request);
    async function change(act) {
        const transaction = base.transaction('pieces', 'readwrite', { durability: 'relaxed' });
        act(transaction.objectStore('pieces'));
        await new Promise((resolve, reject) => {
            transaction.addEventListener('complete', resolve);
            transaction.addEventListener('abort', () => reject(transaction.error));
        });
    }
    const pieces = () => base.transaction('pieces').objectStore('pieces');
    const keys = await done(pieces().getAllKeys());
    let size = keys.length > 0 ? keys.at(-1) + (await done(pieces().get(keys.at(-1)))).size : 0;
    // The piece that holds a place: where it begins, and it.
    async function pieceAt(at) {
        const begins = (await done(pieces().getAllKeys(IDBKeyRange.upperBound(at)))).at(-1);
        return { begins, piece: await done(pieces().get(begins)) };
    }
    return {
        async append(bytes) {
            await change((store) => store.put(new Blob([bytes]), size));
            size += bytes.length;
        },
        async patch(at, bytes) {
            const { begins, piece } = await pieceAt(at);
            const changed = new Blob([piece.slice(0, at - begins), bytes, piece.slice(at - begins + bytes.length)]);
            await change((store) => store.put(changed, begins));
        },
        async cut(at) {
            if (at >= size) {
                return;
            }
            const { begins, piece } = at > 0 ? await pieceAt(at) : {};
            await change((store) => {
                store.delete(IDBKeyRange.lowerBound(at));
                if (begins < at) {
                    store.put(piece.slice(0, at - begins), begins);
                }
            });
            size = at;
        },
        film: async () => new Blob(await done(pieces().getAll())), // of handles: the pieces stay on the disk
        async rest() {}, // a database stays open to be read
    };
}

// Each `name` is one film; what it holds stays until it is cut. After `rest` it is only read, and another may write.
export async function createKeeper(name) {
    try {
        return await inFile(name);
    } catch { // no such files in this browser, or not in a private window
        return inDatabase(name);
    }
}
