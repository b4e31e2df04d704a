// Bad files and links: exit status 2, and one line per fault on standard error with its place, quickly.
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { test } from 'node:test';
import { forged, deflated, sealed } from './links.mjs';
import { gusset } from './support.mjs';

const triangle = {
    gusset: 1,
    joints: [
        { id: 'A', x: 0, y: 0 },
        { id: 'B', x: 4, y: 0 },
        { id: 'C', x: 2, y: 1.5 },
    ],
    members: [
        { a: 'A', b: 'B' },
        { a: 'B', b: 'C' },
        { a: 'A', b: 'C' },
    ],
    supports: [
        { joint: 'A', kind: 'pin' },
        { joint: 'B', kind: 'roller', reaction: 90 },
    ],
    loads: [{ joint: 'C', fy: -10 }],
};

function broken(change) {
    const model = structuredClone(triangle);
    change(model);
    return JSON.stringify(model);
}

// The lines on standard error.
function refused(words, input = '') {
    const { status, stdout, stderr } = gusset(words, input);
    assert.equal(status, 2, stderr);
    assert.equal(stdout, '');
    assert.match(stderr, /\n$/);
    return stderr.trimEnd().split('\n');
}

const faults = {
    'a string where a number belongs': [(m) => (m.joints[2].x = '2'), /^joints\[2\]\.x: must be a number/],
    'a number where a label belongs': [(m) => (m.members[0].a = 7), /^members\[0\]\.a: must be text/],
    'an object where a list belongs': [(m) => (m.members = {}), /^members: must be a list/],
    'a joint that is not there': [(m) => (m.members[2].b = 'K'), /^members\[2\]\.b: no joint "K"/],
    'a load on nothing': [(m) => (m.loads[0].joint = 'Z'), /^loads\[0\]\.joint: no joint "Z"/],
    'a label twice': [(m) => m.joints.push({ id: 'B', x: 9, y: 9 }), /^joints\[3\]\.id: "B" already exists/],
    'a member twice': [(m) => m.members.push({ a: 'C', b: 'A' }), /^members\[3\]: .*already exists as members\[2\]/],
    'a member without length': [(m) => (m.joints[1].x = 0), /^members\[0\]: member AB has no length/],
    'a member from a joint to itself': [(m) => (m.members[0].b = 'A'), /^members\[0\]: begins and ends/],
    'a number near the largest': [(m) => (m.joints[1].x = 1e308), /^joints\[1\]\.x: the number is too large/],
    'a roller without direction': [(m) => delete m.supports[1].reaction, /^supports\[1\]\.reaction: is missing/],
    'a word without meaning': [(m) => (m.supports[0].kind = 'glue'), /^supports\[0\]\.kind: "glue" has no/],
    'a unit that is none': [(m) => (m.units = { force: 'stone' }), /^units\.force: no unit "stone"/],
    'a section that is not there': [(m) => (m.members[0].section = 's'), /^members\[0\]\.section: no section/],
    'no area': [(m) => (m.sections = [{ id: 's', A: 0 }]), /^sections\[0\]\.A: must be greater than 0/],
    'a load of two kinds': [(m) => (m.loads[0].size = 3), /^loads\[0\]: a load is one of/],
    'a later version': [(m) => (m.gusset = 2), /^gusset: written by a later version/],
    'no version': [(m) => delete m.gusset, /^gusset: is missing/],
    'no joints': [(m) => delete m.joints, /^joints: is missing/],
};

for (const [name, [change, line]] of Object.entries(faults)) {
    test(`a file with ${name} is refused in a line with its place`, () => {
        assert.match(refused(['solve', '-'], broken(change))[0], line);
    });
}

test('NaN, infinity and numbers beyond any are refused with their place', () => {
    for (const number of ['NaN', 'Infinity', '-Infinity', '1e999']) {
        const text = JSON.stringify(triangle).replace('"x":4', `"x":${number}`);
        assert.match(refused(['check', '-'], text)[0], /^joints\[1\]\.x: /);
    }
});

test('each fault has its own line, and at most twenty are told', () => {
    const two = broken((m) => {
        m.members[0].a = 'K';
        m.joints[1].y = null;
    });
    assert.equal(refused(['solve', '-'], two).length, 2);
    const many = broken((m) => (m.members = Array(99).fill({})));
    assert.equal(refused(['solve', '-'], many).length, 20);
});

test('a label with line breaks and escapes in it cannot forge a line', () => {
    const text = broken((m) => (m.members[0].a = 'x\nall is well\u001b[2J'));
    const lines = refused(['solve', '-'], text);
    assert.equal(lines.length, 1);
    assert.doesNotMatch(lines[0], /\u001b/);
});

test('with --json the faults stand in the results as well', () => {
    const { status, stdout, stderr } = gusset(
        ['solve', '-', '--json'],
        broken((m) => (m.members[2].b = 'K')),
    );
    assert.equal(status, 2);
    assert.equal(JSON.parse(stdout).status, 'invalid');
    assert.equal(JSON.parse(stdout).errors[0].at, 'members[2].b');
    assert.match(stderr, /^members\[2\]\.b: /);
});

test('text that is no JSON is told by line and column', () => {
    assert.match(refused(['solve', '-'], '{\n "gusset": 1,\n "joints": [}')[0], /^line 3, column \d+: /);
    assert.match(refused(['solve', '-'], '')[0], /^the text: is empty: a model of Gusset begins with \{$/);
    assert.match(refused(['solve', '-'], ' \n')[0], /^the text: holds nothing but spaces/);
});

test('a file that is not there, or a folder, is refused by its name and with the cure', () => {
    assert.deepEqual(refused(['solve', 'no/such/file.json']), [
        'no/such/file.json: there is no such file: name an existing one',
    ]);
    assert.deepEqual(refused(['solve', 'site/examples/footbridge.json/x']), [
        'site/examples/footbridge.json/x: there is no such file: name an existing one',
    ]);
    assert.deepEqual(refused(['solve', 'site']), ['site: is a folder: name a file in it']);
});

test('whatever is wrong with a file, its name stands in the line', () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'gusset-'));
    const wrong = {
        'latin.json': [Buffer.from('{"gusset":1,"title":"Dachtr\xe4ger"}', 'latin1'), /: line 1, column 28: not UTF-8 text: save the file as UTF-8$/],
        'wide.json': [Buffer.from('\ufeff{"gusset":1}', 'utf16le'), /: the text: is UTF-16: save it as UTF-8$/],
        'empty.json': [Buffer.alloc(0), /: the text: is empty: a model of Gusset begins with \{$/],
        'huge.json': [Buffer.alloc((8 << 20) + 1, ' '), /: the file: is larger than 8 MB/],
        'typo.json': [Buffer.from('{"gusset":1,}'), /: line 1, column 13: not JSON/],
        'odd.json': [Buffer.from(broken((m) => (m.members[2].b = 'K'))), /: members\[2\]\.b: no joint "K"/],
    };
    for (const [name, [bytes, says]] of Object.entries(wrong)) {
        const file = path.join(folder, name);
        writeFileSync(file, bytes);
        const [line] = refused(['solve', file]);
        assert.ok(line.startsWith(`${file}: `), line);
        assert.match(line, says);
    }
    rmSync(folder, { recursive: true });
});

test('what follows a zero byte is not passed over, and text of two bytes a letter is told', () => {
    const text = JSON.stringify(triangle);
    assert.match(refused(['solve', '-'], `${text}\0{}`)[0], /: holds the character U\+0000, as UTF-16 does/);
    assert.match(refused(['solve', '-'], Buffer.from(text, 'utf16le'))[0], /^line 1, column 2: holds the character U\+0000/);
});

test('a name that may be two members, or is named twice, is refused; an empty one is shown', () => {
    // A-B-C is the member from A to B-C, or the one from A-B to C.
    const model = {
        gusset: 1,
        joints: [['A', 0, 0], ['B-C', 4, 0], ['A-B', 0, 3], ['C', 4, 3]].map(([id, x, y]) => ({ id, x, y })),
        members: [['A', 'B-C'], ['A-B', 'C']].map(([a, b]) => ({ a, b })),
        supports: [{ joint: 'A', kind: 'pin' }, { joint: 'A-B', kind: 'pin' }, { joint: 'B-C', kind: 'pin' }, { joint: 'C', kind: 'pin' }],
    };
    const [line] = refused(['working', '-', '--member', 'A-B-C'], JSON.stringify(model));
    assert.equal(line, 'A-B-C: may be member A–B-C or member A-B–C: name it the other way round, or rename a joint');
    assert.equal(gusset(['check', '-', '--member', 'B-C-A'], JSON.stringify(model)).status, 0);
    const text = JSON.stringify(triangle);
    assert.match(refused(['working', '-', '--section', 'A-B,B-A'], text)[0], /^B-A: is named twice/);
    assert.match(refused(['influence', '-', '--path', 'A,,B', '--of', 'member:A-B'], text)[0], /^"": is no joint/);
});

test('a model that begins with a byte order mark, or has the line ends of Windows, is read', () => {
    const text = JSON.stringify(triangle, null, 1).replaceAll('\n', '\r\n');
    assert.equal(gusset(['solve', '-'], `\ufeff${text}`).status, 0);
});

test('a case or a combination that is not there is refused by its name', () => {
    const garage = 'site/examples/garage_roof.json';
    assert.match(refused(['solve', garage, '--case', 'wynd'])[0], /"wynd"/);
    assert.match(refused(['solve', garage, '--combination', 'x'])[0], /"x"/);
});

test('a nest of brackets and a file of many megabytes are refused', () => {
    assert.match(refused(['solve', '-'], '['.repeat(3_000_000))[0], /deep/);
    assert.match(refused(['solve', '-'], ' '.repeat((8 << 20) + 1))[0], /larger than 8 MB/);
});

const link = gusset(['link', 'site/examples/footbridge.json']).stdout.trimEnd();

test('a link cut anywhere says that it is incomplete, and how much of it arrived', () => {
    for (let length = 4; length < link.length; length += 7) {
        const [line] = refused(['open', link.slice(0, length)]);
        assert.match(line, /^the link: is incomplete/);
        if (length > 12) {
            // The # in front is not counted as part of the link.
            assert.match(line, new RegExp(`: ${length - 1} of ${link.length - 1} characters arrived`));
        }
    }
});

test('a link with a changed letter, broken base64 or another checksum is refused', () => {
    const swapped = link.slice(0, 30) + (link[30] === 'A' ? 'B' : 'A') + link.slice(31);
    assert.match(refused(['open', swapped])[0], /^the link: was altered.*checksum/);
    const broken = link.slice(0, 30) + '!' + link.slice(31);
    assert.match(refused(['open', broken])[0], /^the link: was altered.*character/);
    const recount = link.replace(/\.(\d+)\.(\w+)$/, '.7.$2');
    assert.match(refused(['open', recount])[0], /^the link: was altered/);
});

test('a link written by hand that was cut before its first } says so', () => {
    assert.match(refused(['open', '#j=%7B%22gusset%22'])[0], /^the link: is incomplete: no \} ends its model/);
});

test('a link of a later version says so', () => {
    assert.match(refused(['open', '#m=2.abc.3.00000'])[0], /^the link: was written by a later version/);
});

test('a forged link opens by what it holds, so that what follows tests the content', () => {
    // Two joints a metre apart and a member; the format is in engine/exchange/links/compact_model.hpp.
    const { status, stdout } = gusset(['open', forged('[[[0,0,1],[0,0,0]],[[0],[1]]]')]);
    assert.equal(status, 0);
    assert.deepEqual(JSON.parse(stdout).members, [{ a: 'A', b: 'B' }]);
});

test('deflate cut at every length, with a right checksum again, is refused', () => {
    const whole = deflated('[[[0,0,1,2,3],[0,0,0,1,1]],[[0,0],[1,2]]]');
    for (let length = 0; length < whole.length; ++length) {
        assert.match(refused(['open', sealed(whole.subarray(0, length))])[0], /^the link: does not unpack/);
    }
});

test('a decompression bomb is refused by its size', () => {
    const bomb = forged('0'.repeat(30_000_000));
    assert.ok(bomb.length < 65_536);
    assert.match(refused(['open', bomb])[0], /^the link: unpacks to more than 1 MB/);
});

test('a hundred thousand members in a link are refused by their count', () => {
    const zeros = Array(100_000).fill(0).join(',');
    const many = forged(`[[[0,0,1],[0,0,0]],[[${zeros}],[1]]]`);
    assert.match(refused(['open', many])[0], /^the link: holds 100000 members/);
});

test('what is no link is refused with what a link has', () => {
    assert.match(refused(['open', 'https://example.org/#other'])[0], /: /);
});

test('a model too large for a link gives none', () => {
    const model = structuredClone(triangle);
    for (let i = 0; i < 12_000; ++i) {
        model.joints.push({ id: `j${i}`, x: i * 0.37, y: 5 + (i % 3) });
    }
    assert.match(refused(['link', '-'], JSON.stringify(model))[0], /^the link: /);
});
