// Text for people is written where its phrase is defined: every phrase is used somewhere, and in the rooms whose
// texts are all phrases there are no words in the code.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { readFileSync, readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

function sources(folder) {
    if (statSync(path.join(root, folder)).isFile()) {
        return [path.join(root, folder)];
    }
    return readdirSync(path.join(root, folder), { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile() && /\.[ch]pp$/.test(entry.name))
        .map((entry) => path.join(entry.path ?? entry.parentPath, entry.name));
}

// The string literals of a source that contain words: two words, or one with a capital.
function wordsIn(text) {
    const code = text.replace(/^\s*#\s*include.*$/gm, '').replace(/\/\/.*$/gm, '').replace(/\bassert\([^;]*;/g, '');
    const strings = [...code.matchAll(/"((?:[^"\\\n]|\\.)*)"/g)].map((match) => match[1]);
    return strings.filter((string) => /\p{L}{2,} +\p{L}|^\p{Lu}\p{Ll}+/u.test(string.replace(/\{\w+\}|<[^>]*>/g, '')));
}

// Rooms whose texts are all phrases, and the other string literals in them.
const rooms = [
    'engine/core',
    'engine/model/truss',
    'engine/model/validate',
    'engine/model/quantity',
    'engine/model/catalogue/section_shapes.cpp',
    'engine/model/edit/edit.cpp',
    'engine/statics',
    'engine/design',
    'engine/exchange',
    'engine/report',
    'engine/classroom',
    'engine/desk',
    'engine/course',
    'engine/hand',
    'engine/model/catalogue/usual_materials.cpp',
    'engine/model/edit/describe.cpp',
    'web/app',
    'web/board_picture.cpp',
    'web/canvas',
    'web/main.cpp',
    'web/page.cpp',
    'web/page_input.cpp',
    'web/page_output.cpp',
    'web/page_start.cpp',
    'web/panels',
    'web/platform',
    'web/render',
    'web/ui',
];
const names = new Set([
    // Windows and items of Dear ImGui, which are not shown.
    'board menu',
    'view menu',
    'notebook width',
    'notebook height',
    'field brought into view',
    '###remove picked',
    'class settings',
    'height of the words',
    'step followed',
    '−##fewer panels',
    '+##more panels',
    'checked loads',
    'envelope of',
    'finger reads',
    'force unit',
    'influence line',
    'keep the numbers',
    'length unit',
    'moving load',
    // HTML and SVG.
    '<button type=\\"button\\" data-',
    ' <select data-ask=\\"',
    '<option value=\\"',
    '<th scope=\\"rowgroup\\"',
    '<path d=\\"M0 0h',
    'H0z\\" fill=\\"#ffffff\\"/>\\n<path d=\\"',
    '\\" shape-rendering=\\"crispEdges\\" role=\\"img\\">\\n<title>',
    'Inter, Helvetica, Arial, sans-serif',
    '@page {\\n    margin: 13mm 15mm 15mm;\\n    font: 8pt \\"Helvetica Neue\\", Arial, ',
    '<span class=\\"tail t',
    '<thead>\\n<tr><th scope=\\"colgroup\\" class=\\"caption\\" colspan=\\"',
    // A size of paper.
    'Letter',
    // Forces n with their indices (force_method_tables).
    'Nn',
    'Rr',
    // Words and keys of files and results, and a unit.
    'Euler',
    'Case',
    'Combination',
    'Pa',
    // The key of an inner radius in files.
    'Ri',
    // Headings of class lists, which are left out (exchange/exercises/student_list).
    'first name',
    'given name',
    'last name',
    'student id',
    'id number',
    'email address',
    // Of the formats of learning platforms (exchange/platforms).
    'Decimal',
    'Single',
    'Yes',
    'No',
    'Set',
    'Response',
    'IMS Content',
    'QTI Package',
    'Gusset/',
    '<p><img src=\\"',
    // At the start of a binary DXF (exchange/drawings).
    'Binary DXF',
    // What JSON can't hold, and how its parser begins and goes on (exchange/json/parser_words).
    'NaN',
    'Inf',
    'Infinity',
    'invalid string: control character ',
    ' must be escaped to ',
    "; last read: '",
    ', or a literal',
]);

test('the search for words finds a sentence, a label and an accessible name, and lets keys and signs be', () => {
    const text = '#include "a b.hpp"\nf("Undo"); g("two words"); h("no force##id"); k("starter.span", "kN", "→", "{n} joints");';
    assert.deepEqual(wordsIn(text), ['Undo', 'two words', 'no force##id']);
});

for (const room of rooms) {
    test(`${room} has no words in its code`, () => {
        const found = sources(room).flatMap((file) =>
            wordsIn(readFileSync(file, 'utf8'))
                .filter((string) => !names.has(string))
                .map((string) => `${path.relative(root, file)}: "${string}"`)
        );
        assert.deepEqual(found, []);
    });
}

// A single word in small letters may also be an id: what is shown is known by where it stands.
const shown =
    /(?:\b(?:button|toggle|smallPrint|paragraph|sectionHeading|besideButtons|listRow|listEntry)\([^;{]*?|\blook\.(?:name|hint) = |\bColumn\{\{?)"(?=\p{L})[^"]*"/gu;

test('the panels show no single word in quotes either', () => {
    assert.equal('look.name = "title"; button(ui, "all", {}); Column{{"joint"}, 56}'.match(shown).length, 3);
    const found = sources('web/panels').flatMap((file) =>
        (readFileSync(file, 'utf8').match(shown) ?? []).map((place) => `${path.relative(root, file)}: ${place}`)
    );
    assert.deepEqual(found, []);
});

test('every phrase is said', () => {
    const headers = ['engine/phrases', 'web/phrases'].flatMap(sources);
    const code = ['engine', 'web'].flatMap(sources).filter((file) => !headers.includes(file));
    const said = new Set(code.flatMap((file) => readFileSync(file, 'utf8').match(/\bphrase::k\w+/g) ?? []));
    const defined = headers.flatMap((file) => readFileSync(file, 'utf8').match(/(?<=constexpr auto )k\w+/g) ?? []);
    assert.ok(defined.length > 500, `${defined.length} phrases`);
    assert.deepEqual(defined.filter((name) => !said.has(`phrase::${name}`)), []);
});

// Whether the compiler accepts a sentence said with these arguments.
function compiles(says) {
    const source = `#include "report/text/phrases.hpp"
        using namespace gusset;
        constexpr auto kPin = "The pin at {joint} gives {x} and {y}."_phrase;
        std::string f(const PhraseBook& book, const std::string& name) { return sayPlain(book, ${says}); }`;
    const options = ['-std=c++20', '-fsyntax-only', '-I', path.join(root, 'engine'), '-x', 'c++', '-'];
    return spawnSync(process.env.CXX ?? 'c++', options, { input: source }).status === 0;
}

test('the compiler takes the parts of a sentence in any order, and no others', () => {
    assert.ok(compiles('kPin, {{"joint", name}, {"x", 1}, {"y", "two"}}'));
    assert.ok(compiles('kPin, {{"y", "two"}, {"joint", name}, {"x", 1}}'));
    assert.ok(!compiles('kPin'), 'none');
    assert.ok(!compiles('kPin, {{"joint", name}, {"x", 1}}'), 'one missing');
    assert.ok(!compiles('kPin, {{"joint", name}, {"x", 1}, {"z", 2}}'), 'one that it has not');
    assert.ok(!compiles('kPin, {{"joint", name}, {"x", 1}, {"y", 2}, {"x", 3}}'), 'one too many');
    assert.ok(!compiles('"{joint is"_phrase, {{"joint", name}}'), 'a brace that is never closed');
});
