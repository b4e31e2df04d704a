// node strip.mjs FROM TO: writes a script of the page as it is served, without empty lines and comment-only lines:
// a sixth of the compressed weight of the scripts before the first picture.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';

const [from, to] = process.argv.slice(2);
let isInText = false; // inside a template literal of several lines
const kept = readFileSync(from, 'utf8').split('\n').filter((line) => {
    const isComment = /^\s*\/\//.test(line);
    if (isInText && isComment) {
        throw new Error(`${from}: "${line.trim()}" seems to stand in a text of several lines`);
    }
    const isKept = isInText || !(isComment || line.trim() === '');
    isInText = !isComment && line.split('`').length % 2 === 0 ? !isInText : isInText;
    return isKept;
});
mkdirSync(path.dirname(to), { recursive: true });
writeFileSync(to, `${kept.join('\n')}\n`);
