// Only with ?test in the address: what stands where and what is known, so that the browser tests can press
// real buttons with real pointer events and compare; and the program made to fail.
import { reachedDisk } from './disk.js';

let fatal = ''; // what no model may hold, of this program or the next

export function installTestHook(program, page, drawFrame) {
    const observe = () => JSON.parse(program.UTF8ToString(program._gussetObserve(page)));
    const nextFrame = () => new Promise((resolve) => requestAnimationFrame(resolve));

    // Resolves when three frames of the browser have passed and the program drew in none of them.
    async function idle() {
        let last = observe().frames;
        for (let quiet = 0; quiet < 3;) {
            await nextFrame();
            const now = observe().frames;
            quiet = now === last ? quiet + 1 : 0;
            last = now;
        }
    }

    function failOn(text) {
        fatal = text;
        program.withTexts([fatal], (address) => program._gussetFailOn(page, address));
    }

    observe();
    failOn(fatal);
    drawFrame();
    window.gussetTest = { observe, idle, failOn, reachedDisk };
}
