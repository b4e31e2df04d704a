// Bytes on their way to a program and back, as text.
export const bytesOf = (base64) => Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));

// Of a Blob.
export async function base64urlOf(blob) {
    const address = await new Promise((resolve, reject) => {
        const reader = new FileReader();
        reader.onload = () => resolve(reader.result);
        reader.onerror = () => reject(reader.error);
        reader.readAsDataURL(blob);
    });
    return address.slice(address.indexOf(',') + 1).replace(/\+/g, '-').replace(/\//g, '_').replace(/=+$/, '');
}
