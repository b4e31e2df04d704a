// Exercises as questions of learning platforms: every format is read back, and its answers are those of `gusset solve`.
import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { test } from 'node:test';
import { gusset, root } from './support.mjs';
import { all, exported, first, parseGift, readXml, unzipped, wellFormed } from './platforms.mjs';

const bridge = 'site/examples/footbridge.json';
const folder = mkdtempSync(path.join(tmpdir(), 'gusset-export-'));

function kept(name, model) {
    const file = path.join(folder, name);
    writeFileSync(file, typeof model === 'string' ? model : JSON.stringify(model));
    return file;
}

// What is right, by the names of the questions, from the engine's results. The labels are single letters.
function truth(file) {
    const results = JSON.parse(gusset(['solve', file, '--json']).stdout);
    const values = new Map(results.members.map((it) => [`Force in ${it.a}${it.b}`, it.force]));
    for (const { joint, fx, fy } of results.reactions) {
        values.set(`Reaction ${joint}_x`, fx).set(`Reaction ${joint}_y`, fy);
    }
    const largest = Math.max(...[...values.values()].map(Math.abs));
    // 1 per cent, but at least 0.1 per cent of the largest force: the tolerance of an exercise that says nothing else.
    const tolerance = (value) => Math.max(Math.abs(value) / 100, largest / 1000);
    return { values, tolerance };
}

const close = (found, value, what) =>
    assert.ok(Math.abs(found - value) <= 1e-9 * Math.max(1, Math.abs(value)), `${what}: ${found} for ${value}`);

// `questions`: [name, value, tolerance] of a format. All 13 members and 3 reactions of the bridge are asked.
function agree(questions, file = bridge, count = 16) {
    const { values, tolerance } = truth(file);
    assert.equal(questions.length, count);
    assert.equal(new Set(questions.map(([name]) => name)).size, count);
    for (const [name, value, within] of questions) {
        assert.ok(values.has(name), `a question ${name}`);
        close(value, values.get(name), name);
        close(within, tolerance(values.get(name)), `the tolerance of ${name}`);
    }
}

// Of Moodle's question/engine/bank.php.
const fractions = ['100', '90', '83.33333', '80', '75', '70', '66.66667', '60', '50', '40', '33.33333', '30', '25', '20',
    '16.66667', '14.28571', '12.5', '11.11111', '10', '5', '0'];
const moodleNumber = /^-?(([0-9]+[.,]?[0-9]*|[.,][0-9]+)([eE][-+]?[0-9]+)?)$/; // question/type/multianswer

// Of bounds that are written with twelve figures: their distance has fewer.
const roundedHalf = (distance) => Number((distance / 2).toPrecision(9));

const textIn = (element, tag) => first(first(element, tag), 'text').text;

test('Moodle XML: a numerical question for each value, with the drawing in it', async () => {
    const xml = exported([bridge, '--as', 'moodle']);
    await wellFormed(String(xml), 'moodle.xml');
    const quiz = readXml(xml);
    const [category, ...questions] = quiz.children;
    assert.equal(textIn(category, 'category'), '$course$/Gusset/Footbridge over a mill stream, span 16 m');
    agree(questions.map((question) => {
        assert.equal(question.attributes.type, 'numerical');
        const [right, ...others] = all(question, 'answer');
        assert.equal(right.attributes.fraction, '100');
        for (const answer of [right, ...others]) {
            assert.ok(fractions.includes(answer.attributes.fraction));
        }
        const value = first(right, 'text').text;
        assert.match(value, moodleNumber);
        assert.equal(first(others.at(-1), 'text').text, '*');
        assert.ok(all(others.at(-1), 'text').at(-1).text.startsWith('Not right.'));
        // Half the points for the size, unless the force is zero.
        const opposite = others.find((it) => it.attributes.fraction === '50');
        assert.equal(opposite !== undefined, Number(value) !== 0);
        if (opposite) {
            assert.equal(Number(first(opposite, 'text').text), -Number(value));
            assert.match(all(opposite, 'text').at(-1).text, /^The size is right/);
        }
        return [textIn(question, 'name'), Number(value), Number(first(right, 'tolerance').text)];
    }));
    const text = first(questions[0], 'questiontext');
    assert.match(first(text, 'text').text, /<img src="@@PLUGINFILE@@\/truss\.svg" alt="[^"]+" width="\d+" height="\d+"\/>/);
    const picture = first(text, 'file');
    assert.equal(picture.attributes.name, 'truss.svg');
    const svg = Buffer.from(picture.text, 'base64').toString();
    await wellFormed(svg, 'truss.svg');
});

test('a PNG that is given takes the place of the drawing, in its own proportions', () => {
    const png = path.join(root, 'site/icons/gusset-192.png');
    const quiz = readXml(exported([bridge, '--as', 'moodle', '--picture', png]));
    const text = first(quiz.children[1], 'questiontext');
    assert.ok(Buffer.from(first(text, 'file').text, 'base64').equals(readFileSync(png)));
    const [, width, height] = first(text, 'text').text.match(/truss\.png" .*width="(\d+)" height="(\d+)"/);
    assert.equal(width, height); // the icon is square
    const { status, stderr } = gusset(['export', bridge, '--as', 'moodle', '--picture', bridge]);
    assert.equal(status, 2);
    assert.match(stderr, /is no PNG/);
});

test('Moodle cloze: all values in one question each, sizes and senses apart', async () => {
    const xml = exported([bridge, '--as', 'cloze']);
    await wellFormed(String(xml), 'cloze.xml');
    const [, reactions, forces, ...more] = readXml(xml).children;
    assert.equal(more.length, 0);
    const { values, tolerance } = truth(bridge);
    const text = first(first(forces, 'questiontext'), 'text').text;
    const sizes = [...text.matchAll(/Size of the force in (\w+): \{2:NUMERICAL:=([^:]+):([^#]+)#[^{}]*~\*#[^{}]*\} kN/g)];
    const senses = [...text.matchAll(/zero in (\w+): \{1:MULTICHOICE:([^{}]*)\}/g)];
    assert.equal(sizes.length, 13);
    assert.equal(senses.length, 13);
    for (const [, member, size, within] of sizes) {
        const value = values.get(`Force in ${member}`);
        assert.match(size, moodleNumber);
        close(Number(size), Math.abs(value), member);
        close(Number(within), tolerance(value), member);
    }
    for (const [, member, options] of senses) {
        const value = values.get(`Force in ${member}`);
        const right = options.split('~').filter((it) => it.startsWith('='));
        assert.equal(right.length, 1);
        assert.equal(right[0][1], value > 0 ? 'T' : value < 0 ? 'C' : '0', member);
    }
    assert.equal([...first(first(reactions, 'questiontext'), 'text').text.matchAll(/NUMERICAL/g)].length, 3);
});

test('GIFT: its own parser reads the numbers, and what is said to each answer', () => {
    const [category, ...questions] = parseGift(String(exported([bridge, '--as', 'gift'])));
    assert.equal(category.type, 'Category');
    agree(questions.map((question) => {
        assert.equal(question.type, 'Numerical');
        const [right, opposite] = question.choices;
        assert.equal(right.weight, 100);
        if (right.text.number !== 0) {
            assert.equal(opposite.weight, 50);
            assert.equal(opposite.text.number, -right.text.number);
            assert.match(opposite.feedback.text, /^The size is right/);
        }
        return [question.title, right.text.number, right.text.range];
    }));
});

test('GIFT: what its marks are in a text is escaped', () => {
    const model = JSON.parse(readFileSync(path.join(root, bridge)));
    model.title = 'A {bridge}';
    model.exercise = { text: 'Use g = 10: ~5 % {more} #1 \\ a<b', ask: ['reactions'] };
    const questions = parseGift(String(exported([kept('escaped.json', model), '--as', 'gift'])));
    assert.equal(questions.length, 4);
    assert.match(questions[1].stem.text, /Use g = 10: ~5 % \{more\} #1 \\ a&lt;b/);
    assert.equal(questions[1].choices[0].text.number, 0); // A_x
});

test('Blackboard: one line a question, parted by tabs, and at most 500', () => {
    const lines = String(exported([bridge, '--as', 'blackboard'])).split('\r\n');
    assert.equal(lines.pop(), '');
    const { values } = truth(bridge);
    agree(lines.map((line) => {
        const [kind, text, value, tolerance, ...more] = line.split('\t');
        assert.equal(kind, 'NUM');
        assert.equal(more.length, 0);
        const [, reaction] = text.match(/the reaction (\w+):/) ?? [];
        const [, member] = text.match(/in member (\w+):/) ?? [];
        const name = member ? `Force in ${member}` : `Reaction ${reaction}`;
        assert.ok(values.has(name), text);
        return [name, Number(value), Number(tolerance)];
    }));
    const many = gusset(['export', ...Array(32).fill(bridge), '--as', 'blackboard']); // 32 · 16 = 512
    assert.equal(many.status, 2);
    assert.match(many.stderr, /512 questions, and one file may have 500/);
});

test('QTI 1.2: the package that Canvas reads', async () => {
    const files = unzipped(exported([bridge, '--as', 'qti12']));
    for (const [name, text] of Object.entries(files)) {
        await wellFormed(text, name);
    }
    const resources = all(readXml(files['imsmanifest.xml']), 'resource');
    assert.deepEqual(resources.map((it) => it.attributes.type), ['imsqti_xmlv1p2',
        'associatedcontent/imscc_xmlv1p1/learning-application-resource', 'webcontent']);
    for (const file of resources.flatMap((it) => all(it, 'file'))) {
        assert.ok(file.attributes.href in files, file.attributes.href);
    }
    const assessment = readXml(files['quiz1/quiz1.xml']);
    agree(all(assessment, 'item').map((item) => {
        assert.equal(first(item, 'fieldentry').text, 'numerical_question');
        assert.match(first(item, 'mattext').text, /<img src="\$IMS-CC-FILEBASE\$\/images\/quiz1\.svg"/);
        const value = Number(first(item, 'varequal').text);
        const below = value - Number(first(item, 'vargte').text);
        const above = Number(first(item, 'varlte').text) - value;
        assert.ok(Math.abs(above - below) < 1e-6);
        return [item.attributes.title, value, roundedHalf(above + below)];
    }));
});

for (const [form, prefix] of [['qti21', ''], ['qti3', 'qti-']]) {
    const named = (name) => (prefix ? prefix + name.replace(/[A-Z]/g, (it) => `-${it.toLowerCase()}`) : name);
    const attribute = (name) => (prefix ? name.replace(/[A-Z]/g, (it) => `-${it.toLowerCase()}`) : name);

    test(`${form}: each file is in the manifest, each question in the test, each tolerance two numbers`, async () => {
        const files = unzipped(exported([bridge, '--as', form]));
        for (const [name, text] of Object.entries(files)) {
            await wellFormed(text, name);
            assert.ok(name.endsWith('.svg') || !text.includes('<label')); // QTI allows no <label for>
            assert.ok(name.endsWith('.svg') || !text.includes('<svg')); // nor a drawing within a question
        }
        const listed = all(readXml(files['imsmanifest.xml']), 'file').map((it) => it.attributes.href);
        assert.deepEqual([...new Set(listed)].sort(),
            Object.keys(files).filter((it) => it !== 'imsmanifest.xml').sort());
        const asked = all(readXml(files['quiz1.xml']), named('assessmentItemRef')).map((it) => it.attributes.href);
        agree(asked.map((href) => {
            const item = readXml(files[href]);
            assert.equal(item.tag, named('assessmentItem'));
            assert.equal(first(item, named('responseDeclaration')).attributes[attribute('baseType')], 'float');
            const value = Number(first(first(item, named('correctResponse')), named('value')).text);
            const [right, opposite] = all(item, named('equal'));
            assert.equal(right.attributes[attribute('toleranceMode')], 'absolute');
            assert.equal(Number(first(right, named('baseValue')).text), value);
            assert.equal(opposite === undefined, value === 0);
            if (opposite) {
                assert.equal(Number(first(opposite, named('baseValue')).text), -value);
            }
            assert.ok(all(item, named('feedbackBlock')).length >= 2);
            const tolerances = right.attributes.tolerance.split(' ').map(Number);
            assert.equal(tolerances.length, 2);
            assert.equal(tolerances[0], tolerances[1]);
            const picture = first(item, 'img').attributes;
            assert.ok(path.posix.join('items', picture.src) in files && picture.alt !== '');
            return [item.attributes.title, value, tolerances[0]];
        }));
    });
}

test('CSV: a row for each question, a byte order mark, numbers as numbers', () => {
    const [head, ...rows] = String(exported([bridge, '--as', 'csv'])).split('\r\n');
    assert.equal(head, '\uFEFFexercise,name,question,kind,answer,tolerance,unit,options,points');
    assert.equal(rows.pop(), '');
    agree(rows.map((row) => {
        const cells = [...row.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)].map((it) => it[1]);
        assert.deepEqual([cells[3], cells[6], cells[8]], ['number', 'kN', '1']);
        return [cells[1], Number(cells[4]), Number(cells[5])];
    }));
});

test('every kind of question goes along, and only the steps stay behind', async () => {
    const model = JSON.parse(readFileSync(path.join(root, bridge)));
    model.exercise = { ask: [{ what: 'reactions', marks: 6 }, 'zero-members', 'determinacy',
        { what: 'influence', path: ['A', 'B', 'D', 'F', 'H'], member: ['C', 'E'], at: 'D' }, 'steps'],
    tolerance: { figures: 3 }, variant: 7 };
    const file = kept('kinds.json', model);
    const xml = exported([file, '--as', 'moodle']);
    await wellFormed(String(xml), 'kinds.xml');
    const [category, ...questions] = readXml(xml).children;
    assert.match(textIn(category, 'category'), /, variant 7$/);
    assert.equal(questions.length, 3 + 13 + 1 + 1);
    assert.equal(first(questions[0], 'defaultgrade').text, '2'); // 6 marks for 3 reactions
    const named = (name) => questions.find((it) => textIn(it, 'name') === name);
    const rightOf = (it) => first(all(it, 'answer').find((answer) => answer.attributes.fraction === '100'), 'text').text;
    assert.equal(rightOf(named('Degree of indeterminacy')), '0');
    // M_D / height by ΣM about D of the left half, for 1 at midspan: (1/2 · 8) / 3, compression.
    close(Number(rightOf(named('Influence line of CE'))), -4 / 3, 'the ordinate');
    const { values } = truth(bridge);
    for (const [name, value] of values) {
        if (name.startsWith('Force')) {
            const question = named(`Does ${name.slice(-2)} carry a force?`);
            assert.equal(rightOf(question), Math.abs(value) < 1e-9 ? 'it carries none' : 'it carries a force');
        }
    }
    for (const form of ['cloze', 'gift', 'qti12', 'qti21', 'qti3', 'blackboard', 'csv']) {
        assert.ok(exported([file, '--as', form]).length > 1000, form);
    }
    const onlySteps = gusset(['export', kept('steps.json', { ...model, exercise: { ask: ['steps'] } }), '--as', 'gift']);
    assert.equal(onlySteps.status, 2);
    assert.match(onlySteps.stderr, /only the steps are asked/);
});

test('several models are one file, each with its own answers', () => {
    const model = JSON.parse(readFileSync(path.join(root, bridge)));
    model.loads.forEach((load) => (load.fy *= 2));
    model.title = 'Twice';
    const twice = kept('twice.json', model);
    const quiz = readXml(exported([bridge, twice, '--as', 'moodle']));
    assert.equal(quiz.children.filter((it) => it.attributes.type === 'category').length, 2);
    assert.equal(quiz.children.length, 2 * 17);
    const answer = (i) => Number(first(first(quiz.children[i], 'answer'), 'text').text);
    for (let i = 1; i < 17; ++i) {
        close(answer(17 + i), 2 * answer(i), i);
    }
    const files = unzipped(exported([bridge, twice, '--as', 'qti3']));
    assert.ok('quiz2.xml' in files && 'items/quiz2-16.xml' in files && 'images/quiz2.svg' in files);
});

test('what can’t be exported is refused, with the file that it is in', () => {
    const noFormat = gusset(['export', bridge]);
    assert.equal(noFormat.status, 3);
    assert.match(noFormat.stderr, /--as: takes one of moodle, cloze, qti12, gift, blackboard, qti21, qti3, csv/);
    assert.equal(gusset(['export', bridge, '--as', 'word']).status, 3);
    const moving = gusset(['export', bridge, 'site/examples/missing_diagonal.json', '--as', 'gift']);
    assert.equal(moving.status, 1);
    assert.match(moving.stderr, /^site\/examples\/missing_diagonal\.json: /);
    assert.equal(gusset(['export', bridge, 'nowhere.json', '--as', 'gift']).status, 2);
});
