// The fields of an exercise, and what was written in them. A size and its sense are asked apart: the number pads of
// phones have no minus, and a right size with a wrong sense is a slip of its own.

function element(name, properties = {}, ...children) {
    const made = Object.assign(document.createElement(name), properties);
    made.append(...children);
    return made;
}

// What is said of an answer: a fault as it is typed, which stays till it is mended; else what a check says.
function createVerdict(row, input, says) {
    let told = '';
    return {
        tell(fault) {
            if (fault === told) {
                return; // what was said of it by a check stays
            }
            told = fault;
            row.classList.toggle('unread', fault !== '');
            input.setAttribute('aria-invalid', String(fault !== ''));
            says.textContent = fault;
        },
        judge(words) { says.textContent = told || words; },
        fault: () => told,
    };
}

const verdictSpan = () => element('span', { className: 'verdict', id: `says-${lastName += 1}` });

let lastName = 0; // of groups of buttons, which must differ

// A row: label, number, a choice of three. `choices` are [text, spoken, value].
export function answerRow(made) {
    const { of, label, spoken, choices, changed } = made;
    const group = `sense-${lastName += 1}`;
    const input = element('input', { type: 'text', inputMode: 'decimal', enterKeyHint: 'next' });
    input.setAttribute('aria-label', `${spoken}: size`);
    const says = verdictSpan();
    input.setAttribute('aria-describedby', says.id);
    const choice = element('span', { className: 'choice' });
    choice.setAttribute('role', 'radiogroup');
    choice.setAttribute('aria-label', `${spoken}: sense`);
    const radios = choices.map(([text, name, value]) => {
        const radio = element('input', { type: 'radio', name: group, value: String(value) });
        radio.setAttribute('aria-label', name);
        choice.append(element('label', {}, radio, element('span', { textContent: text })));
        return radio;
    });
    const labelled = element('span', { className: 'of' });
    labelled.innerHTML = label; // made by the program, everything escaped
    const row = element('div', { className: 'answer' }, labelled, input, choice, says);
    row.dataset.of = of;
    const put = (sign) => radios.forEach((radio) => { radio.checked = radio.value === String(sign); });
    const read = () => {
        const checked = radios.find((radio) => radio.checked);
        return { text: input.value, sign: checked ? Number(checked.value) : null };
    };
    // As it is typed: a message that came when the field is left would move the button that is being tapped.
    input.addEventListener('input', () => changed(row));
    choice.addEventListener('change', () => changed(row));
    // As it stands in the figure: "48 T", "36 ↑".
    const words = () => {
        const { text, sign } = read();
        const sense = choices.find(([, , value]) => value === sign)?.[0] ?? '';
        return sign === 0 ? '0' : [text.trim(), sense].filter(Boolean).join(' ');
    };
    return Object.assign(row, { input, put, read, of, words, made }, createVerdict(row, input, says));
}

const senses = [['T', 'tension', 1], ['C', 'compression', -1], ['0', 'zero', 0]];
const signs = [['+', 'positive', 1], ['−', 'negative', -1], ['0', 'zero', 0]];
const arrowNames = { '→': 'to the right', '←': 'to the left', '↑': 'up', '↓': 'down' };
const wayOf = (arrow) => [arrow, arrowNames[arrow] ?? `along ${arrow}`];
const plain = (html) => html.replace(/<[^>]*>/g, '');

// Puts the questions into `form`. The result knows every row by what it is the answer of. `typed(text, what)` reads an
// answer to a question of that kind.
export function createFields(form, exercise, typed, changed) {
    const rows = { reactions: new Map(), forces: new Map(), values: new Map() };
    const zeros = new Map();
    let degree = null;
    const wholes = new Map(); // questions that are answered as a whole, by their places
    form.replaceChildren();

    const memberNamed = (of) => exercise.members.find((member) => member.of === of);
    const makers = {
        reactions(part) {
            exercise.reactions.forEach(({ of, label, plus, minus }) => {
                const choices = [[...wayOf(plus), 1], [...wayOf(minus), -1], ['0', 'zero', 0]];
                const row = answerRow({ of, label, name: plain(label), spoken: `Reaction ${plain(label)}`, choices, changed });
                rows.reactions.set(of, row);
                part.append(row);
            });
        },
        forces(part, { members }) {
            members.forEach((of) => {
                const { label } = memberNamed(of);
                const row = answerRow({ of, label: element('span', { textContent: label }).innerHTML, name: label,
                    spoken: `Member ${label}`, choices: senses, changed });
                rows.forces.set(of, row);
                part.append(row);
            });
        },
        zero(part, question, index) {
            const list = element('div', { className: 'members' });
            exercise.members.forEach(({ of, label }) => {
                const box = element('input', { type: 'checkbox' });
                box.addEventListener('change', () => {
                    wholes.get(index).judge('');
                    changed(null);
                });
                zeros.set(of, box);
                list.append(element('label', {}, box, element('span', { textContent: label })));
            });
            const says = verdictSpan();
            list.setAttribute('aria-describedby', says.id);
            part.append(list, says);
            wholes.set(index, { name: 'zero members', ...createVerdict(part, list, says),
                isBlank: () => [...zeros.values()].every((box) => !box.checked) });
        },
        determinacy(part, question, index) {
            degree = element('input', { type: 'text', inputMode: 'numeric' });
            degree.setAttribute('aria-label', 'Degree of indeterminacy');
            const says = verdictSpan();
            degree.setAttribute('aria-describedby', says.id);
            const row = element('div', { className: 'answer' }, degree, says);
            const verdict = createVerdict(row, degree, says);
            degree.addEventListener('input', () => {
                readDegree();
                verdict.judge('');
                changed(null);
            });
            part.append(row);
            wholes.set(index, { name: 'degree', ...verdict, isBlank: () => degree.value.trim() === '' });
        },
        value(part, question, index) {
            const row = answerRow({ of: String(index), label: question.what === 'displacement' ? 'δ' : 'η',
                spoken: 'Value', choices: signs, what: question.what, changed });
            rows.values.set(index, row);
            part.append(row);
        },
    };
    // Nothing, if it is blank or can't be read, which is then said.
    function readDegree() {
        if (!degree) {
            return undefined;
        }
        const { count, faults } = degree.value.trim() === '' ? {} : typed(degree.value, 'determinacy');
        [...wholes.values()].find(({ name }) => name === 'degree').tell(faults?.[0] ?? '');
        return count;
    }
    makers.displacement = makers.value;
    makers.influence = makers.value;

    exercise.questions.forEach((question, index) => {
        const part = element('fieldset', {}, element('legend', { textContent: question.says }));
        const unit = { displacement: exercise.lengthUnit, influence: '' }[question.what] ?? exercise.forceUnit;
        if (makers[question.what]) {
            if (unit && !['zero', 'determinacy'].includes(question.what)) {
                part.append(element('p', { className: 'small', textContent: `Sizes in ${unit}.` }));
            }
            makers[question.what](part, question, index);
        } else {
            part.append(element('p', { className: 'small', textContent: 'Write this on paper.' }));
        }
        form.append(part);
    });

    // What leads to what is asked: without it, nobody could say how far a student has come.
    const asked = new Set([...rows.reactions.values(), ...rows.forces.values(), ...rows.values.values()]);
    const members = exercise.members.map(({ of }) => of).filter((of) => !rows.forces.has(of));
    const isWorked = exercise.questions.some(({ what }) => what !== 'determinacy');
    if (isWorked && (rows.reactions.size === 0 || members.length > 0)) {
        const more = element('details', {}, element('summary', { textContent: 'Forces found on the way' }),
            element('p', { className: 'small', textContent: `Not asked for, but equations and hints use them. Sizes in ${
                exercise.forceUnit}.` }));
        if (rows.reactions.size === 0) {
            makers.reactions(more);
        }
        makers.forces(more, { members });
        form.append(more);
    }
    const forceRows = [...rows.reactions.values(), ...rows.forces.values(), ...rows.values.values()];
    const nameOf = (row) => row.querySelector('.of').textContent;
    return {
        forceRows,
        count: () => {
            const blank = [...[...asked].filter((row) => row.read().text.trim() === '' && row.read().sign !== 0).map(nameOf),
                ...[...wholes.values()].filter(({ isBlank }) => isBlank()).map(({ name }) => name)];
            const unread = [...forceRows.filter(({ fault }) => fault() !== '').map(nameOf),
                ...[...wholes.values()].filter(({ fault }) => fault() !== '').map(({ name }) => name)];
            return { of: asked.size + wholes.size, blank, unread };
        },
        isAsked: (of) => [...asked].some((row) => row.of === of),
        // What answers the question in that place, if it is answered as a whole.
        wholeOf: (index) => rows.values.get(index) ?? wholes.get(index),
        rowOf: (of) => rows.reactions.get(of) ?? rows.forces.get(of),
        // What was typed, to be kept and put back.
        draft: () => ({
            rows: Object.fromEntries(Object.entries(rows).map(([kind, all]) =>
                [kind, [...all].map(([of, row]) => [of, row.read()])])),
            zeros: [...zeros].filter(([, box]) => box.checked).map(([of]) => of),
            degree: degree?.value ?? '',
        }),
        // All of it; a draft without rows is none.
        putBack(draft) {
            if (!draft.rows) {
                return;
            }
            Object.entries(draft.rows).forEach(([kind, all]) => all.forEach(([of, { text, sign }]) => {
                const row = rows[kind]?.get(of);
                if (row) {
                    row.input.value = text;
                    row.put(sign);
                }
            }));
            zeros.forEach((box, of) => { box.checked = (draft.zeros ?? []).includes(of); });
            if (degree) {
                degree.value = draft.degree ?? '';
            }
        },
        // As in exchange/exercises/answers_file.hpp. What can't be read is left out and says why.
        answers({ mark, variant, code, equations }) {
            const readRow = (row, words, key) => {
                const { text, sign } = row.read();
                const read = text.trim() === '' ? {} : typed(text, row.made.what);
                row.tell(read.faults?.[0] ?? '');
                if (read.faults) {
                    return null;
                }
                const word = sign ?? read.sign ?? null;
                if (read.size === undefined && word === null) {
                    return null;
                }
                return { of: row.of, ...(read.size === undefined ? {} : { size: read.size }),
                    ...(word === null ? {} : { [key]: words[word + 1] }) };
            };
            const list = (all, words, key) => [...all.values()].map((row) => readRow(row, words, key)).filter(Boolean);
            const values = exercise.questions.map((question, index) => {
                const row = rows.values.get(index);
                const read = row && readRow(row, [-1, 0, 1], 'sign');
                return read?.size === undefined ? null : read.size * (read.sign ?? 1);
            });
            const isJudged = [...zeros.values()].some((box) => box.checked);
            const named = (checked) => [...zeros].filter(([, box]) => isJudged && box.checked === checked).map(([of]) => of);
            const count = readDegree();
            return JSON.stringify({
                gussetAnswers: 1, exercise: mark, ...(variant ? { variant } : {}), code,
                reactions: list(rows.reactions, ['-', '0', '+'], 'sign'),
                forces: list(rows.forces, ['C', '0', 'T'], 'sense'),
                zero: named(true), notZero: named(false),
                ...(count === undefined ? {} : { degree: count }),
                values, equations,
            });
        },
    };
}
