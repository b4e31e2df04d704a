// An equation that the student builds by picking forces on the free body: each is in it or not, with or against the axis,
// times nothing, a sine, a cosine or an arm. It may be kept, and is then handed in.

const at = (id) => document.getElementById(id);
const signs = [['no', 'not in it', 0], ['+', 'positive', 1], ['−', 'negative', -1]];

function formulaItem(tag, html) {
    return Object.assign(document.createElement(tag), { innerHTML: html }); // made by the program, everything escaped
}

let lastName = 0; // of groups of buttons, which must differ

function choiceOf(force) {
    const group = `sign-${lastName += 1}`;
    const choice = document.createElement('span');
    choice.className = 'choice';
    choice.setAttribute('role', 'radiogroup');
    choice.setAttribute('aria-label', `${force}: sign`);
    signs.forEach(([text, name, value]) => {
        const radio = Object.assign(document.createElement('input'), { type: 'radio', name: group, value: String(value) });
        radio.checked = value === 0;
        radio.setAttribute('aria-label', name);
        const label = document.createElement('label');
        label.append(radio, Object.assign(document.createElement('span'), { textContent: text }));
        choice.append(label);
    });
    return choice;
}

function multiplierOf({ says, angle }, takesMoments) {
    if (takesMoments) {
        const arm = Object.assign(document.createElement('input'), { type: 'text', inputMode: 'decimal', placeholder: 'arm' });
        arm.setAttribute('aria-label', `${says}: arm`);
        return arm;
    }
    const by = document.createElement('select');
    by.setAttribute('aria-label', `${says}: times`);
    by.append(new Option('as it is', 'whole'), new Option(`· sin ${angle}`, 'sine'), new Option(`· cos ${angle}`, 'cosine'));
    return by;
}

// A row shows its term, and its choices while it is picked.
function termRow(force, takesMoments, { picked, changed }) {
    const row = Object.assign(document.createElement('div'), { className: 'term' });
    const head = Object.assign(document.createElement('button'), { type: 'button', className: 'force' });
    const choices = Object.assign(document.createElement('div'), { className: 'answer', hidden: true });
    const choice = choiceOf(force.says);
    const by = takesMoments || force.angle ? multiplierOf(force, takesMoments) : null; // parallel to an axis: as it is
    const says = Object.assign(document.createElement('span'), { className: 'verdict' });
    choices.append(choice, ...by ? [by] : []);
    row.append(head, choices, says);
    const sign = () => Number(choice.querySelector(':checked').value);
    const arm = () => Number(by.value.replace(',', '.'));
    const term = () => (takesMoments ? { sign: sign(), by: 'arm', arm: arm() || 0 } : { sign: sign(), by: by?.value ?? 'whole' });

    function show() {
        const of = takesMoments ? ` · ${by.value || '?'}` : by && by.value !== 'whole' ? ` ${by.selectedOptions[0].text}` : '';
        const words = document.createElement('b');
        if (sign() === 0) {
            words.textContent = 'not in it';
        } else {
            words.append(`${sign() > 0 ? '+' : '−'} `, formulaItem('span', force.label), of);
        }
        head.replaceChildren(formulaItem('span', force.html), words);
    }
    row.addEventListener('input', () => {
        says.textContent = '';
        show();
        changed();
    });
    head.addEventListener('click', picked);
    show();
    const pick = (isPicked) => {
        row.classList.toggle('lit', isPicked);
        head.setAttribute('aria-expanded', String(isPicked));
        choices.hidden = !isPicked;
    };
    pick(false);
    const focus = () => choice.querySelector('input:checked').focus({ preventScroll: true });
    const unread = () => takesMoments && sign() !== 0 && (by.value.trim() === '' || !(arm() >= 0 && arm() < Infinity));
    return Object.assign(row, { term, says, pick, focus, unread, force });
}

// `ask` takes a request without the model and the answers, and adds them. `kept` holds the equations in the form in which
// they are handed in; `keep()` saves them.
export function createEquation({ ask, exercise, kept, keep }) {
    let rows = [];
    let body = null;
    const sum = at('sum');
    at('about').replaceChildren(...exercise.joints.map((joint) => new Option(joint)));
    sum.querySelector('[value=moments]').textContent = `of moments, ${exercise.clockwise ? '↻' : '↺'} positive`;
    at('judge').hidden = !exercise.checksAtOnce;

    const request = (more) => ({ do: 'equation', ...body.chosen(), sum: sum.value, about: at('about').value,
        terms: rows.map((row) => row.term()), ...more });

    const isBegun = () => rows.some((row) => row.term().sign !== 0);

    function write() {
        const reply = isBegun() ? ask(request({})) : {};
        at('built').replaceChildren(...(reply.html ?? []).map((html) => formulaItem('p', html)));
    }

    function clear() {
        at('judge-says').textContent = '';
        write();
    }

    function pick(index) {
        rows.forEach((row, one) => row.pick(one === index));
        body.light(index);
    }

    // The rows anew, as for another body or another sum.
    function show() {
        const takesMoments = sum.value === 'moments';
        at('about').hidden = at('about-label').hidden = !takesMoments;
        rows = body.forces().map((force, index) =>
            termRow(force, takesMoments, { picked: () => pick(index), changed: clear }));
        at('terms').replaceChildren(...rows);
        at('judge').disabled = at('keep').disabled = rows.length === 0;
        body.light();
        clear();
    }

    // The first row that can't be read, which is then told.
    function hasUnread() {
        const index = rows.findIndex((row) => row.unread());
        if (index >= 0) {
            pick(index);
            rows[index].says.textContent = 'Write its arm: a distance, such as 4 or 2.5.';
            at('judge-says').textContent = `${rows[index].force.name} has no arm yet.`;
        }
        return index >= 0;
    }

    function showKept() {
        const { equations = [], faults } = kept.length > 0 ? ask({ do: 'equations' }) : {};
        at('kept').hidden = kept.length === 0;
        at('kept-list').replaceChildren(...equations.map(({ body: name, html }, index) => {
            const remove = Object.assign(document.createElement('button'), { type: 'button', textContent: 'Remove' });
            remove.setAttribute('aria-label', `Remove equation ${index + 1}`);
            remove.addEventListener('click', () => {
                kept.splice(index, 1);
                keep();
                showKept();
                at('kept-title').focus();
            });
            const item = document.createElement('li');
            item.append(Object.assign(document.createElement('span'), { textContent: `${name}:\u00A0` }), formulaItem('span', html), remove);
            return item;
        }));
        at('kept-says').textContent = faults?.join(' ') ?? '';
    }

    sum.addEventListener('change', show);
    at('about').addEventListener('change', clear);
    at('judge').addEventListener('click', () => {
        if (hasUnread()) {
            return;
        }
        const reply = ask(request({ judge: true }));
        (reply.terms ?? []).forEach(({ says }, index) => { rows[index].says.textContent = says; });
        const wrong = (reply.terms ?? []).filter(({ right }) => !right).length;
        at('judge-says').textContent = reply.faults?.[0] ?? (reply.says || `${wrong} of ${rows.length} forces need another look.`);
    });
    at('keep').addEventListener('click', () => {
        if (hasUnread()) {
            return;
        }
        if (!isBegun()) {
            at('judge-says').textContent = 'No force is in it yet: pick one.';
            return;
        }
        const reply = ask(request({}));
        if (!reply.faults && kept.some((one) => JSON.stringify(one) === JSON.stringify(reply.equations[0]))) {
            at('judge-says').textContent = 'It is kept already.';
            return;
        }
        if (!reply.faults) {
            kept.push(...reply.equations);
            keep();
            showKept();
        }
        at('judge-says').textContent = reply.faults?.[0] ?? 'Kept: it is handed in with your answers.';
    });
    return {
        // Of this body; its forces have changed.
        of(another) {
            body = another;
            show();
        },
        // A force was picked on the drawing.
        pick(force) {
            pick(force);
            rows[force].scrollIntoView({ block: 'nearest' });
            rows[force].focus();
        },
        // Values have changed, not the body.
        refresh() {
            write();
            showKept();
        },
    };
}
