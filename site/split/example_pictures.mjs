// node example_pictures.mjs gusset.js OUT EXAMPLES: pictures of the examples, as the program draws them for lists of
// boards. One file for each theme, OUT/pictures-THEME.json, from file names to SVG.
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { startHere } from './bare_page.mjs';

const [script, out, examples] = process.argv.slice(2);
const themes = ['paper', 'dark', 'sun']; // web/ui/palette.hpp

const module = path.join(path.dirname(script), 'gusset-pictures.mjs'); // its extension tells node that it is a module
copyFileSync(script, module);
const { default: create } = await import(pathToFileURL(module));
const program = await startHere(create, path.join(path.dirname(script), 'gusset.wasm'));
const page = program._gussetReader();
const { examples: index } = JSON.parse(readFileSync(path.join(examples, 'index.json'), 'utf8'));

function pictureOf(file, theme) {
    const svg = program.texts([readFileSync(path.join(examples, file), 'utf8')], (text) =>
        program.UTF8ToString(program._gussetSmallPicture(page, text, theme)));
    if (svg === '') {
        throw new Error(`no picture of ${file}`);
    }
    return svg;
}

mkdirSync(out, { recursive: true });
themes.forEach((name, theme) => {
    const pictures = Object.fromEntries(index.map(({ file }) => [file, pictureOf(file, theme)]));
    writeFileSync(path.join(out, `pictures-${name}.json`), JSON.stringify(pictures));
});
