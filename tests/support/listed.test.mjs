// Sources are listed by hand; a forgotten one would simply not be built or not be tested.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');

function ourFiles(...patterns) {
    const list = ['ls-files', '--cached', '--others', '--exclude-standard', '--', ...patterns];
    return execFileSync('git', list, { cwd: root, encoding: 'utf8' }).split('\n').filter(Boolean);
}

// The sources that the CMake files name, as paths from the root.
function listedFiles() {
    return new Set(
        ourFiles('*CMakeLists.txt', '*.cmake').flatMap((list) => {
            const text = readFileSync(path.join(root, list), 'utf8').replace(/#.*$/gm, '');
            // In a room, the sources follow their folder: gusset_room(library folder a.cpp b.cpp)
            const inRooms = [...text.matchAll(/gusset_room\(\w+ ([\w/]+)\s([^)]*)\)/g)].flatMap(
                ([, room, sources]) => sources.split(/\s+/).filter(Boolean).map((name) => `${room}/${name}`),
            );
            const alone = text.replace(/gusset_room\([^)]*\)/g, '').match(/[\w./-]+\.cpp/g) ?? [];
            const names = [...inRooms, ...alone];
            const folder = path.dirname(list);
            // The path after ${PROJECT_SOURCE_DIR} starts with a slash and is relative to the root.
            return names.map((name) =>
                name.startsWith('/') ? name.slice(1) : path.join(folder, name),
            );
        }),
    );
}

test('every source file is listed in a build file', () => {
    const listed = listedFiles();
    assert.deepEqual(ourFiles('*.cpp').filter((file) => !listed.has(file)), []);
});

test('every page file is part of the site', () => {
    const text = readFileSync(path.join(root, 'site/CMakeLists.txt'), 'utf8');
    const pages = ourFiles('site/*.html', 'site/*.css', 'site/*.js', 'site/icons/*');
    assert.deepEqual(
        pages.map((file) => path.relative('site', file)).filter((file) => !text.includes(file)),
        [],
    );
});
