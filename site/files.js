// Text out of the page and into it: clipboard, files, examples.
const largestFile = 8 * 1024 * 1024; // bytes; engine/exchange/json.hpp refuses more

// False when the browser refused, and the text stands selected in a dialog instead.
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

function save(name, text) {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}

export function createFiles({ open, tell }) {
    const chooser = document.getElementById('file-chooser');

    async function read(file) {
        if (file.size > largestFile) {
            tell(`${file.name} is larger than 8 MB: that is no model of a truss.`, true);
            return;
        }
        try {
            open(await file.text(), `Open ${file.name}`);
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
            open(await response.text(), 'Open example');
        } catch (error) {
            tell(`The example could not be fetched (${error.message}).`, true);
        }
    }

    chooser.addEventListener('change', () => {
        if (chooser.files.length > 0) {
            read(chooser.files[0]);
        }
        chooser.value = ''; // the same file again is a change too
    });
    addEventListener('dragover', (event) => event.preventDefault());
    addEventListener('drop', (event) => {
        event.preventDefault();
        const file = event.dataTransfer.files[0];
        if (file) {
            read(file);
        }
    });
    return { save, choose: () => chooser.click(), fetchExample };
}
