// The sheet: the board's truss as a document for paper, which the program writes (web/app/page/sheet_request). Whatever
// prints this page prints the sheet: the button of the panel, and the browser's own command. It stands in a shadow
// tree, so that neither its styles nor the page's affect the other.
import { fetched } from './fetched.js';

const keptUnder = 'gusset.sheet';

const parts = {
    drawing: 'Drawing with loads and dimensions',
    diagram: 'Drawing with forces',
    model: 'Joints, members, supports, loads',
    cases: 'Cases and combinations',
    forces: 'Forces and reactions',
    displacements: 'Displacements',
    checks: 'Checks of the members',
    working: 'The working',
};
const usual = Object.keys(parts).filter((name) => name !== 'working');

// On paper nothing but the sheet. Everything else is hidden whatever its own style says.
const onlySheet = `
    #sheet { display: none; }
    @media print {
        html, body { position: static !important; height: auto !important; overflow: visible !important;
            margin: 0 !important; padding: 0 !important; background: #ffffff !important; }
        body > :not(#sheet) { display: none !important; }
        #sheet { display: block; }
    }`;

function sheetOf(text) {
    const made = new CSSStyleSheet();
    made.replaceSync(text);
    return made;
}

function addElement(parent, name, attributes = {}, text = '') {
    const element = document.createElement(name);
    Object.entries(attributes).forEach(([key, value]) => element.setAttribute(key, value));
    element.textContent = text;
    parent.append(element);
    return element;
}

function addPanel() {
    addElement(document.head, 'link', { rel: 'stylesheet', href: 'sheet_panel.css' });
    const dialog = addElement(document.body, 'dialog', { id: 'sheet-dialog', class: 'dialog', 'aria-labelledby': 'sheet-title' });
    const form = addElement(dialog, 'form', { method: 'dialog' });
    addElement(form, 'h2', { id: 'sheet-title' }, 'Print a report');
    const columns = addElement(form, 'div', { class: 'sheet-columns' });
    const left = addElement(columns, 'div');
    const fields = addElement(left, 'div', { class: 'dialog-fields sheet-fields' });
    const text = (name, label) => {
        const row = addElement(fields, 'label', {}, label);
        addElement(row, 'input', { name, type: 'text', autocomplete: 'off', maxlength: '120' });
    };
    text('project', 'Project');
    text('author', 'Author');
    text('date', 'Date');
    const select = (name, label, choices) => {
        const row = addElement(fields, 'label', {}, label);
        const box = addElement(row, 'select', { name });
        choices.forEach(([value, words]) => addElement(box, 'option', { value }, words));
    };
    select('loads', 'Drawings and displacements under', []);
    select('paper', 'Paper', [['A4', 'A4, upright'], ['A4 across', 'A4, across'], ['Letter', 'Letter, upright'],
        ['Letter across', 'Letter, across']]);
    const set = addElement(left, 'fieldset');
    addElement(set, 'legend', {}, 'On the sheet');
    const tick = (name, label) => {
        const row = addElement(set, 'label', { class: 'tick' });
        addElement(row, 'input', { name, type: 'checkbox' });
        row.append(label);
    };
    Object.entries(parts).forEach(([name, label]) => tick(name, label));
    tick('link', 'Link and QR code of the truss');
    addElement(left, 'p', { class: 'sheet-note' }, 'Project, author and date stay in this browser: they are not in ' +
        'the link. For the page numbers at the foot, leave the browser’s own headers and footers off.');
    addElement(addElement(columns, 'div', { class: 'sheet-preview', tabindex: '0', role: 'group',
        'aria-label': 'The pages, small' }), 'div');
    const foot = addElement(form, 'div', { class: 'dialog-foot sheet-foot' });
    addElement(foot, 'span', { class: 'sheet-pages', role: 'status' });
    addElement(foot, 'button', { type: 'button', name: 'print', autofocus: '' }, 'Print');
    addElement(foot, 'button', { type: 'button', name: 'save' }, 'Save as HTML');
    addElement(foot, 'button', { type: 'button', name: 'csv' }, 'Save as CSV');
    addElement(foot, 'button', { type: 'submit' }, 'Close');
    return dialog;
}

// What was chosen last; for a new day, its date.
function kept() {
    const usually = { project: '', author: '', paper: usualPaper(), parts: usual, link: true };
    try {
        return { ...usually, ...JSON.parse(localStorage.getItem(keptUnder)) };
    } catch {
        return usually;
    }
}

// Where paper is measured in inches.
function usualPaper() {
    return /-(US|CA|MX|PH)\b/.test(navigator.language) ? 'Letter' : 'A4';
}

function keep(choices) {
    try {
        localStorage.setItem(keptUnder, JSON.stringify(choices));
    } catch {
        // Refused: the panel forgets them when the page is closed.
    }
}

const today = () => new Intl.DateTimeFormat(undefined, { dateStyle: 'long' }).format(new Date());

const oneLine = (text) => text.replace(/\s+/g, ' ').trim();

function wishOf({ loads, paper, project, author, date, parts: chosen }) {
    const lines = [`parts=${chosen.join(',')}`, `paper=${paper.split(' ')[0]}`, `project=${oneLine(project)}`,
        `author=${oneLine(author)}`, `date=${oneLine(date)}`, loads];
    return lines.concat(paper.endsWith('across') ? 'across=' : []).join('\n');
}

// Size of a page between its margins, mm, as the program writes them into @page.
function roomOn(paper) {
    const [width, height] = paper.startsWith('A4') ? [210, 297] : [215.9, 279.4];
    const [across, down] = paper.endsWith('across') ? [height, width] : [width, height];
    return { width: across - 30, height: down - 28 };
}

// How formulas are set, with the typeface in it, as the command line has it compiled in.
async function withTypeface(formulas) {
    const font = await (await fetched('maths.woff2')).arrayBuffer();
    const bytes = Array.from(new Uint8Array(font), (byte) => String.fromCharCode(byte)).join('');
    return formulas.replace('maths.woff2', `data:font/woff2;base64,${btoa(bytes)}`);
}

// `program()` is the running program, or null; `page()` what it is called with; `save(name, bytes)` saves a file.
export async function createSheet({ program, page, drawNow, save }) {
    const [style, formulas] = await Promise.all(['sheet.css', 'formula.css'].map(async (name) =>
        (await fetched(name)).text()));
    const host = addElement(document.body, 'div', { id: 'sheet' });
    const paper = host.attachShadow({ mode: 'open' });
    let panel = null;
    let choices = kept();
    const pageTitle = document.title;
    let date = null; // as typed since the page was opened

    const loadsOf = () => program().UTF8ToString(program()._gussetSheetLoads(page())).split('\n').filter(Boolean)
        .map((line) => line.split('\t'));

    // The whole document; empty when there is no program to write it.
    function documentOf(chosen, formulaStyle = formulas) {
        if (!program() || program().hasFailed()) {
            return '';
        }
        drawNow(); // takes in what has just been typed
        const styles = [style, chosen.parts.includes('working') ? formulaStyle : ''];
        return program().withTexts([wishOf(chosen), ...styles], (wish, ...css) =>
            program().UTF8ToString(program()._gussetSheet(page(), wish, chosen.link ? 1 : 0, ...css)));
    }

    const chosenNow = () => ({ ...choices, date: date ?? today(), loads: panel?.open ? choices.loads : loadsOf()[0][0] });

    function fill(shadow, text, more = '') {
        // Taken out before it is parsed: the page's policy refuses styles in a text. Words in it have been escaped.
        const styles = [];
        const bare = text.replace(/<style>([^]*?)<\/style>/g, (_, rules) => {
            styles.push(rules);
            return '';
        });
        const made = new DOMParser().parseFromString(bare, 'text/html');
        const pages = styles.pop();
        shadow.adoptedStyleSheets = [sheetOf(styles.join('') + more)];
        shadow.replaceChildren(made.querySelector('main'));
        return { pages, title: made.title };
    }

    function ready() {
        const text = documentOf(chosenNow());
        if (text === '') {
            document.adoptedStyleSheets = []; // the page's own tables are printed
            return;
        }
        const made = fill(paper, text);
        document.adoptedStyleSheets = [sheetOf(onlySheet + made.pages)]; // @page counts in the document only
        document.title = made.title;
    }

    // In columns as large as the pages, which break where the pages do.
    function preview() {
        const { width, height } = roomOn(choices.paper);
        const box = panel.querySelector('.sheet-preview > div');
        const shadow = box.shadowRoot ?? box.attachShadow({ mode: 'open' });
        const made = fill(shadow, documentOf(chosenNow()), `main { width: ${width}mm; max-width: none; height: ${height}mm;
            margin: 0; padding: 0; columns: auto ${width}mm; column-gap: 20mm; column-fill: auto;
            column-rule: 0.5mm dashed #8d867a; }`);
        panel.dataset.title = made.title;
        const main = shadow.querySelector('main');
        const pages = Math.round((main.scrollWidth + 20 * 96 / 25.4) / ((width + 20) * 96 / 25.4));
        box.style.width = `${pages * (width + 20) - 20}mm`;
        panel.querySelector('.sheet-pages').textContent = pages === 1 ? '1 page' : `${pages} pages`;
    }

    function show(form) {
        const loads = loadsOf();
        choices.loads = loads[0][0];
        form.loads.replaceChildren(...loads.map(([value, words]) => new Option(words, value)));
        for (const name of ['project', 'author', 'paper']) {
            form[name].value = choices[name];
        }
        form.date.value = date ?? today();
        Object.keys(parts).forEach((name) => { form[name].checked = choices.parts.includes(name); });
        form.link.checked = choices.link;
    }

    function read(form) {
        date = form.date.value === today() ? null : form.date.value;
        const chosen = Object.keys(parts).filter((name) => form[name].checked);
        choices = { project: form.project.value, author: form.author.value, paper: form.paper.value, parts: chosen,
            link: form.link.checked };
        keep(choices);
        choices.loads = form.loads.value;
    }

    async function printSheet() {
        ready();
        await document.fonts.load('1em "Gusset Maths"').catch(() => {}); // a page prints without it, if less well
        print();
    }

    // Complete by itself, as the command line writes it.
    async function saveSheet() {
        const complete = await withTypeface(formulas);
        save(`${oneLine(panel.dataset.title)}.html`, documentOf(chosenNow(), complete));
    }

    function saveTables() {
        drawNow();
        const tables = program().withTexts([wishOf(chosenNow())], (wish) =>
            program().UTF8ToString(program()._gussetSheetTables(page(), wish)));
        save(`${oneLine(panel.dataset.title)}.csv`, `\uFEFF${tables.replace(/^\uFEFF/, '')}`); // lost as a string
    }

    function open() {
        if (!panel) {
            panel = addPanel();
            const form = panel.querySelector('form');
            form.addEventListener('input', () => {
                read(form);
                preview();
            });
            form.print.addEventListener('click', printSheet);
            form.save.addEventListener('click', saveSheet);
            form.csv.addEventListener('click', saveTables);
            form.addEventListener('keydown', (event) => event.stopPropagation()); // Escape closes the page too
        }
        show(panel.querySelector('form'));
        panel.showModal();
        preview();
    }

    addEventListener('beforeprint', ready);
    addEventListener('afterprint', () => { document.title = pageTitle; });
    return { open };
}
