// Numbers that are typed.
import { at } from '../element.js';

// 0 where nothing is typed; what is no number becomes -1, which the program refuses in words.
export function numberIn(id) {
    const text = at(id).value.trim().replace(',', '.');
    return text === '' ? 0 : /^\d*\.?\d+$|^\d+\.$/.test(text) ? Number(text) : -1;
}

// A coordinate; what is no number becomes nothing, which the program refuses in words.
export function coordinateIn(id) {
    const text = at(id).value.trim().replace(',', '.').replace('−', '-');
    return /^-?(\d*\.?\d+|\d+\.)$/.test(text) ? Number(text) : null;
}
