// Files that are read and saved, and text that is copied.

export function saveFile(name, content, type) {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([content], { type }));
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60000); // some browsers still read it after the click
}

// False if the browser refuses.
export async function copied(text) {
    try {
        await navigator.clipboard.writeText(text);
        return true;
    } catch {
        return false;
    }
}

// Calls `take` with { name, text } for each file that is chosen with this input or dropped on this place.
export function onFiles(input, place, take) {
    const read = async (files) => {
        for (const file of files) {
            take({ name: file.name, text: await file.text() });
        }
    };
    input.addEventListener('change', async () => {
        await read([...input.files]);
        input.value = ''; // the same file may be chosen again
    });
    place.addEventListener('dragover', (event) => event.preventDefault());
    place.addEventListener('drop', (event) => {
        if (event.dataTransfer.files.length > 0) {
            event.preventDefault();
            read([...event.dataTransfer.files]);
        }
    });
}
