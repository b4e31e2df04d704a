// The program of this page (engine/lectern/lectern.hpp).
import { asking } from '../asking.js';
import createLectern from './lectern.js';

export async function startLectern() {
    return asking(await createLectern(), '_gussetLectern');
}
