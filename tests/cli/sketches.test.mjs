// Drawings on the command line: in the HTML of a working, and as SVG.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { answered } from './support.mjs';

const footbridge = 'site/examples/footbridge.json';

// Every element is closed in order, and no quote or angle bracket stands in a wrong place.
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
    assert.equal(html.match(/<svg /g).length, html.match(/<figure>/g).length);
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
