// Text out of the page and into it: clipboard, files, examples.
const largestFile = 8 * 1024 * 1024; // bytes; engine/exchange/files/model_file.hpp refuses more

// OpenedFrom of web/app/state/action.hpp.
export const openedFrom = { file: 0, link: 1, example: 2, before: 3, new: 4, firstNew: 5, form: 6 };

// False if the browser refused, and the text is shown selected in a dialog instead.
export async function copyText(text) {
    try {
        await navigator.clipboard.writeText(text);
        return true;
    } catch {
        const dialog = document.getElementById('copy-dialog');
        const box = document.getElementById('copy-text');
        box.value = text;
        dialog.showModal();
        box.select();
        return false;
    }
}

const types = { json: 'application/json', svg: 'image/svg+xml', csv: 'text/csv', html: 'text/html' };

function download(name, blob) {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(blob);
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}

export function saveContent(name, content) { // bytes or text
    download(name, new Blob([content], { type: types[name.split('.').at(-1)] }));
}

export function canShareLinks() {
    return typeof navigator.share === 'function';
}

// `trace` takes a photograph.
export function createFiles({ open, tell, begun, trace }) {
    const chooser = document.getElementById('file-chooser');

    async function read(file) {
        await begun;
        if (/^image\/(?!svg)/.test(file.type)) {
            trace(file);
            return;
        }
        if (file.size > largestFile) {
            tell(`${file.name} is larger than 8 MB: that is not a model of a truss.`, true);
            return;
        }
        try {
            open(await file.text(), openedFrom.file, file.name);
        } catch (error) {
            tell(`${file.name} could not be read: ${error.message}`, true);
        }
    }

    async function fetchExample(name) {
        try {
            const response = await fetch(`examples/${encodeURIComponent(name)}`);
            if (!response.ok) {
                throw new Error(`status ${response.status}`);
            }
            const text = await response.text();
            await begun;
            open(text, openedFrom.example);
        } catch (error) {
            tell(`The example could not be fetched (${error.message}).`, true);
        }
    }

    async function savePicture(name, svg) {
        try {
            const { pngOf } = await import('./png.js');
            download(name, await pngOf(svg));
        } catch (error) {
            tell(`The picture could not be made (${error.message}). Save it as SVG.`, true);
        }
    }

    async function shareLink(title, link) {
        try {
            await navigator.share({ title: title || 'Gusset', url: link });
        } catch (error) {
            if (error.name !== 'AbortError') { // closing the sheet is not an error
                tell('The system did not share the link. Copy it instead.', true);
            }
        }
    }

    chooser.addEventListener('change', () => {
        if (chooser.files.length > 0) {
            read(chooser.files[0]);
        }
        chooser.value = ''; // choosing the same file again is a change too
    });
    addEventListener('dragover', (event) => event.preventDefault());
    addEventListener('drop', (event) => {
        event.preventDefault();
        const file = event.dataTransfer.files[0];
        if (file) {
            read(file);
        }
    });
    // An installed page is also what the system opens a file with. A reload delivers the same file again, older
    // than the edits made to it since.
    const isReload = performance.getEntriesByType('navigation')[0]?.type === 'reload';
    window.launchQueue?.setConsumer(async ({ files: [handle] }) => {
        if (handle && !isReload) {
            read(await handle.getFile());
        }
    });
    return { save: saveContent, savePicture, shareLink, choose: () => chooser.click(), fetchExample };
}
