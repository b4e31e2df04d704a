// What is printed: a PDF's pages, words and pictures, by poppler's tools.
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { after } from 'node:test';
import { root } from './support.mjs';

export const folder = mkdtempSync(path.join(os.tmpdir(), 'gusset-paper-'));
after(() => rmSync(folder, { recursive: true }));

export const papers = { A4: [210, 297], Letter: [215.9, 279.4] };

export const pagesOf = (file) => Number(execFileSync('pdfinfo', [file]).toString().match(/^Pages: +(\d+)/m)[1]);

// Word → the numbers of the pages where it is printed.
export function whereWords(file) {
    const where = new Map();
    const pages = execFileSync('pdftotext', ['-bbox', file, '-'], { maxBuffer: 1e8 }).toString().split('<page ').slice(1);
    pages.forEach((page, i) => {
        for (const [, word] of page.matchAll(/<word [^>]*>([^<]*)<\/word>/g)) {
            where.set(word, [...where.get(word) ?? [], i + 1]);
        }
    });
    return where;
}

// The pages as grey pictures: { width, height, at(x, y) }, 0 black.
export function picturesOf(file, dpi = 60) {
    execFileSync('pdftoppm', ['-gray', '-r', String(dpi), file, path.join(folder, 'page')]);
    return readdirSync(folder).filter((name) => name.endsWith('.pgm')).sort().map((name) => {
        const bytes = readFileSync(path.join(folder, name));
        rmSync(path.join(folder, name));
        const [head, width, height] = bytes.toString('latin1', 0, 40).match(/^P5\s+(\d+)\s+(\d+)\s+255\s/);
        const grey = bytes.subarray(head.length);
        return { width: Number(width), height: Number(height), at: (x, y) => grey[y * Number(width) + x] };
    });
}

// What is printed in a margin, in mm from the upper left corner of a page of that size; where the foot of the page
// stands does not count: isFoot(left, top), mm.
export function inMargins(picture, [width, height], margins, isFoot) {
    const slack = 0.8; // mm: half a dot, and the width of a line
    const found = [];
    for (let y = 0; y < picture.height; ++y) {
        for (let x = 0; x < picture.width; ++x) {
            const [left, top] = [x * width / picture.width, y * height / picture.height];
            const outside = left < margins.side - slack || left > width - margins.side + slack ||
                top < margins.top - slack || top > height - margins.bottom + slack;
            if (outside && !isFoot(left, top) && picture.at(x, y) < 250) {
                found.push([Math.round(left), Math.round(top)]);
            }
        }
    }
    return found;
}

export function keepPictures(file, name) {
    const screenshots = path.join(root, 'build/screenshots');
    mkdirSync(screenshots, { recursive: true });
    execFileSync('pdftoppm', ['-png', '-r', '80', file, path.join(folder, 'kept')]);
    for (const kept of readdirSync(folder).filter((it) => it.startsWith('kept'))) {
        const bytes = readFileSync(path.join(folder, kept));
        rmSync(path.join(folder, kept));
        writeFileSync(path.join(screenshots, `${name.replaceAll(' ', '-')}-${kept.slice(5)}`), bytes);
    }
}
