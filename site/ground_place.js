// Where the photograph lies: from two marks on it, the length between them and where the first one is to be.
// A point of the photograph is in its own pixels, y down; a place on the board is in metres, y up.

export const ways = { level: 'level', upright: 'upright', asItLies: 'as it lies' }; // of the line between the marks

const least = 4; // px: closer marks say nothing about the scale

export function areApart(first, second) {
    return Math.hypot(second.x - first.x, second.y - first.y) >= least;
}

// The direction nearest to that of the line, so that nothing is turned upside down.
function wantedDirection(along, way) {
    if (way === 'level') {
        return { x: along.x < 0 ? -1 : 1, y: 0 };
    }
    return way === 'upright' ? { x: 0, y: along.y < 0 ? -1 : 1 } : along;
}

// Precondition: areApart. `at` is the place of the first mark.
export function placeOf({ first, second, metres, way, at }) {
    const pixels = Math.hypot(second.x - first.x, second.y - first.y);
    const along = { x: (second.x - first.x) / pixels, y: (first.y - second.y) / pixels };
    const wanted = wantedDirection(along, way);
    return {
        first,
        at,
        perPixel: metres / pixels,
        cos: along.x * wanted.x + along.y * wanted.y,
        sin: along.x * wanted.y - along.y * wanted.x,
    };
}

// A point of the photograph on the board.
export function onBoard({ first, at, perPixel, cos, sin }, point) {
    const dx = perPixel * (point.x - first.x);
    const dy = perPixel * (first.y - point.y);
    return { x: at.x + cos * dx - sin * dy, y: at.y + sin * dx + cos * dy };
}

// The box around a photograph of that size: [low x, low y, high x, high y].
export function boxOf(place, { width, height }) {
    const corners = [[0, 0], [width, 0], [0, height], [width, height]].map(([x, y]) => onBoard(place, { x, y }));
    const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
    return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

// From a fragment of the canvas to the photograph: u = right[0]·x + up[0]·y + corner[0], and v likewise, both 0 to 1
// from its top left; x and y are device pixels from the canvas's bottom left. `view` as GroundPane
// (web/app/page/ground).
export function textureMap({ first, at, perPixel, cos, sin }, { width, height }, view) {
    const pixels = 1 / (perPixel * view.metre); // of the photograph in one of the canvas
    const dx = (-view.x / view.metre - at.x) / perPixel; // of the canvas's corner, in pixels of the photograph
    const dy = ((view.y - view.height) / view.metre - at.y) / perPixel;
    return {
        right: [cos * pixels / width, sin * pixels / height],
        up: [sin * pixels / width, -cos * pixels / height],
        corner: [(first.x + cos * dx + sin * dy) / width, (first.y + sin * dx - cos * dy) / height],
    };
}
