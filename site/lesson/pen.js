// The pen over the stage. Strokes belong to the step on which they were drawn, in shares of the stage, so that they
// stay with it when its size changes.

const inks = { pen: '#b3261e', marker: 'rgb(255 214 0 / 45%)', arrow: '#b3261e' };
const widths = { pen: 0.005, marker: 0.03, arrow: 0.006 }; // of the stage's height
const reach = 0.03; // of the eraser, likewise

function trace(context, points, { width, height }) {
    context.beginPath();
    points.forEach(([x, y], i) => (i === 0 ? context.moveTo(x * width, y * height) : context.lineTo(x * width, y * height)));
    context.stroke();
}

function traceHead(context, points, { width, height }) {
    const [endX, endY] = points.at(-1);
    const from = points.findLast(([x, y]) => Math.hypot((x - endX) * width, (y - endY) * height) > height / 50) ?? points[0];
    const angle = Math.atan2((endY - from[1]) * height, (endX - from[0]) * width);
    const size = height / 30;
    context.beginPath();
    for (const turn of [-0.4, 0.4]) {
        context.moveTo(endX * width, endY * height);
        context.lineTo(endX * width - size * Math.cos(angle + turn), endY * height - size * Math.sin(angle + turn));
    }
    context.stroke();
}

export function drawStrokes(context, strokes, size) {
    context.lineCap = 'round';
    context.lineJoin = 'round';
    for (const { tool, points } of strokes) {
        context.strokeStyle = inks[tool];
        context.lineWidth = widths[tool] * size.height;
        trace(context, points, size);
        if (tool === 'arrow') {
            traceHead(context, points, size);
        }
    }
}

export function createPen(canvas, stage) {
    const ofSteps = new Map(); // by the key of a step
    let key = '';
    let tool = null;
    let drawing = null;

    const strokes = () => ofSteps.get(key) ?? [];
    function redraw() {
        const { clientWidth: width, clientHeight: height } = canvas;
        const dense = window.devicePixelRatio || 1;
        const size = [Math.round(width * dense), Math.round(height * dense)];
        if (canvas.width !== size[0] || canvas.height !== size[1]) {
            [canvas.width, canvas.height] = size;
        }
        // Kept out of the graphics card: there Chromium 156 sometimes shows an earlier picture again when a canvas is
        // cleared and nothing is drawn on it, so that a stroke stayed on a step on which it was not drawn.
        const context = canvas.getContext('2d', { willReadFrequently: true });
        context.setTransform(dense, 0, 0, dense, 0, 0);
        context.clearRect(0, 0, width, height);
        drawStrokes(context, strokes(), { width, height });
    }
    function shareOf({ clientX, clientY }) {
        const box = canvas.getBoundingClientRect();
        return [(clientX - box.left) / box.width, (clientY - box.top) / box.height];
    }
    function erase([x, y]) {
        const { clientWidth: width, clientHeight: height } = canvas;
        const isNear = (point) => Math.hypot((point[0] - x) * width, (point[1] - y) * height) < reach * height;
        ofSteps.set(key, strokes().filter(({ points }) => !points.some(isNear)));
    }
    canvas.addEventListener('pointerdown', (event) => {
        if (!tool || !event.isPrimary) {
            return;
        }
        canvas.setPointerCapture(event.pointerId);
        const at = shareOf(event);
        if (tool === 'eraser') {
            drawing = { tool };
            erase(at);
        } else {
            drawing = { tool, points: [at] };
            ofSteps.set(key, [...strokes(), drawing]);
        }
        redraw();
    });
    canvas.addEventListener('pointermove', (event) => {
        if (!drawing || !event.isPrimary) {
            return;
        }
        const events = event.getCoalescedEvents?.() ?? [];
        (events.length > 0 ? events : [event]).forEach((each) =>
            (drawing.points ? drawing.points.push(shareOf(each)) : erase(shareOf(each))));
        redraw();
    });
    for (const end of ['pointerup', 'pointercancel']) {
        canvas.addEventListener(end, () => { drawing = null; });
    }
    return {
        show(nextKey) {
            key = nextKey;
            redraw();
        },
        redraw,
        strokes,
        tool: () => tool,
        choose(next) {
            tool = tool === next ? null : next;
            if (tool) {
                stage.dataset.tool = tool;
            } else {
                delete stage.dataset.tool;
            }
            return tool;
        },
        undo() {
            const had = strokes().length > 0;
            ofSteps.set(key, strokes().slice(0, -1));
            redraw();
            return had;
        },
    };
}
