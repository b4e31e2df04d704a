// The form of a question: what is asked, how it is answered, and the same read back from an exercise.
import { at, element } from '../element.js';

const asks = [
    ['reactions', 'The reactions', true],
    ['forces', 'The force in members', true],
    ['zero-members', 'Which members carry nothing', false],
    ['determinacy', 'The degree of indeterminacy', false],
    ['displacement', 'A displacement', false],
    ['influence', 'An ordinate of an influence line', false],
    ['steps', 'The steps, on paper', false],
];

const textField = (id, more) => element('input', { id, type: 'text', spellcheck: false, ...more });
const labelled = (words, field) => [element('label', { htmlFor: field.id, textContent: words }), field];
const optionsOf = (joints) => joints.map((joint) => new Option(joint));

const details = {
    forces: () => [element('p', { className: 'row' },
        ...labelled('Members, if not all of them', textField('which', { placeholder: 'A-B, C-D' })))],
    displacement: (truss) => [element('p', { className: 'row' },
        ...labelled('Joint of the displacement', element('select', { id: 'moves' }, ...optionsOf(truss.joints))),
        ...labelled('along', element('select', { id: 'axis' }, new Option('the vertical', 'y'), new Option('the horizontal', 'x'))))],
    influence: (truss) => [element('p', { className: 'row' },
        ...labelled('Force in', textField('line-of', { placeholder: 'A-B', size: 6 })),
        ...labelled('ordinate at', element('select', { id: 'line-at' }, ...optionsOf(truss.joints)))),
    element('p', { className: 'row' }, ...labelled('as a load of 1 moves over', element('select', { id: 'line-path' })))],
};

function numberIn(field, words, most) {
    const number = Number(field.value.trim().replace(',', '.'));
    if (field.value.trim() === '' || !(number >= 0 && number <= most)) {
        throw new Error(`${words} must be a number from 0 to ${most}.`);
    }
    return number;
}

// Names as written, "A-B, C-D": labels may have hyphens of their own, so that each is looked for whole.
const namesIn = (text) => text.split(/[,;]/).map((one) => one.trim()).filter(Boolean);

function memberNamed(truss, name) {
    const found = truss.members.find(({ of, label, ends }) => of === name || label === name || `${ends[1]}-${ends[0]}` === name);
    if (!found) {
        throw new Error(`There is no member ${name || 'without a name: write one such as A-B'}.`);
    }
    return found;
}

export function createQuestions(changed) {
    let truss = null;
    let further = []; // questions of an opened exercise that the form has no place for

    const boxOf = (what) => document.querySelector(`#asks input[value="${what}"]`);
    const marksOf = (what) => at(`marks-${what}`);

    function addAsk([what, words, isUsual]) {
        const box = element('input', { type: 'checkbox', value: what, checked: isUsual });
        const marks = textField(`marks-${what}`, { size: 3, placeholder: 'usual' });
        marks.inputMode = 'decimal';
        marks.setAttribute('aria-label', `Marks for: ${words}`);
        const more = element('div', { className: 'more', hidden: !isUsual }, ...(details[what]?.(truss) ?? []));
        box.addEventListener('change', () => { more.hidden = !box.checked; });
        at('asks').append(element('div', { className: 'ask' }, element('p', { className: 'row' },
            element('label', { className: 'tick' }, box, ` ${words}`),
            element('span', { className: 'marks' }, marks, ' marks')), more));
    }

    function addPaths() {
        const paths = [['lower', truss.lowestPath], ['upper', truss.highestPath]].filter(([, path]) => path?.length > 1);
        at('line-path').replaceChildren(...paths.map(([word, path]) =>
            new Option(`the ${word} chord, ${path.join(' – ')}`, JSON.stringify(path))));
    }

    function addLoads() {
        const of = (kind, word) => (truss[kind] ?? []).map((one) => new Option(`${word} ${one}`, JSON.stringify({ [word]: one })));
        at('loads').replaceChildren(new Option('all together', '{}'), ...of('cases', 'case'), ...of('combinations', 'combination'));
        const own = Object.fromEntries(['case', 'combination'].filter((key) => truss[key]).map((key) => [key, truss[key]]));
        at('loads').value = JSON.stringify(own);
    }

    function askOf(what) {
        const marks = marksOf(what).value.trim() === '' ? {} : { marks: numberIn(marksOf(what), 'Marks', 1000) };
        if (what === 'forces') {
            const members = namesIn(at('which').value).map((name) => memberNamed(truss, name).ends);
            return { what, ...(members.length > 0 ? { members } : {}), ...marks };
        }
        if (what === 'displacement') {
            return { what, joint: at('moves').value, axis: at('axis').value, ...marks };
        }
        if (what === 'influence') {
            if (at('line-path').value === '') {
                throw new Error('No row of members leads from one end of this truss to the other, for a load to move over.');
            }
            return { what, path: JSON.parse(at('line-path').value), member: memberNamed(truss, at('line-of').value.trim()).ends,
                at: at('line-at').value, ...marks };
        }
        return { what, ...marks };
    }

    function toleranceOf() {
        const floor = numberIn(at('floor'), '“Always within”', 100);
        const isFigures = at('within').value === 'figures';
        const number = numberIn(at('within-number'), isFigures ? 'The number of figures' : '“Right within”', isFigures ? 12 : 100);
        if (isFigures && (number < 1 || number % 1 !== 0)) {
            throw new Error('The number of figures must be a whole number from 1 to 12.');
        }
        return { [at('within').value]: number, floor };
    }

    function putTolerance({ percent = 1, figures, floor = 0.1 } = {}) {
        at('within').value = figures ? 'figures' : 'percent';
        at('within-number').value = String(figures || percent);
        at('floor').value = String(floor);
    }

    const nameOf = (ends) => truss.members.find((one) => one.ends[0] === ends[0] && one.ends[1] === ends[1])?.of ?? ends.join('-');

    function putDetails(question) {
        if (question.what === 'forces') {
            at('which').value = (question.members ?? []).map(nameOf).join(', ');
        } else if (question.what === 'displacement') {
            at('moves').value = question.joint;
            at('axis').value = question.axis ?? 'y';
        } else if (question.what === 'influence') {
            const path = JSON.stringify(question.path);
            if (![...at('line-path').options].some(({ value }) => value === path)) {
                at('line-path').append(new Option(question.path.join(' – '), path));
            }
            at('line-path').value = path;
            at('line-of').value = nameOf(question.member);
            at('line-at').value = question.at;
        }
    }

    function putBack(exercise) {
        asks.forEach(([what]) => { boxOf(what).checked = false; });
        exercise.ask.forEach((question) => {
            if (boxOf(question.what).checked) {
                further.push(question);
                return;
            }
            boxOf(question.what).checked = true;
            marksOf(question.what).value = question.marks ? String(question.marks) : '';
            putDetails(question);
        });
        asks.forEach(([what]) => boxOf(what).dispatchEvent(new Event('change')));
        further.forEach((question) => {
            const box = element('input', { type: 'checkbox', checked: true, value: '' });
            box.addEventListener('change', () => { further = further.filter((one) => one !== question); box.disabled = true; });
            at('asks').append(element('p', {}, element('label', { className: 'tick' }, box,
                ` Also asked by the link: ${question.what} ${question.joint ?? question.at ?? ''}`)));
        });
        putTolerance(exercise.tolerance);
        at('hints-allowed').value = exercise.hints;
        at('checks').value = exercise.checks;
        at('text').value = exercise.text ?? '';
        const { case: one, combination } = exercise;
        at('loads').value = JSON.stringify(one ? { case: one } : combination ? { combination } : {});
    }

    at('setting-form').addEventListener('input', changed);
    at('setting-form').addEventListener('change', changed);

    return {
        show(opened) {
            truss = opened;
            further = [];
            at('asks').replaceChildren();
            asks.forEach(addAsk);
            addPaths();
            addLoads();
            at('text').value = '';
            if (truss.exercise) {
                putBack(truss.exercise);
            }
        },
        // The exercise, or an error that says what is wrong.
        exercise() {
            const chosen = asks.map(([what]) => what).filter((what) => boxOf(what).checked);
            if (chosen.length + further.length === 0) {
                throw new Error('Nothing is asked: tick at least one question.');
            }
            return { text: at('text').value, ...JSON.parse(at('loads').value), ask: [...chosen.map(askOf), ...further],
                tolerance: toleranceOf(), hints: at('hints-allowed').value, checks: at('checks').value };
        },
        // Adds a member to those that are asked for, or takes it out; the result says which, and of how many.
        toggle(member) {
            const names = namesIn(at('which').value);
            const others = names.filter((name) => ![member.of, member.label].includes(name));
            const isOut = others.length < names.length;
            at('which').value = (isOut ? others : [...names, member.of]).join(', ');
            if (!boxOf('forces').checked) {
                boxOf('forces').click();
            }
            changed();
            return !isOut;
        },
        chosen: () => new Set(namesIn(at('which').value).map((name) =>
            truss.members.find(({ of, label }) => of === name || label === name)?.of)),
    };
}
