// Starts the program, hands it the browser's events and draws a frame when one is wanted, and only then.
import { holdsModel, isAddressOf, markAddress, setAddress, whenAtRest } from './address.js';
import { createFailure } from './failure.js';
import { createField } from './field.js';
import { canShareLinks, copyText, createFiles } from './files.js';
import { createHalo } from './halo.js';
import { listenToKeys, listenToPointers } from './input.js';
import { createLetters } from './letters.js';
import { workOffline } from './offline.js';
import { startProgram } from './program.js';
import { createRecent } from './recent.js';
import { lastWork, modelOf, openWork, storeWork, useNewPlaceForChanges, watchOtherTabs } from './storage.js';
import { createTwin } from './twin.js';

const canvas = document.getElementById('board');
const status = document.getElementById('status');
const cursors = ['default', 'pointer', 'crosshair', 'move', 'text', 'ew-resize', 'ns-resize'];
// Drawn at once after a tap (pressed, released, answered), so that what it asks for, the keyboard or the
// clipboard, happens within its gesture.
const settlingFrames = 4;
const lossPatience = 4000; // ms: a graphics driver that starts again is back by then
const calm = 10000; // ms without a failure, after which the next one counts as the first
const mostFailures = 3; // one soon after another: an empty board has failed too by the next

let program; // the module's functions
let page = 0; // its one value, an address in the module's memory
let frameRequest = 0;
let contextLost = false; // for a while
let failures = 0; // of the program, one soon after another
let calmTimer = 0;
let opened = null; // the text on the board, as long as it is kept nowhere
let hasBegun = false;
let isBoardShown = false; // or said that it can't be
let installTestHook = null; // only with ?test in the address
let pixels = { width: 1, height: 1 }; // of the canvas, as the browser will show it

function say(text) {
    status.textContent = text;
    status.hidden = text === '';
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
    if (box.width === 0) {
        return; // the tables are read: the board keeps its shape
    }
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

function showAsTables(text) {
    say(text);
    document.body.classList.toggle('no-board', text !== '');
    document.body.classList.toggle('has-board', text === '');
}

// Only a program that lives can tell whether it draws; comeBack() asks the one after it.
function showBoard(field) {
    if (isBoardShown || program.hasFailed()) {
        return;
    }
    isBoardShown = true;
    if (program._gussetDraws(page)) {
        showAsTables('');
        listen(field);
    } else {
        showAsTables('This browser offers no WebGL2, which the board is drawn with. The tables below work ' +
            'without it. To draw, switch on hardware acceleration or use another browser.');
    }
}

function watchContext() {
    let timer = 0;
    canvas.addEventListener('webglcontextlost', (event) => {
        event.preventDefault();
        contextLost = true;
        timer = setTimeout(() => {
            contextLost = false;
            program._gussetContextLost(page);
            showAsTables('The browser has lost its means of drawing, as happens when the graphics driver fails. ' +
                'The board is safe: the tables below show it, and can be changed. When drawing is possible again, ' +
                'the board comes back by itself.');
            wake();
        }, lossPatience);
    });
    canvas.addEventListener('webglcontextrestored', () => {
        clearTimeout(timer);
        contextLost = false;
        showAsTables('');
        program._gussetContextRestored(page);
        wake();
    });
}

function open(text, label) {
    useNewPlaceForChanges();
    opened = text;
    program.withTexts([text, label], (...addresses) => program._gussetOpened(...addresses));
    wake();
}

function tell(text, isProblem) {
    program.withTexts([text], (address) => program._gussetSaid(address, isProblem ? 1 : 0));
    wake();
}

// True when the link in the address names the very board that is there, as after a reload.
function isAddressHere() {
    return program.withTexts([location.hash], (link) => program._gussetTakeAddress(page, link)) === 1;
}

// Whether it brought another board.
function openFragment() {
    const isOther = holdsModel(location.hash) && !isAddressHere();
    if (isOther) {
        open(location.hash, 'Open link');
    }
    wake();
    return isOther;
}

function refreshAddress() {
    setAddress(program.withTexts([location.hash.slice(1)], (current) =>
        program.UTF8ToString(program._gussetAddress(page, current))));
}

function store(text) {
    opened = null;
    const isStored = storeWork(text);
    markAddress();
    return isStored;
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
        addressIsBehind: () => whenAtRest(refreshAddress),
        storeWork: store,
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
            program.withTexts([text], (address) => program._gussetTyped(address));
            drawNow(); // the next key is for the field that this one opens
        },
    });
    watchSize();
    watchContext();
}

function reads(saved) {
    return program.withTexts([saved], (address) => program._gussetReads(address)) === 1;
}

function fieldDone(key, text, how) {
    program.withTexts([key, text], (...addresses) => program._gussetFieldDone(...addresses, how));
}

// A file may be given before there is a program: it waits for `begun`, a promise.
function createParts(begun) {
    const field = createField((key, text, how) => {
        fieldDone(key, text, how);
        drawNow();
    }, (key, text) => {
        program.withTexts([key, text], (...addresses) => program._gussetFieldTyped(...addresses));
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
    const files = createFiles({ open, tell, begun });
    const recent = createRecent({
        tell,
        goTo: (show) => {
            program._gussetLeave(page); // what is on the board is in the list from then on
            return show();
        },
        reads,
        drawing: (text) => program.withTexts([text], (saved) =>
            program.UTF8ToString(program._gussetSmallPicture(page, saved))),
    });
    return { field, twin, files, recent, failure: createFailure() };
}

// Puts the work on the board of a program that has just been loaded; `failures` of it before, as
// web/page.hpp (Return) has them.
function begin(work, failuresBefore) {
    hasBegun = true;
    const address = location.href.split('#')[0];
    page = program.withTexts([address, work.newer, work.older], (...addresses) =>
        program._gussetStart(...addresses, failuresBefore));
    installTestHook?.(program, page, drawFrame);
    setPixels();
    sendViewport();
}

// How the board comes back after the program has failed `count` times, one soon after another.
function wayBack(work, count) {
    if (count === 1) {
        return 'stored';
    }
    if (count === 2 && opened !== null) {
        return 'before';
    }
    return count === 2 && work.newer !== '' ? 'undone' : 'empty';
}

// The program has failed: a new one takes its place, with the board as it was kept last; should it fail on
// that one too, with the board before its last step; and then with an empty one. After that none.
async function comeBack(parts) {
    if (!hasBegun) {
        return; // start() sees it
    }
    cancelAnimationFrame(frameRequest);
    frameRequest = 0;
    const count = ++failures;
    clearTimeout(calmTimer);
    parts.field.hide();
    if (count > mostFailures) {
        say('');
        parts.failure.stays();
        return;
    }
    const work = lastWork();
    const failedOn = opened ?? modelOf(work.newer);
    try {
        program = await startProgram(pageFor(parts), () => comeBack(parts));
    } catch (error) {
        say('');
        parts.failure.staysAway(error.message, failedOn);
        return;
    }
    const way = wayBack(work, count);
    begin(work, { stored: 1, before: 1, undone: 2, empty: 3 }[way]);
    calmTimer = setTimeout(() => { failures = 0; }, calm); // however long it took to load
    program._gussetWorkingInTwin(page, document.body.classList.contains('reading') ? 1 : 0);
    if (way === 'stored' && opened !== null) {
        open(opened, 'Open again');
    } else {
        opened = null;
    }
    if (way === 'empty') {
        useNewPlaceForChanges();
    }
    parts.failure.cameBack(way, failedOn);
    showBoard(parts.field);
    wake();
}

function welcome(work, isOther) {
    if (work.isDamaged) {
        const instead = isOther ? 'The link in the address is open instead.'
            : `${work.newer === '' ? 'An example' : 'The board before it'} is open instead.`;
        tell('The board that was here last can not be read: every copy of it in this browser is damaged. What is ' +
            `left of it stays under Recent boards. ${instead}`, true);
    } else if (work.isCopy && !isOther) {
        tell('This board is open in another tab. Here you have a copy: neither changes the other.', false);
    }
    watchOtherTabs(() => tell('Another tab works on this board too. What you do here is kept as a copy.', false));
}

async function start() {
    say('Loading …');
    let letFilesIn;
    const parts = createParts(new Promise((resolve) => { letFilesIn = resolve; }));
    const load = () => startProgram(pageFor(parts), () => comeBack(parts));
    program = await load();
    performance.mark('runtime-ready');
    const work = await openWork(reads);
    if (program.hasFailed()) { // on something stored, which counts as damaged then
        program = await load();
    }
    if (new URLSearchParams(location.search).has('test')) {
        ({ installTestHook } = await import('./test_hook.js').catch(() => ({}))); // not kept offline
    }
    begin(work, 0);
    // A reload shows what is kept, which may be newer than the address.
    welcome(work, isAddressHere() || isAddressOf(work.place) ? false : openFragment());
    letFilesIn();
    drawFrame();
    performance.mark('first-frame');
    globalThis.gussetStart.succeeded();
    addEventListener('hashchange', openFragment);
    watchLeaving();
    showBoard(parts.field);
    workOffline(() => program._gussetLeave(page));
    wake();
}

start();
