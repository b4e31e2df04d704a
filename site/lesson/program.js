// The program of this page (engine/lectern/lectern.hpp).
import { asking } from '../asking.js';
import { loadLanguage } from '../language.js';
import createLectern from './lectern.js';

export async function startLectern() {
    const [program, language] = await Promise.all([createLectern(), loadLanguage()]);
    const lectern = asking(program, '_gussetLectern');
    if (language !== '') {
        lectern({ do: 'speak', language });
    }
    return lectern;
}
