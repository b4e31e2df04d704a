// Drawings on the command line: in the HTML of a working, and as SVG.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { answered, gusset } from './support.mjs';

const footbridge = 'site/examples/footbridge.json';

// Elements are closed in order, and quotes and angle brackets occur only where XML allows them.
function assertWellFormed(xml) {
    const open = [];
    const rest = xml.replace(/<(\/?)([A-Za-z0-9]+)((?:\s[\w-]+="[^"<]*")*)\s*(\/?)>/g, (_, end, name, __, single) => {
        if (end) {
            assert.equal(open.pop(), name);
        } else if (!single) {
            open.push(name);
        }
        return '';
    });
    assert.deepEqual(open, []);
    assert.doesNotMatch(rest, /[<>"]/);
    assert.doesNotMatch(rest, /&(?!(?:amp|lt|gt|quot|#39);)/);
}

test('a working as HTML shows the free body where it is first looked at', () => {
    const html = answered(['working', footbridge, '--html']);
    const section = (title) => html.split('<section>').find((it) => it.includes(`<h3>${title}</h3>`));
    assert.match(section('The whole truss'), /<title>Free body of the whole truss: A_x, drawn to the right,/);
    assert.match(section('Joint A'), /<title>Free body of joint A: F_AB, drawn to the right,/);
    assert.equal(html.match(/<svg /g).length, html.match(/<figure[ >]/g).length);
    assertWellFormed(html.match(/<svg [^]*?<\/svg>/g).join(''));
});

test('labels of a stranger do no harm in a drawing', () => {
    const model = {
        gusset: 1,
        joints: [{ id: '<b>"&\'', x: 0, y: 0 }, { id: '</svg>', x: 4, y: 0 }, { id: 'C', x: 2, y: 2 }],
        members: [{ a: '<b>"&\'', b: 'C' }, { a: 'C', b: '</svg>' }, { a: '<b>"&\'', b: '</svg>' }],
        supports: [{ joint: '<b>"&\'', kind: 'pin' }, { joint: '</svg>', kind: 'roller', reaction: 90 }],
        loads: [{ joint: 'C', fy: -3 }],
    };
    const html = answered(['working', '-', '--html'], JSON.stringify(model));
    assertWellFormed(html.match(/<svg [^]*?\n<\/svg>/g).join(''));
    const path = ['influence', '-', '--path', '<b>"&\',</svg>', '--of', 'member:<b>"&\'-C', '--svg'];
    assertWellFormed(answered(path, JSON.stringify(model)));
});

test('working --polygon draws the truss with its spaces and the polygon to a stated scale', () => {
    const svg = answered(['working', footbridge, '--polygon', '--svg']);
    assertWellFormed(svg);
    assert.equal(svg.match(/<svg /g).length, 1);
    // The load line is 72 kN long: 7.2 cm at 10 kN per cm; at 5 kN per cm its 14.4 cm would not fit in 400 px.
    assert.match(svg, /<title>[^<]*spaces lettered: [^<]*scale 1 cm = 10\skN\.<\/title>/);
    const html = answered(['working', footbridge, '--polygon', '--html']);
    const working = html.match(/<h2>Working<\/h2>[^]*(?=<h2>Results)/)[0];
    assert.equal(working.match(/<figure[ >]/g).length, 2);
    assert.match(working, /<table>/);
    assertWellFormed(working);
    assert.match(answered(['working', footbridge, '--polygon']), /p–q +reaction at A +36\.00/);
});

test('where there is no polygon, the reason is said and nothing is drawn', () => {
    const model = {
        gusset: 1,
        joints: [{ id: 'A', x: 0, y: 0 }, { id: 'B', x: 4, y: 0 }, { id: 'C', x: 4, y: 3 }, { id: 'D', x: 0, y: 3 }],
        members: [{ a: 'A', b: 'B' }, { a: 'B', b: 'C' }, { a: 'A', b: 'C' }, { a: 'B', b: 'D' }],
        supports: [{ joint: 'A', kind: 'pin' }, { joint: 'D', kind: 'pin' }],
        loads: [{ joint: 'C', fy: -5 }],
    };
    // There is no polygon, and an SVG has no place for the reason: exit status 1 says so.
    const { status, stdout, stderr } = gusset(['working', '-', '--polygon', '--svg'], JSON.stringify(model));
    assert.equal(status, 1);
    assert.equal(stdout, '');
    assert.match(stderr, /AC and BD/);
    assert.match(answered(['working', '-', '--polygon'], JSON.stringify(model)), /AC and BD/);
});

test('the steps of a working come as HTML, not as one SVG', () => {
    const { status, stderr } = gusset(['working', footbridge, '--svg']);
    assert.equal(status, 3);
    assert.match(stderr, /--polygon/);
});
