// gusset size: the lightest profiles that pass; what comes out is checked by gusset check, profile by profile.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { answered, gusset } from './support.mjs';

const barn = answered(['form', 'tests/data/outlines/barn_roof.json']);
const words = ['size', '-', '--kinds', 'shs-hot', '--grade', 'S355', '--deflection', '250'];

test('a barn roof of 24 m: every member passes the check, and the words say what was chosen', () => {
    const model = answered(words, barn);
    const { members, sections, materials } = JSON.parse(model);
    assert.equal(new Set(members.map(({ section }) => section)).size, sections.length);
    assert.ok(members.every(({ section }) => sections.some(({ id }) => id === section)));
    assert.deepEqual(materials.map(({ id, strength }) => [id, strength]), [['S355', 355]]);
    const { status, stdout } = gusset(['check', '-', '--members', '--worst', '--text'], model);
    assert.equal(status, 0);
    assert.doesNotMatch(stdout, /Carry more than allowed|More slender than allowed|Not checked/);
    const text = answered([...words, '--text'], barn);
    for (const { id } of sections) {
        assert.ok(text.includes(id), id);
    }
    assert.match(text, /upper chord: SHS .*, 12 members/);
    assert.match(text, /Preliminary check only/);
    assert.match(text, /Local codes and a licensed engineer decide/);
});

test('its own weight is added to a load case, and a case that is none is refused', () => {
    const plain = JSON.parse(barn);
    plain.loads = plain.loads.filter((load) => !load.selfWeight);
    const made = JSON.parse(answered([...words, '--weight', plain.cases[0].id], JSON.stringify(plain)));
    assert.equal(made.loads.length, plain.loads.length + 1);
    assert.equal(made.loads.at(-1).case, plain.cases[0].id);
    const { status, stderr } = gusset([...words, '--weight', 'nowhere'], JSON.stringify(plain));
    assert.equal(status, 3);
    assert.match(stderr, /--weight: names a load case of the model/);
});

test('where no profile is enough, that is said of its group, with the member', () => {
    const heavy = JSON.parse(barn);
    heavy.loads.forEach((load) => { load.fy *= 40; });
    const text = answered([...words, '--text'], JSON.stringify(heavy));
    assert.match(text, /upper chord: no profile of the list is enough\. With the heaviest, SHS .*, member .* is used \d/);
});

test('what is wrong is said with its cure', () => {
    const said = (more, sentence) => {
        const { status, stdout, stderr } = gusset(['size', '-', ...more], barn);
        assert.equal(status, 3, stderr);
        assert.match(stderr, sentence);
        assert.equal(stdout, '');
    };
    said([], /--kinds.*what to choose from/);
    said(['--kinds', 'beams'], /as gusset profiles lists them/);
    said(['--kinds', 'chs,beams'], /as gusset profiles lists them/);
    said(['--kinds', 'shs-hot', '--grade', 'S999'], /no grade S999: take one of steel/);
    said(['--kinds', 'shs-hot', '--deflection', 'far'], /x of a limit L\/x/);
});
