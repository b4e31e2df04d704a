// The program of this page (engine/desk/desk.hpp).
import { asking } from '../asking.js';
import createDesk from './desk.js';

export async function startDesk() {
    return asking(await createDesk(), '_gussetDesk');
}
