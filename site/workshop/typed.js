// Numbers that are typed.
import { at } from '../element.js';

// 0 where nothing is typed; what is no number becomes -1, which the program refuses in words.
export function numberIn(id) {
    const number = Number(at(id).value.trim().replace(',', '.'));
    return Number.isNaN(number) ? -1 : number;
}
