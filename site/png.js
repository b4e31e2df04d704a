// Drawings painted as PNG.
export const paper = '#fff'; // the ground for which the inks of a drawing are made

function imageOf(svg) {
    const image = new Image();
    const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
    return new Promise((resolve, reject) => {
        image.onload = () => resolve(image);
        image.onerror = () => reject(new Error('the drawing was refused'));
        image.src = address;
    }).finally(() => URL.revokeObjectURL(address));
}

// A Blob, or an error that says why not. `scale`: pixels for a CSS pixel, 2 is sharp in print and on a fine screen.
// Without a `ground` what is not drawn on is transparent.
export async function pngOf(svg, { scale = 2, ground = '' } = {}) {
    const image = await imageOf(svg);
    const sheet = document.createElement('canvas');
    sheet.width = Math.round(image.width * scale);
    sheet.height = Math.round(image.height * scale);
    const paint = sheet.getContext('2d');
    if (ground !== '') {
        paint.fillStyle = ground;
        paint.fillRect(0, 0, sheet.width, sheet.height);
    }
    paint.drawImage(image, 0, 0, sheet.width, sheet.height);
    const blob = await new Promise((resolve) => sheet.toBlob(resolve, 'image/png'));
    if (!blob) {
        throw new Error('it is too large');
    }
    return blob;
}
