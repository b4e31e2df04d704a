// The size of the board: in CSS pixels, which the program gets together with the user's preferences, and in device
// pixels, which the canvas has.

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

// `changed(width, height, ratio, safe, preferences)` is called when any of these has changed.
export function createViewport(canvas, changed) {
    let pixels = { width: 1, height: 1 }; // of the canvas, as the browser will show it
    let knownRatio = 0;

    function send() {
        const box = canvas.getBoundingClientRect();
        const safe = parseFloat(getComputedStyle(document.getElementById('safe-area')).paddingBottom) || 0;
        knownRatio = devicePixelRatio;
        if (box.width > 0) { // else the tables are shown: the board keeps its size
            changed(box.width, box.height, devicePixelRatio, safe, preferences());
        }
    }

    // `exact` is the observer's count, if it has one. It counts real device pixels, which differ from the page's if
    // a browser emulates a device.
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
        // Before a frame. Dragging a window to another screen changes the ratio but no size, and no observer
        // reports it.
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
