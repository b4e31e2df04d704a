// What is handed out: sheets to print, and questions for a learning platform.
import { at } from '../element.js';
import { base64urlOf, bytesOf } from '../bytes.js';
import { paper, pngOf } from '../png.js';
import { saveFile } from '../saving.js';

const platforms = [
    ['moodle', 'Moodle XML, a question for each value'],
    ['cloze', 'Moodle XML, all values in one question'],
    ['qti12', 'Canvas (QTI 1.2)'],
    ['gift', 'GIFT, text without pictures'],
    ['blackboard', 'Blackboard, text without pictures'],
    ['qti21', 'QTI 2.1'],
    ['qti3', 'QTI 3.0'],
    ['csv', 'a table (CSV)'],
];
const takesPictures = new Set(['moodle', 'cloze', 'qti12', 'qti21', 'qti3']);

// The drawing as a PNG in base64url: not every platform shows an SVG.
async function pictureOf(svg) {
    return svg === '' ? '' : base64urlOf(await pngOf(svg, { ground: paper }));
}

// `models` resolves to what is handed out: { link, figure }.
export function createPapers(program, models, exercisePage, whatIsHandedOut) {
    let html = '';
    at('platform').replaceChildren(...platforms.map(([value, words]) => new Option(words, value)));

    function changed() {
        html = '';
        at('papers-what').textContent = `What is handed out: ${whatIsHandedOut()}.`;
        at('paper-made').hidden = true;
        at('paper-view').hidden = true;
        at('paper-says').textContent = '';
        at('platform-says').textContent = '';
    }

    async function makeSheets() {
        const all = await models();
        const reply = await program.ask({ do: 'handout', models: all.map(({ link }) => link), kind: at('paper-kind').value,
            paper: at('paper-size').value, address: at('paper-link').checked ? exercisePage : '' },
        ({ done, all: sheets }) => { at('paper-says').textContent = `${done} of ${sheets} sheets …`; });
        html = reply.html;
        at('paper-view').src = URL.createObjectURL(new Blob([html], { type: 'text/html' }));
        at('paper-view').hidden = false;
        at('paper-made').hidden = false;
        at('paper-says').textContent = all.length === 1 ? 'The sheet is made.' : `The sheets of ${all.length} variants are made.`;
    }

    async function exportQuestions() {
        const format = at('platform').value;
        const all = await models();
        const pictures = takesPictures.has(format) ? await Promise.all(all.map(({ figure }) => pictureOf(figure))) : [];
        const reply = await program.ask({ do: 'export', models: all.map(({ link }) => link), format, pictures });
        saveFile(reply.name, bytesOf(reply.base64), reply.type);
        at('platform-says').textContent = `Saved as ${reply.name}.`;
    }

    const onSubmit = (form, says, work) => at(form).addEventListener('submit', async (event) => {
        event.preventDefault();
        at('paper-cancel').hidden = form !== 'paper-form';
        at(says).textContent = 'Working …';
        try {
            await work();
        } catch (error) {
            at(says).textContent = error.message;
        }
        at('paper-cancel').hidden = true;
    });
    onSubmit('paper-form', 'paper-says', makeSheets);
    onSubmit('platform-form', 'platform-says', exportQuestions);
    at('paper-form').addEventListener('change', changed);
    at('paper-cancel').addEventListener('click', () => program.cancel());
    at('paper-print').addEventListener('click', () => at('paper-view').contentWindow.print());
    at('paper-save').addEventListener('click', () => saveFile(`${at('paper-kind').value}.html`, html, 'text/html'));
    return { changed };
}
