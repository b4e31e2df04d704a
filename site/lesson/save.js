// A file for the browser to save; returns its name.
export function save(content, name, type) {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(content instanceof Blob ? content : new Blob([content], { type }));
    link.download = name;
    link.click();
    return name;
}
