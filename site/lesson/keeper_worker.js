// Writes to a file of this browser's own, in place: what is written is there if the page is closed in the midst. (A file
// that the user chooses, from showSaveFilePicker, is written only when it is closed, and would be lost.)
let file = null;
let flushed = 0; // ms

// To the disk itself, for the case that the power fails: once a second, as it takes some time.
function flushNowAndThen() {
    if (performance.now() - flushed > 1000) {
        file.flush();
        flushed = performance.now();
    }
}

const acts = {
    async open({ name }) {
        const folder = await navigator.storage.getDirectory();
        const handle = await folder.getFileHandle(name, { create: true });
        file = await handle.createSyncAccessHandle();
    },
    append({ bytes }) {
        const at = file.getSize();
        const written = file.write(bytes, { at });
        if (written < bytes.length) { // a full disk may take a part
            file.truncate(at);
            throw new DOMException('', 'QuotaExceededError');
        }
        flushNowAndThen();
    },
    patch({ bytes, at }) {
        file.write(bytes, { at });
        file.flush();
    },
    cut({ at }) {
        file.truncate(at);
        file.flush();
    },
    close() {
        file?.close(); // which flushes it
        file = null;
    },
};

let order = Promise.resolve();
addEventListener('message', ({ data }) => {
    order = order.then(() => acts[data.do](data))
        .then(() => postMessage({ id: data.id }), ({ name }) => postMessage({ id: data.id, fault: name }));
});
