// Starts the program, passes it the browser's events, and draws a frame only when one is wanted.
import { holdsModel, isAddressOf, markAddress, readAddress, setAddress, whenAtRest } from './address.js';
import { createFailure } from './failure.js';
import { createField } from './field.js';
import { canShareLinks, copyText, createFiles, openedFrom } from './files.js';
import { listenToKeys, listenToPointers, listenToSaving } from './input.js';
import { loadLanguage } from './language.js';
import { createLetters } from './letters.js';
import { startProgram } from './program.js';
import { createReader } from './reader.js';
import { countFailures, wayBack } from './restarts.js';
import {
    boardPlace, keepsWork, lastWork, modelOf, openWork, storeWork, useNewPlaceForChanges, watchOtherTabs,
} from './storage.js';
import { createShown } from './shown.js';
import { rememberTaught } from './taught.js';
import { createPageText } from './page_text.js';
import { createViews } from './views.js';
import { createViewport } from './viewport.js';

const canvas = document.getElementById('board');
const status = document.getElementById('status');
const cursors = ['default', 'pointer', 'crosshair', 'move', 'text', 'ew-resize', 'ns-resize'];
// Drawn at once after a tap (pressed, released, answered), so that what it asks for, such as the keyboard or the
// clipboard, happens within the user gesture.
const settlingFrames = 4;
const lossPatience = 4000; // ms: a graphics driver that restarts is back by then
let program; // the module's functions
let page = 0; // an address in the module's memory
let frameRequest = 0;
let contextLost = false; // temporarily
let offered = []; // { text, from, file }, not yet opened or refused by the program
let opened = null; // the text on the board, while it is not stored anywhere
let hasBegun = false;
let isWhole = false; // the program: until then it shows its first picture and takes no input
let isBoardShown = false; // or reported as unavailable
let language = ''; // translations as JSON, or English
let hasBoard = false; // other than the example that the page begins with
let isRefused = false; // what was opened last: the program says why
let views; // of the page: start page, board, tables
let sayAtStart; // what has been refused, on the start page
let ground = null; // the photograph under the board (ground.js), when its script is there
let installTestHook = null; // only with ?test in the address

const failures = countFailures();
const viewport = createViewport(canvas, (...all) => {
    program._gussetViewport(...all);
    wake();
});

function say(text) {
    status.textContent = text;
    status.hidden = text === '';
}

function drawFrame() {
    if (contextLost) {
        return 0;
    }
    viewport.fit();
    const more = program._gussetFrame(page, canvas.width, canvas.height);
    ground?.follow();
    return more;
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

function showAsTables(text) {
    say(text);
    document.body.classList.toggle('no-board', text !== '');
    document.body.classList.toggle('has-board', text === '');
}

// Whether the page's own tables are read: as a page of their own, or since there is no board.
function wantTables(pageText) {
    program._gussetWorkingInPageText(page, pageText.isRead() ? 1 : 0);
}

// The drawing is visible, but can't be edited yet.
function showPicture() {
    if (program._gussetDraws(page)) {
        document.body.classList.add('has-picture');
        say('Loading the rest …');
    }
}

// Only a running program can tell whether it draws; comeBack() asks the next one.
function showBoard({ field, pageText }) {
    if (isBoardShown || program.hasFailed()) {
        return;
    }
    isBoardShown = true;
    if (program._gussetDraws(page)) {
        showAsTables('');
        listen(field, pageText);
    } else {
        showAsTables('This browser offers no WebGL2, which the board is drawn with. The tables below work ' +
            'without it. To draw, switch on hardware acceleration or use another browser.');
        wantTables(pageText);
        drawNow();
    }
}

function watchContext(pageText) {
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
            wantTables(pageText);
            wake();
        }, lossPatience);
    });
    canvas.addEventListener('webglcontextrestored', () => {
        clearTimeout(timer);
        contextLost = false;
        showAsTables('');
        program._gussetContextRestored(page);
        wantTables(pageText);
        wake();
    });
}

function open(text, from, file = '') {
    offered.push({ text, from, file });
    program.withTexts([text, file], (...addresses) => program._gussetOpened(...addresses, from));
    wake();
}

// The first text offered put `model`, as JSON, on the board; `model` is empty if the text was refused.
function textOpened(model) {
    const { text } = offered.shift();
    isRefused = model === '';
    if (!isRefused) {
        useNewPlaceForChanges(model);
        opened = boardPlace() === null ? text : null;
        hasBoard = true;
        views.boardCame();
        queueMicrotask(refreshAddress); // after this frame: a reload at once shows it too
    }
}

function tell(text, isProblem) {
    if (views.shown() === 'start') {
        sayAtStart(text);
        return;
    }
    program.withTexts([text], (address) => program._gussetSaid(address, isProblem ? 1 : 0));
    wake();
}

// True if the link in the address describes exactly the board that is shown, as after a reload.
function isAddressHere() {
    return program.withTexts([readAddress()], (link) => program._gussetTakeAddress(page, link)) === 1;
}

// Returns whether it brought another board.
function openFragment() {
    const isOther = !isAddressHere() && holdsModel(location.hash);
    if (isOther) {
        open(location.hash, openedFrom.link);
    }
    wake();
    return isOther;
}

// An entry of the history may be behind the board that it shows. Only looking at the example keeps the plain address.
function refreshOwnAddress() {
    if (hasBoard) {
        refreshAddress();
    }
}

// After Back or Forward, or with a link put in the address.
function followAddress() {
    if (views.isOfBoard()) {
        readAddress();
        refreshOwnAddress();
    } else if (!openFragment()) {
        views.stamp();
    }
}

function refreshAddress() {
    if (!isWhole) {
        whenAtRest(refreshAddress);
        return;
    }
    if (program.hasFailed()) {
        return; // it has no board, and the next program may have to open the address
    }
    setAddress(program.withTexts([location.hash.slice(1)], (current) =>
        program.UTF8ToString(program._gussetAddress(page, current))));
}

function store(text) {
    opened = null;
    hasBoard = true;
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

// What the program may request of the page (web/platform/platform_web.cpp).
function pageFor({ field, pageText, files }) {
    return {
        showField: field.show,
        hideField: field.hide,
        showCursor: (index) => { canvas.style.cursor = cursors[index]; },
        setTheme: (theme) => { document.documentElement.dataset.theme = theme; },
        copyText: (text, said) => copyText(text).then((copied) => {
            if (copied) {
                tell(said, false);
            }
        }),
        saveFile: files.save,
        savePicture: files.savePicture,
        canShareLinks,
        shareLink: files.shareLink,
        textOpened,
        setAddress,
        addressIsBehind: () => whenAtRest(refreshAddress),
        storeWork: store,
        setPageText: pageText.set,
        showPageText: () => views.goTo('tables'),
        leaveFor: (folder, link) => (folder === 'ground' ? openGround() : location.assign(`${folder}/#${link}`)),
        drawGround: (...all) => ground?.draw(...all),
        showStart: () => views.goTo('start'),
        lessonDone: rememberTaught,
        announce: (text) => {
            pageText.announce(text);
            if (isRefused && views.shown() === 'start') {
                sayAtStart(text);
            }
            isRefused = false;
        },
        drawAgainAfter: (seconds) => setTimeout(wake, 1000 * seconds),
        ...createLetters(),
    };
}

async function loadGround() {
    const { createGround } = await import('./ground.js');
    ground ??= createGround({ canvas, wake, running: () => ({ program, page }), say: (text) => tell(text, true) });
}

// With a photograph, or to choose one.
function openGround(file) {
    loadGround().then(() => ground.open(file), ({ message }) => tell(`That could not be fetched (${message}).`, true));
}

// On the start page a photograph begins a new board, as the button there does.
function trace(photograph) {
    if (views.shown() === 'start') {
        open(program.UTF8ToString(program._gussetEmptyBoard(page)), openedFrom.new);
    }
    openGround(photograph);
}

function listen(field, pageText) {
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
    viewport.watch();
    watchContext(pageText);
}

function fieldDone(key, text, how) {
    program.withTexts([key, text], (...addresses) => program._gussetFieldDone(...addresses, how));
}

// What prints the page: not needed for the first picture, but before the browser's own command to print.
let sheet = null; // a promise
function loadSheet({ files }) {
    sheet ??= import('./sheet.js').then(({ createSheet }) => createSheet({
        program: () => program, page: () => page, drawNow: () => program && drawNow(), save: files.save }));
    sheet.catch(() => { sheet = null; }); // lost on the way: fetched again when it is asked for
    return sheet;
}

// A file may arrive before there is a program: it waits for `begun`, a promise.
function createParts(begun) {
    const field = createField((key, text, how) => {
        fieldDone(key, text, how);
        drawNow();
    }, (key, text) => {
        program.withTexts([key, text], (...addresses) => program._gussetFieldTyped(...addresses));
        wake();
    });
    const pageText = createPageText({
        wantWorking: (wanted) => {
            program?._gussetWorkingInPageText(page, wanted ? 1 : 0);
            wake();
        },
        drawNow: () => program && drawNow(),
        printSheet: async () => (await loadSheet({ files })).open(),
        fieldDone: (key, text) => fieldDone(key, text, 0),
        goTo: (view) => views.goTo(view),
    });
    const files = createFiles({ open, tell, begun, trace });
    return { field, pageText, files, failure: createFailure() };
}

// `home`: what the start page needs of the page (home_board.js), but the views.
function createAllViews(pageText, home) {
    const shown = createShown({ canvas, pageText });
    const all = createViews({
        show: (view, left) => shown.show(view, left, { ...home, views: all }),
        leaving: refreshOwnAddress,
        arrived: followAddress,
    });
    sayAtStart = shown.say;
    return all;
}

// Puts the work on the board of a newly loaded program; `failuresBefore` is how often it has failed on it, numbered
// as in web/page.hpp (Return).
function begin(work, failuresBefore, pageText) {
    hasBegun = true;
    hasBoard ||= work.newer !== '';
    const address = location.href.split('#')[0];
    page = program.withTexts([address, work.newer, work.older], (...addresses) =>
        program._gussetStart(...addresses, failuresBefore));
    if (language !== '') {
        program.withTexts([language], (address) => program._gussetSpeak(page, address));
    }
    if (isWhole) {
        installTestHook?.(program, page, drawFrame);
    }
    wantTables(pageText);
    viewport.measure();
}

// The program has crashed and is replaced by a new one, with the board as it was last stored; if that crashes too,
// with the board before its last step; then with an empty board. After that there is no further restart.
async function comeBack(parts) {
    if (!hasBegun || program.lacksRest()) {
        return; // start() notices
    }
    cancelAnimationFrame(frameRequest);
    frameRequest = 0;
    parts.field.hide();
    const work = lastWork();
    const inHand = offered[0]?.text ?? opened;
    offered = [];
    const failedOn = inHand ?? modelOf(work.newer);
    const way = wayBack(failures.more(), work, inHand !== null);
    if (way === null) {
        say('');
        parts.failure.stays();
        return;
    }
    try {
        program = await startProgram(pageFor(parts), () => comeBack(parts));
    } catch (error) {
        say('');
        parts.failure.staysAway(error.message, failedOn);
        return;
    }
    begin(work, { stored: 1, before: 1, undone: 2, empty: 3 }[way], parts.pageText);
    failures.startedAgain();
    const since = offered; // arrived while there was no program
    offered = [];
    opened = null;
    if (way === 'stored' && inHand !== null) {
        open(inHand, openedFrom.before);
    }
    since.forEach(({ text, from, file }) => open(text, from, file));
    if (way === 'empty') {
        useNewPlaceForChanges();
    }
    parts.failure.cameBack(way, failedOn);
    showBoard(parts);
    wake();
}

function welcome(work, isOther) {
    if (work.isDamaged) {
        const instead = isOther ? 'The link in the address is open instead.'
            : `${work.newer === '' ? 'An example' : 'The board before it'} is open instead.`;
        tell('The board that was here last cannot be read: every copy of it in this browser is damaged. What is ' +
            `left of it stays under Recent boards on the start page. ${instead}`, true);
    } else if (work.isCopy && !isOther) {
        tell('This board is open in another tab. Here you have a copy: neither changes the other.', false);
    }
}

// Everything up to the first frame; it may be repeated with another program.
function showFirst(work, pageText) {
    offered = [];
    begin(work, 0, pageText);
    // A reload shows what is stored, which may be newer than the address.
    welcome(work, isAddressHere() || isAddressOf(work.from) ? false : openFragment());
    drawFrame();
}

// Waits for the rest of the program. A program that failed to start without it is replaced by a whole one.
async function makeWhole(work, load, pageText) {
    const early = program;
    if (!early.hasFailed()) {
        performance.mark('first-frame');
        showPicture();
        wake();
        await early.becomeWhole();
    }
    if (early.lacksRest()) {
        program = await load();
        showFirst(work, pageText);
        performance.mark('first-frame');
    }
    isWhole = true;
}

async function start() {
    let letFilesIn;
    const begun = new Promise((resolve) => { letFilesIn = resolve; });
    const parts = createParts(begun);
    views = createAllViews(parts.pageText, {
        begun,
        running: () => ({ program, page }),
        open,
        files: parts.files,
        hasBoard: () => hasBoard || history.state?.from === 'board',
        openGround,
        newProgram: () => startProgram({}, () => {}),
    });
    views.begin(history.state?.view ?? (holdsModel(location.hash) || keepsWork() ? 'board' : 'start'));
    const load = (how) => startProgram(pageFor(parts), () => comeBack(parts), how);
    const speech = loadLanguage();
    program = await load({ isEarly: true });
    performance.mark('runtime-ready');
    language = await speech;
    const reader = createReader(load, program);
    const work = await openWork(reader.reads);
    program = await reader.ready(); // another one if that failed on something stored
    showFirst(work, parts.pageText);
    const shown = location.hash;
    await makeWhole(work, load, parts.pageText);
    await parts.pageText.load();
    if (new URLSearchParams(location.search).has('test')) {
        ({ installTestHook } = await import('./test_hook.js').catch(() => ({}))); // not kept offline
        if (!program.hasFailed()) { // else the next one gets it in begin()
            installTestHook?.(program, page, drawFrame);
        }
    }
    letFilesIn();
    listenToSaving((key) => {
        parts.field.keep(); // what is being typed belongs to the board
        parts.pageText.keep();
        program._gussetKey(key);
        drawNow();
    });
    globalThis.gussetStart.succeeded();
    addEventListener('hashchange', followAddress);
    if (location.hash !== shown) {
        followAddress();
    }
    watchOtherTabs(() => tell('Another tab works on this board too. What you do here is kept as a copy.', false));
    watchLeaving();
    showBoard(parts);
    performance.mark('can-edit');
    loadSheet(parts).catch(() => {});
    loadGround().catch(() => {});
    import('./offline.js').then(({ workOffline }) => workOffline(() => program._gussetLeave(page))).catch(() => {});
    wake();
}

start();
