// Starts the program, hands it the browser's events and draws a frame when one is wanted, and only then.
import createGusset from './gusset.js';
import { createField } from './field.js';
import { canShareLinks, copyText, createFiles } from './files.js';
import { createHalo } from './halo.js';
import { listenToKeys, listenToPointers } from './input.js';
import { createLetters } from './letters.js';
import { workOffline } from './offline.js';
import { createRecent } from './recent.js';
import { openWork, storeWork, useNewPlaceForChanges, watchOtherTabs } from './storage.js';
import { createTwin } from './twin.js';

const canvas = document.getElementById('board');
const status = document.getElementById('status');
const cursors = ['default', 'pointer', 'crosshair', 'move', 'text', 'ew-resize', 'ns-resize'];
// Drawn at once after a tap (pressed, released, answered), so that what it asks for, the keyboard or the
// clipboard, happens within its gesture.
const settlingFrames = 4;

let program; // the module
let page = 0; // its one value, an address in the module's memory
let frameRequest = 0;
let contextLost = false;
let pixels = { width: 1, height: 1 }; // of the canvas, as the browser will show it

function say(text) {
    status.textContent = text;
    status.hidden = text === '';
}

// Texts go in as zero-ended UTF-8.
function withTexts(texts, call) {
    const addresses = texts.map((text) => {
        const size = program.lengthBytesUTF8(text) + 1;
        const address = program._malloc(size);
        program.stringToUTF8(text, address, size);
        return address;
    });
    const result = call(...addresses);
    addresses.forEach((address) => program._free(address));
    return result;
}

function drawFrame() {
    if (contextLost) {
        return 0;
    }
    noticePixelRatio();
    if (canvas.width !== pixels.width || canvas.height !== pixels.height) {
        canvas.width = pixels.width; // here, as it clears the canvas
        canvas.height = pixels.height;
    }
    return program._gussetFrame(page, canvas.width, canvas.height);
}

function wake() {
    frameRequest ||= requestAnimationFrame(() => {
        frameRequest = 0;
        if (drawFrame() > 0) {
            wake();
        }
    });
}

function drawNow() {
    for (let i = 0; i < settlingFrames; ++i) {
        drawFrame();
    }
    wake();
}

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

let knownRatio = 0;

function sendViewport() {
    const box = canvas.getBoundingClientRect();
    const safe = parseFloat(getComputedStyle(document.getElementById('safe-area')).paddingBottom) || 0;
    knownRatio = devicePixelRatio;
    program._gussetViewport(box.width, box.height, devicePixelRatio, safe, preferences());
    wake();
}

// A window dragged to another screen changes the ratio and no size: no observer tells.
function noticePixelRatio() {
    if (devicePixelRatio !== knownRatio) {
        setPixels();
        sendViewport();
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

function watchSize() {
    const observer = new ResizeObserver(([entry]) => {
        const exact = entry.devicePixelContentBoxSize?.[0]; // WebKit has none
        setPixels(exact && { width: exact.inlineSize, height: exact.blockSize });
        sendViewport();
    });
    try {
        observer.observe(canvas, { box: 'device-pixel-content-box' });
    } catch {
        observer.observe(canvas);
    }
    addEventListener('resize', sendViewport);
    for (const query of Object.values(queries)) {
        query.addEventListener('change', sendViewport);
    }
}

function watchContext() {
    canvas.addEventListener('webglcontextlost', (event) => {
        event.preventDefault();
        contextLost = true;
    });
    canvas.addEventListener('webglcontextrestored', () => {
        contextLost = false;
        program._gussetContextRestored(page);
        wake();
    });
}

function open(text, label) {
    useNewPlaceForChanges();
    withTexts([text, label], (...addresses) => program._gussetOpened(...addresses));
    wake();
}

function tell(text, isProblem) {
    withTexts([text], (address) => program._gussetSaid(address, isProblem ? 1 : 0));
    wake();
}

function holdsModel(fragment) {
    return /^#?[mj]=/.test(fragment);
}

function openFragment() {
    if (holdsModel(location.hash)) {
        open(location.hash, 'Open link');
    }
}

function setAddress(fragment) {
    if (location.hash.slice(1) === fragment || (fragment === '' && !holdsModel(location.hash))) {
        return;
    }
    const place = location.pathname + location.search;
    history.replaceState(null, '', fragment === '' ? place : `${place}#${fragment}`);
}

function watchLeaving() {
    const leave = () => program._gussetLeave(page);
    addEventListener('pagehide', leave);
    document.addEventListener('visibilitychange', () => {
        if (document.visibilityState === 'hidden') {
            leave();
        }
    });
}

// What the program may ask of the page (web/platform/platform_web.cpp).
function pageFor({ field, twin, files, recent }) {
    const halo = createHalo();
    return {
        showField: field.show,
        hideField: field.hide,
        showCursor: (index) => { canvas.style.cursor = cursors[index]; },
        setLook: (theme, presenting) => {
            document.documentElement.dataset.theme = theme;
            halo.show(presenting);
        },
        copyText: (text, said) => copyText(text).then((copied) => {
            if (copied) {
                tell(said, false);
            }
        }),
        saveFile: files.save,
        savePicture: files.savePicture,
        canShareLinks,
        shareLink: files.shareLink,
        openFile: files.choose,
        showRecent: recent.show,
        openExample: (name) => files.fetchExample(name),
        setAddress,
        storeWork,
        setTwin: twin.set,
        showTwin: twin.show,
        setFullScreen: (on) => {
            // Refused where there is none, as on some phones: large type is what matters.
            const change = on ? document.documentElement.requestFullscreen?.()
                : document.fullscreenElement && document.exitFullscreen();
            Promise.resolve(change).catch(() => {});
        },
        showHelp: () => window.open(new URL('help/', location.href), '_blank', 'noopener'),
        announce: twin.announce,
        ...createLetters(),
    };
}

async function load(handlers) {
    say('Loading …');
    try {
        return await createGusset({ page: handlers });
    } catch (error) {
        say(`The program did not load (${error.message}). Reload the page to try again.`);
        return null;
    }
}

function listen(field) {
    listenToPointers(canvas, {
        pointer: (...all) => { program._gussetPointer(...all); wake(); },
        wheel: (...all) => { program._gussetWheel(...all); wake(); },
        pinch: (...all) => { program._gussetPinch(...all); wake(); },
        released: drawNow,
        pressed: field.keep,
    });
    listenToKeys({
        press: (key) => { program._gussetKey(key); wake(); },
        // Drawn at once: a press may ask for the keyboard or the clipboard.
        pressInPanel: (key) => { program._gussetPanelKey(key); drawNow(); },
        inPanel: () => program._gussetKeysInPanel(page) === 1,
        type: (text) => {
            withTexts([text], (address) => program._gussetTyped(address));
            drawNow(); // the next key is for the field that this one opens
        },
    });
    addEventListener('hashchange', openFragment);
    watchSize();
    watchContext();
    watchLeaving();
}

function reads(saved) {
    return withTexts([saved], (address) => program._gussetReads(address)) === 1;
}

async function start() {
    const fieldDone = (key, text, how) =>
        withTexts([key, text], (...addresses) => program._gussetFieldDone(...addresses, how));
    const field = createField((key, text, how) => {
        fieldDone(key, text, how);
        drawNow();
    }, (key, text) => {
        withTexts([key, text], (...addresses) => program._gussetFieldTyped(...addresses));
        wake();
    });
    const twin = createTwin({
        wantWorking: (wanted, { atOnce = false } = {}) => {
            program?._gussetWorkingInTwin(page, wanted ? (atOnce ? 2 : 1) : 0);
            wake();
        },
        drawNow: () => program && drawNow(),
        fieldDone: (key, text) => fieldDone(key, text, 0),
    });
    const files = createFiles({ open, tell });
    const recent = createRecent({
        tell,
        goTo: (show) => {
            program._gussetLeave(page); // what is on the board is in the list from then on
            return show();
        },
        reads,
        drawing: (text) => withTexts([text], (saved) =>
            program.UTF8ToString(program._gussetSmallPicture(page, saved))),
    });
    program = await load(pageFor({ field, twin, files, recent }));
    if (!program) {
        return;
    }
    performance.mark('runtime-ready');
    const work = await openWork(reads);
    const address = location.href.split('#')[0];
    page = withTexts([address, work.newer, work.older], (...addresses) => program._gussetStart(...addresses));
    setPixels();
    sendViewport();
    if (work.isCopy && !holdsModel(location.hash)) {
        tell('This board is open in another tab. Here you have a copy: neither changes the other.', false);
    }
    watchOtherTabs(() => tell('Another tab works on this board too. What you do here is kept as a copy.',
        false));
    openFragment();
    drawFrame();
    performance.mark('first-frame');
    if (program._gussetDraws(page)) {
        say('');
        document.body.classList.add('has-board');
        listen(field);
    } else {
        say('This browser offers no WebGL2, which the board is drawn with. The tables below work ' +
            'without it. To draw, switch on hardware acceleration or use another browser.');
        document.body.classList.add('no-board');
        addEventListener('hashchange', openFragment);
        watchLeaving();
    }
    workOffline(() => program._gussetLeave(page));
    if (new URLSearchParams(location.search).has('test')) {
        const { installTestHook } = await import('./test_hook.js');
        installTestHook(program, page, drawFrame);
    }
    wake();
}

start();
