// Only with ?test in the address: where things are and what is known, so that the browser tests can press real
// buttons with real pointer events and compare; and a way to make the program fail.
import { reachedDisk } from './disk.js';

let fatal = ''; // a text that makes this program or the next fail if a model contains it

export function installTestHook(program, page, drawFrame) {
    const observe = () => JSON.parse(program.UTF8ToString(program._gussetObserve(page)));
    const nextFrame = () => new Promise((resolve) => requestAnimationFrame(resolve));

    // Resolves after three browser frames in which the program drew nothing.
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
