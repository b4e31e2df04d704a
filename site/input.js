// Pointers and keys, from the browser's events to the program's. One finger, a pen or the mouse's main button is a
// pointer; a second finger makes it a pinch until all fingers are lifted; the middle button is a pinch too.
const phases = { down: 0, move: 1, up: 2, cancel: 3, hold: 4 };
const kinds = { mouse: 0, touch: 1, pen: 2 };
const longPress = 500; // ms
const restsWithin = 8; // CSS px
const sameTap = 1000; // ms

// A tap on the board may open a dialog under the finger. The click that the browser makes from the same tap is not
// meant for the dialog.
function dropStrayClicks(canvas) {
    let tapped = -Infinity;
    addEventListener('pointerdown', () => { tapped = -Infinity; }, true);
    canvas.addEventListener('pointerup', ({ timeStamp }) => { tapped = timeStamp; });
    addEventListener('click', (event) => {
        const isOfPointer = event.isTrusted && event.detail > 0; // not of a key or a script
        if (isOfPointer && event.target !== canvas && event.timeStamp - tapped < sameTap) {
            event.preventDefault();
            event.stopImmediatePropagation();
        }
    }, true);
}

export function listenToPointers(canvas, to) {
    const fingers = new Map(); // touches on the board, by pointerId, in order of arrival
    let held = null; // pointerId of the one active pointer
    let pinching = false;
    let panFrom = null; // the place where the middle or the right button was last
    let rightFrom = null; // where the right button went down, until it has moved the board
    let penDown = false;
    let pressTimer = 0;
    let pressedAt = null;

    const place = (event) => {
        const box = canvas.getBoundingClientRect();
        return [event.clientX - box.left, event.clientY - box.top];
    };
    const modifiers = (event) =>
        (event.shiftKey ? 1 : 0) | (event.altKey || event.ctrlKey || event.metaKey ? 2 : 0);
    const send = (phase, event, more = 0) =>
        to.pointer(phases[phase], kinds[event.pointerType] ?? 0, ...place(event),
            modifiers(event) | more);
    const away = (event, from) => {
        const [x, y] = place(event);
        return Math.hypot(x - from[0], y - from[1]);
    };

    // A timer of our own: some browsers send no contextmenu for a finger, others send it in mid-stroke.
    function awaitLongPress(event) {
        pressedAt = place(event);
        const hold = () => {
            if (pressedAt && held === event.pointerId) {
                send('hold', event);
                to.released(); // the menu opens there at once
            }
        };
        // A frame later: on a busy page the event for lifting the finger may still be waiting.
        pressTimer = setTimeout(() => requestAnimationFrame(hold), longPress);
    }

    function noLongPress() {
        clearTimeout(pressTimer);
        pressedAt = null;
    }

    const pinch = (before, begins) => {
        const [a, b] = [...fingers.values()];
        to.pinch(...before, ...a, ...b, begins ? 1 : 0);
    };

    function beginPinch() {
        pinching = true;
        held = null;
        noLongPress();
        pinch([...fingers.values()].flat(), true);
    }

    function down(event) {
        event.preventDefault();
        if (penDown && event.pointerType === 'touch') {
            return; // the palm
        }
        const endsTyping = to.pressed();
        canvas.focus({ preventScroll: true });
        canvas.setPointerCapture(event.pointerId);
        if (event.pointerType === 'pen' && event.button === 0) {
            letGoOfFingers(event);
        }
        if (event.pointerType === 'touch') {
            fingers.set(event.pointerId, place(event));
            if (fingers.size === 2) {
                beginPinch();
            }
            if (fingers.size > 1 || pinching) {
                return;
            }
        } else if (event.button !== 0) {
            panFrom = place(event);
            rightFrom = event.button === 2 ? panFrom : null;
            slide(panFrom, panFrom, true);
            return;
        }
        held = event.pointerId;
        send('down', event, endsTyping ? 4 : 0);
        if (event.pointerType !== 'mouse') {
            awaitLongPress(event);
        }
    }

    // The palm came before the pen: what it began is undone.
    function letGoOfFingers(event) {
        penDown = true;
        if (held !== null && fingers.has(held)) {
            noLongPress();
            to.pointer(phases.cancel, kinds.touch, ...place(event), 0);
            held = null;
        }
        fingers.clear();
        pinching = false;
    }

    // Two points side by side that move alike: a pan without zoom.
    function slide(from, to_, begins) {
        const beside = ([x, y]) => [x + 100, y];
        to.pinch(...from, ...beside(from), ...to_, ...beside(to_), begins ? 1 : 0);
    }

    function move(event) {
        if (pressedAt && held === event.pointerId && away(event, pressedAt) > restsWithin) {
            noLongPress();
        }
        if (rightFrom && away(event, rightFrom) <= restsWithin) {
            return;
        }
        rightFrom = null;
        if (panFrom && event.pointerType !== 'touch') {
            const at = place(event);
            slide(panFrom, at, false);
            panFrom = at;
            return;
        }
        const before = [...fingers.values()].slice(0, 2).flat();
        if (fingers.has(event.pointerId)) {
            fingers.set(event.pointerId, place(event));
        }
        if (pinching) {
            if (fingers.size >= 2) {
                pinch(before, false);
            }
        } else if (held === event.pointerId || (held === null && event.pointerType !== 'touch')) {
            send('move', event);
        }
    }

    function end(event, phase) {
        fingers.delete(event.pointerId);
        if (fingers.size === 0) {
            pinching = false;
        }
        if (event.pointerType === 'pen') {
            penDown = false;
        }
        if (held === event.pointerId) {
            noLongPress();
        }
        if (rightFrom && event.pointerType !== 'touch' && phase === 'up') {
            rightFrom = null;
            panFrom = null;
            send('hold', event);
            to.released();
            return;
        }
        if (panFrom && event.pointerType !== 'touch') {
            panFrom = null;
        } else if (held === event.pointerId) {
            held = null;
            send(phase, event);
            to.released();
        }
    }

    dropStrayClicks(canvas);
    canvas.addEventListener('pointerdown', down);
    canvas.addEventListener('pointermove', move);
    canvas.addEventListener('pointerup', (event) => end(event, 'up'));
    canvas.addEventListener('pointercancel', (event) => end(event, 'cancel'));
    canvas.addEventListener('contextmenu', (event) => event.preventDefault());
    canvas.addEventListener('wheel', (event) => {
        event.preventDefault();
        const unit = [1, 16, canvas.clientHeight][event.deltaMode];
        to.wheel(...place(event), event.deltaX * unit, event.deltaY * unit, event.ctrlKey ? 1 : 0);
    }, { passive: false });
    // A call, a dialog, another window: the stroke in progress is dropped without effect.
    addEventListener('blur', () => {
        if (held !== null) {
            to.pointer(phases.cancel, kinds.mouse, 0, 0, 0);
        }
        held = null;
        panFrom = null;
        rightFrom = null;
        pinching = false;
        penDown = false;
        fingers.clear();
        noLongPress();
    });
}

const keys = {
    Delete: 0, Backspace: 0, Escape: 1, Home: 5,
    ArrowLeft: 6, ArrowRight: 7, ArrowUp: 8, ArrowDown: 9,
    PageDown: 10, PageUp: 11, // sent by a presenter's clicker
    ContextMenu: 12, Enter: 13,
};
const keysWithControl = { z: 2, y: 3, a: 4, 0: 5 };
const keysOfKinds = { j: 14, m: 16, s: 18, l: 20 }; // picks the next of that kind; with Shift the one before
const saveKey = 22;

function keyOf(event, inPanel) {
    if (event.ctrlKey || event.metaKey) {
        const letter = event.key.toLowerCase();
        return letter === 'z' && event.shiftKey ? 3 : keysWithControl[letter];
    }
    if (event.altKey) {
        return undefined;
    }
    if (event.key === 'F10' && event.shiftKey) {
        return keys.ContextMenu;
    }
    const kind = keysOfKinds[event.key.toLowerCase()];
    if (kind !== undefined && !inPanel) {
        return kind + (event.shiftKey ? 1 : 0);
    }
    return event.key === ' ' ? 10 : keys[event.key];
}

const panelKeys = {
    F6: 0, Tab: 1, ArrowLeft: 3, ArrowRight: 4, ArrowUp: 5, ArrowDown: 6, Enter: 7, ' ': 7,
    PageUp: 8, PageDown: 9, Home: 10, End: 11, Escape: 12,
};

// While a panel has the focus (F6 leads there) all its keys are its own; on the board Tab is left to the browser,
// so that nobody is trapped here.
function panelKeyOf(event, inPanel) {
    if (event.ctrlKey || event.metaKey || event.altKey || (!inPanel && event.key !== 'F6')) {
        return undefined;
    }
    return event.key === 'Tab' && event.shiftKey ? 2 : panelKeys[event.key];
}

// Digits typed on the board: a value for what is being drawn.
function startsFigure(event) {
    return !event.ctrlKey && !event.metaKey && !event.altKey && /^[0-9.,=(−-]$/.test(event.key);
}

// Anything typed on a focused cell: what it is to hold.
function startsText(event) {
    return !event.ctrlKey && !event.metaKey && !event.altKey && [...event.key].length === 1;
}

// The board has the focus from the start, without anybody having asked for it: that is shown to those who use keys.
function showFocusByKeys() {
    const set = (byKeys) => document.body.classList.toggle('by-keys', byKeys);
    addEventListener('keydown', ({ key }) => /^(Tab|F6|Arrow\w+)$/.test(key) && set(true), true);
    addEventListener('pointerdown', () => set(false), true);
}

// Only while no element of the page itself is being typed in or pressed; other keys are left to the browser.
export function listenToKeys({ press, pressInPanel, inPanel, type }) {
    showFocusByKeys();
    addEventListener('keydown', (event) => {
        const onBoard = event.target === document.body || event.target.id === 'board';
        const isCovered = ['reading', 'at-start'].some((name) => document.body.classList.contains(name));
        if (!onBoard || isCovered) {
            return;
        }
        const isInPanel = inPanel();
        const panelKey = panelKeyOf(event, isInPanel);
        const key = panelKey === undefined ? keyOf(event, isInPanel) : undefined;
        if (panelKey !== undefined) {
            pressInPanel(panelKey);
        } else if (key !== undefined) {
            press(key);
        } else if (inPanel() ? startsText(event) : startsFigure(event)) {
            type(event.key); // comes back as the text of a field
        } else {
            return;
        }
        event.preventDefault();
    });
}

// Anywhere in the page, and whatever is being typed: `save` gets the program's number of the key. The browser's own
// command would save the page without the board.
export function listenToSaving(save) {
    addEventListener('keydown', (event) => {
        const isCommand = (event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey;
        if (isCommand && event.key.toLowerCase() === 's') {
            event.preventDefault();
            save(saveKey);
        }
    }, true);
}
