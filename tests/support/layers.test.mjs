// Checks that check_layers finds what it should: each case is a tree with one fault.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';

const checker = fileURLToPath(new URL('check_layers', import.meta.url));
const root = path.resolve(path.dirname(checker), '../..');

function check(folder) {
    const { status, stdout, stderr } = spawnSync('python3', [checker, folder], {
        encoding: 'utf8',
    });
    return { status, said: stdout + stderr };
}

function checkFiles(files) {
    const folder = mkdtempSync(path.join(tmpdir(), 'layers-'));
    for (const [name, text] of Object.entries(files)) {
        mkdirSync(path.dirname(path.join(folder, name)), { recursive: true });
        writeFileSync(path.join(folder, name), text);
    }
    const result = check(folder);
    rmSync(folder, { recursive: true });
    return result;
}

const checkOneFile = (name, text) => checkFiles({ [name]: text });

test('our own includes go downward only', () => {
    assert.deepEqual(check(root), { status: 0, said: '' });
});

const faults = {
    'the model reads the statics': ['engine/model/truss/a.cpp', '#include "statics/solve/solution.hpp"\n'],
    'a public header shows Eigen': ['engine/core/a.hpp', '#pragma once\n#include <Eigen/Core>\n'],
    'a header passes on an inner one': [
        'engine/statics/solve/a.hpp',
        '#pragma once\n#include "statics/solve/rational.hpp"\n',
    ],
    'another layer reads an inner header': ['engine/hand/paper/a.cpp', '#include "statics/solve/rational.hpp"\n'],
    'the engine knows the page': ['engine/report/text/a.cpp', '#include "app/state/state.hpp"\n'],
    'a panel draws by itself': ['web/panels/frame/a.cpp', '#include "render/renderer.hpp"\n'],
    'a panel talks to the browser': ['web/panels/frame/a.cpp', '#include "platform/platform.hpp"\n'],
    'the app knows Dear ImGui': ['web/app/state/a.cpp', '#include <imgui.h>\n'],
    'a test includes json': ['tests/engine/a.cpp', '#include <nlohmann/json.hpp>\n'],
    'a room includes one above it': ['engine/report/text/a.cpp', '#include "report/sketch/sketch.hpp"\n'],
    'a source stands in no room': ['engine/report/a.cpp', '#include <vector>\n'],
    'the engine prints': ['engine/statics/solve/a.cpp', 'void f() { std::printf("x"); }\n'],
    'a sentence chooses its language': [
        'engine/report/text/a.cpp',
        'std::string f() { return sayPlain(englishPhrases(), phrase::kUp); }\n',
    ],
    'the engine uses streams': ['engine/report/text/a.cpp', '#include <sstream>\n'],
    'a header can be read twice': ['engine/core/a.hpp', 'struct A {};\n'],
};

for (const [what, [name, text]] of Object.entries(faults)) {
    test(`it objects when ${what}`, () => {
        const { status, said } = checkOneFile(name, text);
        assert.equal(status, 1, said);
        assert.ok(said.startsWith(`${name}: `), said);
    });
}

test('it objects when two headers define a type of one name', () => {
    const text = '#pragma once\nstruct Table {\n};\n';
    const { status, said } = checkFiles({ 'engine/report/results/table.hpp': text, 'web/ui/table.hpp': text });
    assert.equal(status, 1);
    assert.equal(said, 'web/ui/table.hpp: Table is defined in engine/report/results/table.hpp too\n');
});

test('it has nothing against a layer that includes one below it', () => {
    const text = '#include <Eigen/Core>\n#include "model/truss/truss.hpp"\nint f(char* s, int n) { return std::snprintf(s, n, "x"); }\n';
    assert.deepEqual(checkOneFile('engine/statics/solve/a.cpp', text), { status: 0, said: '' });
});
