// Rules that every page is held to: axe-core's (WCAG 2.2 A and AA, and its best practice), and targets for thumbs.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const runOnly = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

// What axe finds, as pairs of a rule and its elements. Frames can be left out: they are pages of their own.
export async function faultsByAxe(page, { withFrames = true } = {}) {
    if (!await page.evaluate(() => 'axe' in window)) {
        await page.evaluate(axe);
    }
    // Of rules that are kept one element each is named, which saves most of axe's time on a long page.
    const { violations, passes } = await page.evaluate(([tags, exclude]) => window.axe.run({ include: [['html']], exclude },
        { runOnly: tags, resultTypes: ['violations'] }), [runOnly, withFrames ? [] : [['iframe']]]);
    assert.ok(passes.length > 10, 'the rules ran');
    return violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)]);
}

const fields = 'button, select, input[type=text], input[type=range], summary, header a, .button, .tick, .choice label, ' +
    '.members label';

// Targets that a thumb would miss, and what is wider than the page.
export const tooSmall = (page) => page.evaluate((targets) => [
    ...[...document.querySelectorAll(targets)]
        .filter((one) => one.offsetParent).map((one) => [one.outerHTML.slice(0, 70), one.getBoundingClientRect()])
        .filter(([, box]) => box.height < 44 || box.width < 43.9).map(([html]) => html),
    ...document.documentElement.scrollWidth <= innerWidth ? [] : ['the page']], fields);
