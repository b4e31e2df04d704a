// Every published case through the command line: the JSON results of its model file against what its source
// prints.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';
import { gusset, root } from '../cli/support.mjs';

const folder = path.join(root, 'tests/published/cases');

// "force A-B -707.1 within 0.05" → { what: 'force', of: ['A-B'], value: -707.1, within: 0.05 }
function readLine(row) {
    const [what, ...of] = row.split(/\s+/);
    if (of.at(-2) !== 'within') {
        return { what, of };
    }
    const [value, , within] = of.splice(-3).map(Number);
    return { what, of, value, within };
}

function near(found, line, name) {
    assert.ok(
        Math.abs(found - line.value) <= line.within,
        `${name} is ${found}, where the source has ${line.value}`,
    );
}

function memberOf(results, name) {
    const found = results.members.find((it) => `${it.a}-${it.b}` === name || `${it.b}-${it.a}` === name);
    assert.ok(found, `a member ${name}`);
    return found;
}

const redundants = (results) => results.external + results.internal;

const checks = {
    status: (results, { of }) => assert.equal(results.status, of[0]),
    mechanisms: (results, { of }) => assert.equal(results.mechanisms.length, Number(of[0])),
    redundants: (results, { of }) => assert.equal(redundants(results), Number(of[0])),
    force(results, line) {
        const member = memberOf(results, line.of[0]);
        near(member.force, line, line.of[0]);
        if (Math.abs(line.value) > line.within) {
            assert.equal(member.sense, line.value > 0 ? 'T' : 'C');
        }
    },
    reaction(results, line) {
        const [joint, axis] = line.of;
        const reaction = results.reactions.find((it) => it.joint === joint);
        near(reaction[`f${axis}`], line, `${joint}_${axis}`);
    },
    displacement(results, line) {
        const [id, axis] = line.of;
        near(results.joints.find((it) => it.id === id)[`u${axis}`], line, `displacement of ${id}`);
    },
    'largest-stress': (results, line) =>
        near(Math.max(...results.members.map((it) => Math.abs(it.stress))), line, 'largest stress'),
    'largest-displacement': (results, line) =>
        near(
            Math.max(...results.joints.flatMap(({ ux, uy }) => [Math.abs(ux), Math.abs(uy)])),
            line,
            'largest displacement',
        ),
    zero(results, { of }, lines) {
        if (of[0] !== 'only') {
            assert.equal(memberOf(results, of[0]).sense, '0', of[0]);
            return;
        }
        const listed = lines.filter((it) => it.what === 'zero' && it.of[0] !== 'only');
        assert.equal(results.members.filter((it) => it.sense === '0').length, listed.length);
    },
};

function influence(file, lines, of) {
    const along = lines.find((it) => it.what === 'path').of.join(',');
    const { status, stdout } = gusset(['influence', file, '--path', along, '--of', of, '--json']);
    assert.equal(status, 0);
    return JSON.parse(stdout);
}

function checkMoving(file, lines) {
    for (const line of lines) {
        if (line.what === 'influence') {
            const [of, joint] = line.of;
            const found = influence(file, lines, of).ordinates.find((it) => it.joint === joint);
            near(found.value, line, `${of} for a load at ${joint}`);
        }
        if (line.what === 'moving-max') {
            near(influence(file, lines, line.of[0]).moving[0].largest.value, line, line.of[0]);
        }
    }
}

for (const file of readdirSync(folder).filter((name) => name.endsWith('.txt'))) {
    const name = path.basename(file, '.txt');
    const rows = readFileSync(path.join(folder, file), 'utf8').trimEnd().split('\n');
    const lines = rows.map(readLine);
    const source = rows.find((row) => row.startsWith('source ')).slice('source '.length);
    const unstable = lines.some((it) => it.what === 'status' && it.of[0] === 'mechanism');
    test(`${name}: ${source}`, () => {
        const { status, stdout } = gusset(['solve', path.join(folder, `${name}.json`), '--json']);
        assert.equal(status, unstable ? 1 : 0);
        const results = JSON.parse(stdout);
        for (const line of lines) {
            checks[line.what]?.(results, line, lines);
        }
        checkMoving(path.join(folder, `${name}.json`), lines);
    });
}
