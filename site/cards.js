// The entries of the start page: a picture of a board, its title and a line under it, as one button.
const palettes = ['paper', 'dark', 'sun']; // web/ui/palette.hpp

// As the page looks now, before the program has said so too.
export function paletteNow() {
    const system = matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'paper';
    const named = palettes.indexOf(document.documentElement.dataset.theme ?? system);
    return { index: named, name: palettes[named] };
}

// The words beside it describe it, so the picture has none of its own.
export function pictureOf(svg) {
    const image = document.createElement('img');
    image.alt = '';
    showPicture(image, svg);
    return image;
}

export function showPicture(image, svg) {
    image.classList.toggle('none', svg === '');
    if (svg === '') {
        image.removeAttribute('src');
        return;
    }
    const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
    image.addEventListener('load', () => URL.revokeObjectURL(address), { once: true });
    image.src = address;
}

export function spanOf(text, look) {
    const span = document.createElement('span');
    span.textContent = text;
    span.className = look;
    return span;
}

export function buttonOf(text, press) {
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = text;
    button.addEventListener('click', press);
    return button;
}

export function card({ svg, title, under }, press) {
    const button = buttonOf('', press);
    button.className = 'card';
    button.append(pictureOf(svg), spanOf(title, 'title'), spanOf(under, 'under'));
    return button;
}

export function itemOf(...parts) {
    const item = document.createElement('li');
    item.append(...parts);
    return item;
}

export function inputOf(name, value, className) {
    const input = document.createElement('input');
    input.type = 'text';
    input.value = value;
    input.autocomplete = 'off';
    input.setAttribute('aria-label', name);
    input.enterKeyHint = 'done';
    input.className = className;
    if (className !== 'case') {
        input.inputMode = 'decimal';
    }
    return input;
}
