// Marking: what a class has handed in, a table of marks, one sheet at a time, and the slips that the class makes.
import { at, element } from '../element.js';
import { onFiles } from '../taken_files.js';
import { saveFile } from '../saving.js';
import { keptExercises } from './kept.js';
import { slipPart } from './own_body.js';

const lines = (texts) => (texts ?? []).map((text) => element('li', { textContent: text }));
const row = (cells, tag = 'td') => element('tr', {}, ...cells.map((cell) =>
    (cell instanceof Node ? element(tag, {}, cell) : element(tag, { textContent: cell, ...(tag === 'th' ? { scope: 'col' } : {}) }))));

// Exercises in a text: links, one a line, or the lines of links.csv, which have students.
const cell = '("(?:[^"]|"")*"|[^,]*)';
const ofLinksTable = new RegExp(`^\\d+,${cell},[A-Z0-9]*,`);
function exercisesIn(text) {
    return text.split(/\r?\n/).flatMap((line) => {
        const student = line.match(ofLinksTable)?.[1].replace(/^"|"$/g, '').replace(/""/g, '"').replace(/^'(?=[=+@-])/, '') ?? '';
        return (line.match(/\bx=1\.[\w.-]+/g) ?? []).map((link) => ({ link, student }));
    });
}

// `current` resolves to the exercise that is open, and its variants.
export function createMarking(program, current) {
    let files = [];
    let reply = null;
    const say = (words) => { at('mark-says').textContent = words; };

    // The exercises that sheets can be for: those pasted; else the open one and all that were set on this device.
    async function keys() {
        const pasted = exercisesIn(at('keys').value);
        const kept = keptExercises().flatMap(({ models }) => models);
        const open = pasted.length > 0 ? [] : await current();
        return [...new Map([...pasted, ...open, ...(pasted.length > 0 ? [] : kept)]
            .map((model) => [model.mark ?? model.link, model])).values()];
    }

    function showSheet({ code, marks, outOf, feedback, slips }) {
        at('sheet').hidden = false;
        at('sheet-title').textContent = `${code || 'Without a code'}: ${marks} of ${outOf} marks`;
        at('feedback').replaceChildren(...lines(feedback ?? (marks === outOf ? ['Nothing is wrong.'] : [])));
        at('own').replaceChildren(...slips.map(slipPart));
        at('sheet-title').focus();
    }

    function showMarks(models) {
        const hasNames = reply.sheets.some(({ model }) => models[model].student);
        const open = (sheet) => {
            const button = element('button', { type: 'button', textContent: sheet.code || sheet.sheet });
            button.addEventListener('click', () => showSheet(sheet));
            return button;
        };
        at('marks').replaceChildren(element('table', {}, element('caption', { textContent: 'Marks' }),
            element('thead', {}, row(['Sheet', 'Variant', ...(hasNames ? ['Student'] : []), 'Marks', 'Of', 'Slips'], 'th')),
            element('tbody', {}, ...reply.sheets.map((sheet) => row([open(sheet), sheet.variant ? String(sheet.variant) : '–',
                ...(hasNames ? [models[sheet.model].student ?? ''] : []), String(sheet.marks), String(sheet.outOf),
                sheet.slips.map(({ kind }) => kind).join('; ') || 'none'])))));
    }

    function showSlips() {
        const counts = new Map();
        reply.sheets.flatMap(({ slips }) => slips).forEach(({ kind }) => counts.set(kind, (counts.get(kind) ?? 0) + 1));
        at('slips').replaceChildren(element('table', {}, element('caption', { textContent: 'How often each slip was made' }),
            element('thead', {}, row(['Slip', 'Times'], 'th')),
            element('tbody', {}, ...[...counts].sort(([, a], [, b]) => b - a).map(([slip, times]) => row([slip, String(times)])))));
    }

    async function mark() {
        const models = await keys();
        if (models.length === 0) {
            throw new Error('No exercise was set on this device: paste its link, or links.csv.');
        }
        const pasted = at('sheets').value.trim();
        const sheets = [...files, ...(pasted ? [{ name: 'pasted', text: pasted }] : [])];
        if (sheets.length === 0) {
            throw new Error('Nothing was handed in yet: paste it, or choose the files.');
        }
        reply = await program.ask({ do: 'mark', models: models.map(({ link }) => link), sheets });
        const count = reply.sheets.length;
        say(`${count} ${count === 1 ? 'sheet is' : 'sheets are'} marked.`);
        at('notes').replaceChildren(...lines(reply.notes));
        at('marked').hidden = count === 0;
        at('sheet').hidden = true;
        at('rule-lines').replaceChildren(...lines(reply.rule));
        showMarks(models);
        showSlips();
        if (count === 1) {
            showSheet(reply.sheets[0]);
        }
    }

    async function tryToMark() {
        at('marked').hidden = true;
        say('Working …');
        try {
            await mark();
        } catch (error) {
            say(error.message);
        }
    }

    onFiles(at('sheets-files'), at('marking'), (file) => {
        files = [...files.filter(({ name }) => name !== file.name), file];
        say(`${files.length} ${files.length === 1 ? 'file' : 'files'} to be marked: ${files.map(({ name }) => name).join(', ')}.`);
    });
    at('marking-form').addEventListener('submit', (event) => {
        event.preventDefault();
        tryToMark();
    });
    at('marks-save').addEventListener('click', () => saveFile('marks.csv', reply.csv, 'text/csv'));

    return {
        // `isOpen`: there is a truss on the page, whose exercise sheets can be for.
        show(isOpen) {
            const count = keptExercises().length;
            at('marking-what').textContent = count === 0 && isOpen ? 'The exercise that is open here needs no link.'
                : count === 0 ? 'No exercise was set on this device: paste the links of yours.'
                : count === 1 ? 'The exercise that was set on this device needs no link here.'
                    : `The ${count} exercises that were set on this device need no links here.`;
        },
        // Answers that were opened with this page.
        async take(link) {
            at('sheets').value = link;
            await tryToMark();
        },
    };
}
