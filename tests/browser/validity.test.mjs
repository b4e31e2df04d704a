// The HTML that is written without a browser: workings from the command line, and the pages of the site, by
// html-validate's rules; MathML, which html-validate does not check, by the element and attribute lists of MathML
// Core (W3C, https://www.w3.org/TR/mathml-core/).
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { HtmlValidate } from 'html-validate';
import { answered, gusset, root } from '../cli/support.mjs';

const rules = { 'wcag/h63': 'error', 'no-dup-id': 'error', 'heading-level': 'error' };
const pages = new HtmlValidate({ extends: ['html-validate:recommended'], rules });
// A document has the title that the author of the model gave it, however long.
const documents = new HtmlValidate({ extends: ['html-validate:recommended'],
    rules: { ...rules, 'doctype-style': ['error', { style: 'lowercase' }], 'long-title': 'off' } });

async function complaints(html, validator) {
    const report = await validator.validateString(html);
    return report.results.flatMap(({ messages }) =>
        messages.map(({ line, ruleId, message }) => `${line}: ${ruleId}: ${message}`));
}

// As the site's page sets a piece: below the page's title and the truss's.
const page = (fragment) => `<!DOCTYPE html>
<html lang="en">
<head><meta charset="utf-8"><title>Working</title></head>
<body><main><h1>Gusset</h1><h2>A truss</h2>
${fragment}</main></body>
</html>
`;

// The global attributes, without those for scripting.
const everywhere = ['class', 'dir', 'displaystyle', 'id', 'mathbackground', 'mathcolor', 'mathsize',
    'scriptlevel', 'style', 'tabindex'];
const core = {
    annotation: ['encoding'], 'annotation-xml': ['encoding'], maction: ['actiontype', 'selection'],
    math: ['display', 'alttext'], merror: [], mfrac: ['linethickness'], mi: ['mathvariant'],
    mmultiscripts: [], mn: [],
    mo: ['form', 'fence', 'separator', 'lspace', 'rspace', 'stretchy', 'symmetric', 'maxsize',
        'minsize', 'largeop', 'movablelimits'],
    mover: ['accent'], mpadded: ['width', 'height', 'depth', 'lspace', 'voffset'], mphantom: [],
    mprescripts: [], mroot: [], mrow: [], ms: [], mspace: ['width', 'height', 'depth'], msqrt: [],
    mstyle: [], msub: [], msubsup: [], msup: [], mtable: [], mtd: ['columnspan', 'rowspan'],
    mtext: [], mtr: [], munder: ['accentunder'], munderover: ['accent', 'accentunder'],
    semantics: [],
};
// Elements that are meaningless or invalid with another number of children.
const children = { mfrac: 2, msub: 2, msup: 2, mroot: 2, munder: 2, mover: 2, msubsup: 3, munderover: 3 };
const leaves = ['mi', 'mn', 'mo', 'mtext', 'ms', 'mspace'];

// The parts of a well-formed <math> that MathML Core does not define.
function objections(math) {
    const found = [];
    const open = [];
    const close = () => {
        const { name, count } = open.pop();
        if (name in children && count !== children[name]) {
            found.push(`<${name}> with ${count} children`);
        }
    };
    for (const [, end, name, attributes, single] of math.matchAll(/<(\/?)([\w-]+)([^>]*?)(\/?)>/g)) {
        if (end) {
            assert.equal(open.at(-1)?.name, name, `${math}: closed in order`);
            close();
            continue;
        }
        const parent = open.at(-1);
        if (parent) {
            ++parent.count;
            if (leaves.includes(parent.name)) {
                found.push(`<${name}> within <${parent.name}>`);
            }
        }
        open.push({ name, count: 0 });
        if (!(name in core)) {
            found.push(`<${name}>`);
        }
        for (const [, attribute] of attributes.matchAll(/([\w:-]+)\s*=/g)) {
            if (![...everywhere, ...core[name] ?? []].includes(attribute)) {
                found.push(`${attribute} of <${name}>`);
            }
        }
        if (single) {
            close();
        }
    }
    assert.deepEqual(open, [], `${math}: all is closed`);
    return found;
}

const parts = (html, name) => html.match(new RegExp(`<${name}[ >][^]*?</${name}>`, 'g')) ?? [];

// What the rules of HTML leave open but a screen reader needs.
function assertReadable(html) {
    for (const svg of parts(html, 'svg')) {
        assert.match(svg, /^<svg [^>]*role="img"[^>]*>\s*<title>[^<]+<\/title>/, 'a drawing says what it shows');
    }
    for (const figure of parts(html, 'figure')) {
        assert.match(figure, /<svg |<img [^>]*alt="[^"]/, 'a figure has something to show');
    }
    for (const table of parts(html, 'table')) {
        // On a sheet it is in the head, as that is repeated on each page.
        const captions = /^<table( class="beside")?>\s*(<caption>|<thead>\s*<tr><th scope="colgroup" class="caption"[^>]*>)[^<]/;
        assert.match(table, captions, 'a table has a caption');
        const [head, body] = [parts(table, 'thead').join(), parts(table, 'tbody').join()];
        assert.doesNotMatch(head, /<td|<th\b(?! scope="col(group)?")/, 'the head is column heads');
        for (const row of parts(body, 'tr')) {
            assert.match(row, /^<tr><th scope="row">/, 'a row begins with its head');
        }
    }
    for (const section of parts(html, 'section')) {
        assert.match(section, /^<section[^>]*>\s*<h[234]/, 'a section begins with its heading');
    }
}

async function assertSound(html, validator = pages) {
    assert.deepEqual(await complaints(html, validator), []);
    assert.deepEqual(parts(html, 'math').flatMap(objections), []);
    assertReadable(html);
}

const examples = JSON.parse(readFileSync(path.join(root, 'site/examples/index.json'), 'utf8'))
    .examples.map(({ file }) => `site/examples/${file}`);

test('the working of every example, and its force polygon, is sound HTML and MathML Core', async () => {
    let formulas = 0;
    for (const file of examples) {
        for (const words of [['--html'], ['--polygon', '--html']]) {
            const { status, stdout } = gusset(['working', file, ...words]);
            assert.ok(status === 0 || status === 1, file);
            await assertSound(stdout, documents);
            formulas += parts(stdout, 'math').length;
        }
    }
    assert.ok(examples.length >= 10 && formulas > 20 * examples.length);
});

test('so it is in every class style', async () => {
    const model = JSON.parse(readFileSync(path.join(root, 'site/examples/cottage_roof.json'), 'utf8'));
    for (const angles of ['sin-cos', 'cosines', 'slopes']) {
        for (const form of ['exact', 'decimals', 'significant']) {
            model.class = { ...model.class, angles, numbers: { form, digits: 3 } };
            await assertSound(answered(['working', '-', '--html'], JSON.stringify(model)), documents);
        }
    }
});

test('so are the tables and drawings of the other methods', async () => {
    const cases = 'tests/published/cases';
    for (const words of [
        [`${cases}/DF-01.json`, '--displacement', 'C:y'], // unit load
        [`${cases}/IN-05.json`, '--force-method'],
        [`${cases}/IN-07.json`, '--released', 'n1'],
        [`${cases}/IL-02.json`, '--influence', 'member:C-G', '--path', 'A,B,C,D,E'],
        ['site/examples/footbridge.json', '--member', 'D-F'],
        ['site/examples/footbridge.json', '--section', 'A-B'], // refused
    ]) {
        const html = answered(['working', ...words, '--html']);
        assert.match(html, /<section>/);
        await assertSound(html, documents);
    }
});

test('so are sheets and checks as documents', async () => {
    const all = 'drawing,diagram,model,cases,forces,displacements,checks,working';
    for (const file of ['cottage_roof', 'garage_roof', 'farm_bridge', 'braced_tower']) {
        const model = `site/examples/${file}.json`;
        const who = ['--project', 'A & B', '--date', '1 < 2', '--address', 'https://example.org/'];
        await assertSound(gusset(['report', model, ...who, '--parts', all]).stdout, documents);
        await assertSound(gusset(['check', model, '--members', '--html']).stdout, documents);
    }
    await assertSound(gusset(['check', 'site/examples/braced_tower.json', '--member', 'A-B', '--html']).stdout, documents);
});

test('labels of a stranger leave the HTML sound', async () => {
    const [a, b] = ['<b>"&\'', '</math>'];
    const model = {
        gusset: 1,
        joints: [{ id: a, x: 0, y: 0 }, { id: b, x: 4, y: 0 }, { id: 'C', x: 2, y: 2 }],
        members: [{ a, b: 'C' }, { a: 'C', b }, { a, b }],
        supports: [{ joint: a, kind: 'pin' }, { joint: b, kind: 'roller', reaction: 90 }],
        loads: [{ joint: 'C', fy: -3 }],
    };
    await assertSound(answered(['working', '-', '--html'], JSON.stringify(model)), documents);
    await assertSound(answered(['report', '-'], JSON.stringify(model)), documents);
});

test('the pages and the manual are sound HTML', async () => {
    for (const file of ['site/index.html', 'site/help/index.html', 'site/course/index.html', 'site/workshop/index.html']) {
        await assertSound(readFileSync(path.join(root, file), 'utf8'));
    }
});

test('these checks object to what they are for', async () => {
    const objects = (fragment) => assert.rejects(() => assertSound(page(fragment)), fragment);
    await assertSound(page('<section><h3>Fine</h3><math><mn>1</mn></math></section>'));
    await objects('<section><h3>One</h3><p>not closed</section>');
    await objects('<section><h3>One</h3><h5>Two</h5></section>');
    await objects('<section><p>No heading</p></section>');
    await objects('<math><mfenced><mn>1</mn></mfenced></math>');
    await objects('<math><mo mathvariant="bold">+</mo></math>');
    await objects('<math><mfrac><mn>1</mn></mfrac></math>');
    await objects('<math><mn><mi>x</mi></mn></math>');
    await objects('<table><caption>T</caption><thead><tr><th>A</th></tr></thead></table>');
    await objects('<table><thead><tr><th scope="col">A</th></tr></thead></table>');
    await objects('<svg role="img"></svg>');
    await objects('<svg><title>A drawing</title></svg>');
});
