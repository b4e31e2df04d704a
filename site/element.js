// Making elements, and finding those that the page has.

export const at = (id) => document.getElementById(id);

export function element(tag, properties = {}, ...children) {
    const made = Object.assign(document.createElement(tag), properties);
    made.append(...children);
    return made;
}
