// Reads back what `gusset export` writes, with readers that are not ours.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import path from 'node:path';
import { root } from './support.mjs';

const require = createRequire(path.join(root, 'tests/browser/package.json'));
const { validateXML } = require('xmllint-wasm');
export const { parse: parseGift } = require('gift-pegjs');

function python(program, input) {
    const { status, stdout, stderr } = spawnSync('python3', ['-c', program], { input, maxBuffer: 1 << 28 });
    assert.equal(status, 0, String(stderr));
    return JSON.parse(String(stdout));
}

// Libxml2 finds it well-formed.
export async function wellFormed(xml, name) {
    const { valid, errors } = await validateXML({ xml: { fileName: name, contents: xml }, normalization: 'c14n' });
    assert.ok(valid, `${name}: ${errors.map((it) => it.message).join('\n')}`);
}

// An element as { tag, attributes, text, children }; names without their namespaces.
export function readXml(xml) {
    return python(`
import json, sys
import xml.etree.ElementTree as tree
def read(it):
    return {"tag": it.tag.split("}")[-1], "attributes": it.attrib, "text": it.text or "",
            "children": [read(child) for child in it]}
print(json.dumps(read(tree.fromstring(sys.stdin.buffer.read()))))`, xml);
}

export function all(element, tag) {
    return element.children.flatMap((it) => (it.tag === tag ? [it] : []).concat(all(it, tag)));
}
export const first = (element, tag) => all(element, tag)[0];

// The files of a zip, whose checksums Python's reader checks: path → text.
export function unzipped(bytes) {
    return python(`
import io, json, sys, zipfile
packed = zipfile.ZipFile(io.BytesIO(sys.stdin.buffer.read()))
assert packed.testzip() is None
print(json.dumps({name: packed.read(name).decode() for name in packed.namelist()}))`, bytes);
}

// The command line's bytes, as text would lose those of a zip.
export function exported(words) {
    const program = path.join(root, 'build/dev/engine/gusset');
    const { status, stdout, stderr } = spawnSync(program, ['export', ...words], { cwd: root, maxBuffer: 1 << 28 });
    assert.equal(String(stderr), '');
    assert.equal(status, 0);
    return stdout;
}
