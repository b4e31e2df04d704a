// How large the board is: in the page's pixels, which the program is told with what its user prefers, and in the
// screen's own, which the canvas has.

// The queries are made once: reading one is cheap, making one is not.
const queries = {
    dark: matchMedia('(prefers-color-scheme: dark)'),
    contrast: matchMedia('(prefers-contrast: more), (forced-colors: active)'),
    still: matchMedia('(prefers-reduced-motion: reduce)'),
    coarse: matchMedia('(pointer: coarse)'),
};

function preferences() {
    return (queries.dark.matches ? 1 : 0) | (queries.contrast.matches ? 2 : 0) |
        (queries.still.matches ? 4 : 0) | (queries.coarse.matches ? 8 : 0);
}

// `changed(width, height, ratio, safe, preferences)` is called when something of it has changed.
export function createViewport(canvas, changed) {
    let pixels = { width: 1, height: 1 }; // of the canvas, as the browser will show it
    let knownRatio = 0;

    function send() {
        const box = canvas.getBoundingClientRect();
        const safe = parseFloat(getComputedStyle(document.getElementById('safe-area')).paddingBottom) || 0;
        knownRatio = devicePixelRatio;
        if (box.width > 0) { // else the tables are read: the board keeps its shape
            changed(box.width, box.height, devicePixelRatio, safe, preferences());
        }
    }

    // `exact` is the observer's count, where it has one. It counts the screen's own pixels, which are others
    // than the page's where a browser pretends to be a device.
    function setPixels(exact) {
        const box = canvas.getBoundingClientRect();
        const width = Math.max(1, Math.round(box.width * devicePixelRatio));
        const height = Math.max(1, Math.round(box.height * devicePixelRatio));
        const agrees = exact && Math.abs(exact.width - width) <= 1 &&
            Math.abs(exact.height - height) <= 1;
        pixels = agrees ? exact : { width, height };
    }

    return {
        measure() {
            setPixels();
            send();
        },
        // Before a frame. A window dragged to another screen changes the ratio and no size: no observer tells.
        fit() {
            if (devicePixelRatio !== knownRatio) {
                this.measure();
            }
            if (canvas.width !== pixels.width || canvas.height !== pixels.height) {
                canvas.width = pixels.width; // here, as it clears the canvas
                canvas.height = pixels.height;
            }
        },
        watch() {
            const observer = new ResizeObserver(([entry]) => {
                const exact = entry.devicePixelContentBoxSize?.[0]; // WebKit has none
                setPixels(exact && { width: exact.inlineSize, height: exact.blockSize });
                send();
            });
            try {
                observer.observe(canvas, { box: 'device-pixel-content-box' });
            } catch {
                observer.observe(canvas);
            }
            addEventListener('resize', send);
            for (const query of Object.values(queries)) {
                query.addEventListener('change', send);
            }
        },
    };
}
