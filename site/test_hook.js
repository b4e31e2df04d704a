// Only with ?test in the address: what stands where and what is known, so that the browser tests can press
// real buttons with real pointer events and compare.
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

    observe();
    drawFrame();
    window.gussetTest = { observe, idle };
}
