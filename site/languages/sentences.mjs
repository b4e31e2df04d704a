// node site/languages/sentences.mjs: every English sentence of the page with an empty translation, as JSON.
// Filled in and saved here as NAME.json (a language tag, such as de.json), it is what ?language=NAME loads. Parts in
// braces stay as they are, in any order; an empty translation leaves the sentence in English.
import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folders = ['engine/phrases', 'web/phrases'];

// The value of adjacent C++ string literals.
function textOf(literals) {
    return [...literals.matchAll(/"((?:[^"\\]|\\.)*)"/g)].map(([, inside]) => JSON.parse(`"${inside}"`)).join('');
}

export function sentences() {
    const headers = folders.flatMap((folder) =>
        readdirSync(path.join(root, folder), { recursive: true })
            .filter((name) => name.endsWith('.hpp'))
            .map((name) => readFileSync(path.join(root, folder, name), 'utf8')));
    const literals = headers.flatMap((text) => text.match(/(?:"(?:[^"\\\n]|\\.)*"\s*)+(?=_phrase)/g) ?? []);
    return [...new Set(literals.map(textOf))].sort();
}

if (import.meta.url === pathToFileURL(process.argv[1]).href) {
    console.log(JSON.stringify(Object.fromEntries(sentences().map((english) => [english, ''])), null, 2));
}
