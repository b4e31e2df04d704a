// At the end of tests/run each failed test is named with why; so it is of a program that crashed.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';

const script = fileURLToPath(new URL('failures.py', import.meta.url));

function named(file, text) {
    const folder = mkdtempSync(path.join(tmpdir(), 'failures-'));
    try {
        writeFileSync(path.join(folder, file), text);
        const { stdout, stderr } = spawnSync('python3', [script, folder], { encoding: 'utf8' });
        assert.equal(stderr, '');
        return stdout;
    } finally {
        rmSync(folder, { recursive: true });
    }
}

const report = `<?xml version="1.0"?><Catch2TestRun>
  <TestCase name="A bar is straight"><OverallResult success="true"/></TestCase>
  <TestCase name="A joint is balanced">
    <Expression success="false" type="CHECK" filename="joint.cpp" line="7">
      <Original>sum == 0</Original><Expanded>1.5 == 0</Expanded>
    </Expression>
    <OverallResult success="false"/>
  </TestCase>
  <TestCase name="A chord is cut">`;

test('a failed test of a Catch2 program is named with what is not so', () => {
    assert.equal(
        named('plain.xml', `${report}<OverallResult success="true"/></TestCase></Catch2TestRun>`),
        '  plain: A joint is balanced: joint.cpp:7: sum == 0 is not so: 1.5 == 0\n'
    );
});

test('of a program that crashed, the test it was in is named', () => {
    assert.match(named('plain.xml', report), /A joint is balanced.*\n {2}plain: A chord is cut: the program ended here\n$/);
});

test("a failed test of node's runner is named with its error, of one line or many", () => {
    const failed = (name, error) => `not ok 1 - ${name}\n  ---\n  error: ${error}\n  code: 'X'\n  ...\n`;
    assert.equal(
        named('page.tap', `ok 1 - good\n${failed('small', "'1 == 2'")}${failed('large', '|-\n    two\n    lines')}`),
        "  page: small: '1 == 2'\n  page: large: two\n"
    );
});
