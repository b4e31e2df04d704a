// Where a photograph lies under the board, tested without a browser.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { areApart, boxOf, onBoard, placeOf, textureMap } from '../../site/ground_place.js';

function isNear(found, expected, says = '') {
    expected.forEach((value, i) => assert.ok(Math.abs(found[i] - value) < 1e-9, `${says}: ${found} for ${expected}`));
}
const at = (place, x, y) => {
    const found = onBoard(place, { x, y });
    return [found.x, found.y];
};
const origin = { x: 0, y: 0 };

test('two marks and their distance give the scale, and the first one lies where it is wanted', () => {
    // 200 px are 6 m: 0.03 m a pixel
    const place = placeOf({ first: { x: 100, y: 300 }, second: { x: 300, y: 300 }, metres: 6, way: 'as it lies', at: { x: 2, y: 1 } });
    isNear(at(place, 100, 300), [2, 1]);
    isNear(at(place, 300, 300), [8, 1]);
    isNear(at(place, 100, 200), [2, 4], 'what is higher on the photograph is higher on the board');
});

test('a line that is level or upright turns the photograph by less than a right angle', () => {
    const first = { x: 0, y: 0 };
    for (const [dx, dy, way, wanted] of [
        [300, -400, 'level', [5, 0]], [-300, -400, 'level', [-5, 0]], [300, 400, 'level', [5, 0]],
        [300, -400, 'upright', [0, 5]], [300, 400, 'upright', [0, -5]], [0, -500, 'upright', [0, 5]],
        [300, -400, 'as it lies', [3, 4]],
    ]) {
        const place = placeOf({ first, second: { x: dx, y: dy }, metres: 5, way, at: origin });
        isNear(at(place, dx, dy), wanted, `${dx}, ${dy} ${way}`);
        assert.ok(place.cos > 0);
        isNear([place.cos ** 2 + place.sin ** 2], [1], 'it is turned, not stretched');
    }
});

test('the box holds the turned photograph', () => {
    // The line runs at 45°; made level, the square stands on a corner: its diagonal is 100·√2 px of 0.01 m.
    const second = { x: 100, y: 0 };
    const place = placeOf({ first: { x: 0, y: 100 }, second, metres: Math.SQRT2, way: 'level', at: origin });
    isNear(boxOf(place, { width: 100, height: 100 }), [0, -Math.SQRT1_2, Math.SQRT2, Math.SQRT1_2]);
});

test('every place of the canvas shows the point of the photograph that lies there', () => {
    const size = { width: 640, height: 480 };
    const view = { x: -1250.5, y: 733, metre: 87.5, height: 900 };
    for (const way of ['level', 'upright', 'as it lies']) {
        const place = placeOf({ first: { x: 50, y: 400 }, second: { x: 500, y: 260 }, metres: 7.3, way, at: { x: 3, y: -2 } });
        const { right, up, corner } = textureMap(place, size, view);
        for (const [u, v] of [[0, 0], [1, 0], [0, 1], [0.3, 0.8]]) {
            const board = onBoard(place, { x: u * size.width, y: v * size.height });
            const x = view.x + view.metre * board.x;
            const y = view.height - (view.y - view.metre * board.y); // from the bottom
            isNear([0, 1].map((i) => right[i] * x + up[i] * y + corner[i]), [u, v], way);
        }
    }
});

test('marks on one place give no scale', () => {
    assert.equal(areApart({ x: 10, y: 10 }, { x: 11, y: 12 }), false);
    assert.equal(areApart({ x: 10, y: 10 }, { x: 10, y: 20 }), true);
});
