// Files that are read.

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
