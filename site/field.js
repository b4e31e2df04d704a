// The text being edited: a real input element, laid over the field that the program draws, so that selection
// handles, input methods, paste and screen readers work as usual.

// Rows from a spreadsheet, which an input element would run together; null for any other text.
export function pastedRows(event) {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    return /[\t\n]/.test(text.trim()) ? text : null;
}

const ends = { kept: 0, givenUp: 1, next: 2, previous: 3, below: 4 };

export function createField(done, typed) {
    const frame = document.getElementById('field');
    const input = document.getElementById('field-input');
    const sign = document.getElementById('field-sign');
    const angle = document.getElementById('field-angle');
    const stage = document.getElementById('stage');
    let key = ''; // of the field shown, as the program names it; empty: none
    let ofMember = false;
    let place = null;

    function finish(how, text = input.value) {
        if (key === '') {
            return;
        }
        const finished = key;
        key = ''; // first, since hiding blurs the input, and that must not finish it again
        frame.hidden = true;
        stage.style.transform = '';
        document.getElementById('board').focus({ preventScroll: true });
        done(finished, text, ends[how]);
    }

    // The keyboard of a phone covers the lower half: the whole board moves up until the field is visible.
    function stayAboveKeyboard() {
        const view = window.visualViewport;
        if (key === '' || !view) {
            return;
        }
        const lift = Math.max(0, place.y + place.height + 12 - (view.offsetTop + view.height));
        stage.style.transform = lift > 0 ? `translateY(${-lift}px)` : '';
    }

    function moveTo(x, y, width, height) {
        place = { x, y, width, height };
        frame.style.left = `${x}px`;
        frame.style.top = `${y}px`;
        frame.style.width = `${width}px`;
        frame.style.height = `${height}px`;
        stayAboveKeyboard();
    }

    function begin(field) {
        const { text } = field;
        ({ key, ofMember } = field);
        input.value = text;
        input.inputMode = field.numeric ? 'decimal' : 'text';
        input.setAttribute('aria-label', field.name);
        const isKeypad = field.numeric && matchMedia('(pointer: coarse)').matches;
        sign.hidden = !isKeypad || !field.sign;
        angle.hidden = !isKeypad || !field.angle;
        frame.hidden = false;
        input.focus({ preventScroll: true });
        if (field.goesOn) {
            input.setSelectionRange(text.length, text.length);
            typed(key, text);
        } else {
            input.select();
        }
    }

    input.addEventListener('keydown', (event) => {
        const how = { Enter: 'below', Escape: 'givenUp', Tab: event.shiftKey ? 'previous' : 'next' };
        if (event.isComposing || !how[event.key]) {
            return;
        }
        event.preventDefault();
        finish(how[event.key]);
    });
    input.addEventListener('input', () => key !== '' && typed(key, input.value));
    input.addEventListener('blur', () => finish('kept'));
    input.addEventListener('paste', (event) => {
        const rows = pastedRows(event);
        if (key !== '' && rows !== null) {
            event.preventDefault();
            input.value = '';
            finish('kept', rows);
        }
    });
    // The decimal keypads of phones have neither a minus nor an @. Not a click: that would blur the input first.
    angle.addEventListener('pointerdown', (event) => {
        event.preventDefault();
        const at = input.value.includes('@') ? '' : ' @ ';
        input.setRangeText(at, input.selectionEnd, input.selectionEnd, 'end');
        typed(key, input.value);
    });
    sign.addEventListener('pointerdown', (event) => {
        event.preventDefault();
        input.value = /^\s*[-−]/.test(input.value)
            ? input.value.replace(/^\s*[-−]\s*/, '')
            : `-${input.value.trim()}`;
        typed(key, input.value);
    });
    window.visualViewport?.addEventListener('resize', stayAboveKeyboard);
    window.visualViewport?.addEventListener('scroll', stayAboveKeyboard);

    return {
        show(field, x, y, width, height) {
            if (field.key !== key) {
                begin(field);
            }
            moveTo(x, y, width, height);
        },
        hide() {
            key = '';
            frame.hidden = true;
            stage.style.transform = '';
        },
        // The board was pressed: a canvas does not take the focus by itself. True if the end of a member was being
        // typed: the press only ends the typing, and draws nothing.
        keep: () => {
            const drawsNothing = key !== '' && ofMember;
            finish('kept');
            return drawsNothing;
        },
    };
}
