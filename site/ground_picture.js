// A picture file as pixels: turned as the camera was held, and no larger than tracing needs. It never leaves the page.
const mostSide = 2000; // px
const leastSide = 40; // px
const largestFile = 64 * 1024 * 1024; // bytes

const isHeic = ({ name, type }) => /\.hei[cf]$/i.test(name ?? '') || /^image\/hei[cf]/.test(type);

function whyNot(file) {
    const name = file.name ?? 'The photograph';
    return isHeic(file)
        ? `This browser cannot read ${name}, a HEIC picture. Save a copy as JPEG, or set the camera to take JPEG.`
        : `${name} cannot be read as a picture. Choose a JPEG or PNG file.`;
}

async function decoded(file) {
    const image = new Image();
    const address = URL.createObjectURL(file);
    try {
        image.src = address;
        await image.decode();
        return image;
    } catch {
        throw new Error(whyNot(file));
    } finally {
        URL.revokeObjectURL(address);
    }
}

// A canvas. Fails with a sentence for people. A browser draws an image upright, as its EXIF orientation says.
export async function pictureOf(file) {
    if (file.size > largestFile) {
        throw new Error(`${file.name} is larger than 64 MB. Save a smaller copy, and choose that.`);
    }
    const image = await decoded(file);
    const [width, height] = [image.naturalWidth, image.naturalHeight];
    if (Math.min(width, height) < leastSide) {
        throw new Error(`${file.name ?? 'The photograph'} is too small to trace over: ${width} by ${height} pixels.`);
    }
    const scale = Math.min(1, mostSide / Math.max(width, height));
    const canvas = document.createElement('canvas');
    canvas.width = Math.max(1, Math.round(scale * width));
    canvas.height = Math.max(1, Math.round(scale * height));
    const paper = canvas.getContext('2d', { alpha: false });
    paper.fillStyle = '#fff'; // under what is transparent
    paper.fillRect(0, 0, canvas.width, canvas.height);
    paper.imageSmoothingQuality = 'high';
    paper.drawImage(image, 0, 0, canvas.width, canvas.height);
    return canvas;
}

// As a file to be kept, or null.
export const fileOf = (canvas) => new Promise((resolve) => { canvas.toBlob(resolve, 'image/jpeg', 0.85); });
