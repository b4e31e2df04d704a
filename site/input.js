// Pointers and keys, from the browser's events to the program's. One finger, a pen or the mouse's main
// button is a pointer; a second finger makes it a pinch until all have left; so does the middle button.
const phases = { down: 0, move: 1, up: 2, cancel: 3 };
const kinds = { mouse: 0, touch: 1, pen: 2 };

export function listenToPointers(canvas, to) {
    const fingers = new Map(); // touches on the board, by pointerId, in order of arrival
    let held = null; // pointerId of the one pointer in hand
    let pinching = false;
    let panFrom = null; // the middle button's last place

    const place = (event) => {
        const box = canvas.getBoundingClientRect();
        return [event.clientX - box.left, event.clientY - box.top];
    };
    const modifiers = (event) =>
        (event.shiftKey ? 1 : 0) | (event.altKey || event.ctrlKey || event.metaKey ? 2 : 0);
    const send = (phase, event) =>
        to.pointer(phases[phase], kinds[event.pointerType] ?? 0, ...place(event), modifiers(event));
    const pinch = (before, begins) => {
        const [a, b] = [...fingers.values()];
        to.pinch(...before, ...a, ...b, begins ? 1 : 0);
    };

    function beginPinch() {
        pinching = true;
        held = null;
        pinch([...fingers.values()].flat(), true);
    }

    function down(event) {
        event.preventDefault();
        to.pressed();
        canvas.focus({ preventScroll: true });
        canvas.setPointerCapture(event.pointerId);
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
            slide(panFrom, panFrom, true);
            return;
        }
        held = event.pointerId;
        send('down', event);
    }

    // Two points side by side that move alike: a pan and no zoom.
    function slide(from, to_, begins) {
        const beside = ([x, y]) => [x + 100, y];
        to.pinch(...from, ...beside(from), ...to_, ...beside(to_), begins ? 1 : 0);
    }

    function move(event) {
        if (panFrom && event.pointerType === 'mouse') {
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
        if (panFrom && event.pointerType === 'mouse') {
            panFrom = null;
        } else if (held === event.pointerId) {
            held = null;
            send(phase, event);
            to.released();
        }
    }

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
    // A call, a dialog, another window: what was in hand is let go without effect.
    addEventListener('blur', () => {
        if (held !== null) {
            to.pointer(phases.cancel, kinds.mouse, 0, 0, 0);
        }
        held = null;
        panFrom = null;
        pinching = false;
        fingers.clear();
    });
}

const keys = {
    Delete: 0, Backspace: 0, Escape: 1, Home: 5,
    ArrowLeft: 6, ArrowRight: 7, ArrowUp: 8, ArrowDown: 9,
    PageDown: 10, PageUp: 11, // what a presenter's clicker sends
};
const keysWithControl = { z: 2, y: 3, a: 4, 0: 5 };

function keyOf(event) {
    if (event.ctrlKey || event.metaKey) {
        const letter = event.key.toLowerCase();
        return letter === 'z' && event.shiftKey ? 3 : keysWithControl[letter];
    }
    if (event.altKey) {
        return undefined;
    }
    return event.key === ' ' ? 10 : keys[event.key];
}

const panelKeys = {
    F6: 0, Tab: 1, ArrowLeft: 3, ArrowRight: 4, ArrowUp: 5, ArrowDown: 6, Enter: 7, ' ': 7,
    PageUp: 8, PageDown: 9, Home: 10, End: 11, Escape: 12,
};

// In a panel (F6 leads there) its keys are all its own; on the board Tab stays the browser's, so that nobody
// is caught in here.
function panelKeyOf(event, inPanel) {
    if (event.ctrlKey || event.metaKey || event.altKey || (!inPanel && event.key !== 'F6')) {
        return undefined;
    }
    return event.key === 'Tab' && event.shiftKey ? 2 : panelKeys[event.key];
}

// Only while nothing of the page's own is being typed in or pressed; what is not ours stays the browser's.
export function listenToKeys({ press, pressInPanel, inPanel }) {
    addEventListener('keydown', (event) => {
        const onBoard = event.target === document.body || event.target.id === 'board';
        if (!onBoard || document.body.classList.contains('reading')) {
            return;
        }
        const panelKey = panelKeyOf(event, inPanel());
        const key = panelKey === undefined ? keyOf(event) : undefined;
        if (panelKey !== undefined) {
            pressInPanel(panelKey);
        } else if (key !== undefined) {
            press(key);
        } else {
            return;
        }
        event.preventDefault();
    });
}
