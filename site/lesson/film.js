// The stage as a film: the picture that is shown, what stands before it, the pen and the ring. It is always on paper,
// whatever the theme of the page, since it is watched elsewhere.

import { drawStrokes } from './pen.js';

// 1280 × 720 (upright on an upright phone) is the smallest size that counts as high definition: the smallest letters,
// a sixtieth of the height, have 12 px, and a browser without an encoder in hardware keeps up.
const long = 1280;
const short = 720;
const paper = '#fcf9f2';
const ink = '#2a2927';
const accent = '#0e5a61';

const at = (id) => document.getElementById(id);

function linesOf(context, text, width) {
    const lines = [''];
    for (const word of text.split(/\s+/)) {
        const longer = `${lines.at(-1)} ${word}`.trim();
        if (lines.at(-1) !== '' && context.measureText(longer).width > width) {
            lines.push(word);
        } else {
            lines[lines.length - 1] = longer;
        }
    }
    return lines;
}

// A remark or a question between two steps, as on the stage: below, over the picture.
function paintPause(context, { width, height }) {
    if (at('pause').hidden) {
        return;
    }
    const texts = [at('pause-says'), at('pause-ask').hidden ? null : at('pause-question')]
        .map((each) => each?.textContent ?? '').filter((text) => text !== '');
    const size = height / 28;
    context.font = `${size}px sans-serif`;
    const lines = texts.flatMap((text) => linesOf(context, text, 0.9 * width - 2 * size));
    const high = (1.4 * lines.length + 1) * size;
    const top = 0.94 * height - high;
    context.fillStyle = paper;
    context.strokeStyle = accent;
    context.lineWidth = 2;
    context.fillRect(0.05 * width, top, 0.9 * width, high);
    context.strokeRect(0.05 * width, top, 0.9 * width, high);
    context.fillStyle = ink;
    lines.forEach((line, i) => context.fillText(line, 0.05 * width + size, top + (1.4 * i + 1.5) * size));
}

function paintRing(context, by) {
    const ring = at('halo');
    if (ring.hidden) {
        return;
    }
    context.strokeStyle = accent;
    context.fillStyle = 'rgb(255 220 80 / 30%)';
    context.lineWidth = 4 * by;
    context.beginPath();
    context.arc(by * parseFloat(ring.style.left || 0), by * parseFloat(ring.style.top || 0), 26 * by, 0, 7);
    context.fill();
    context.stroke();
}

// `strokes` gives those of the pen; `changed` is called when something else is to be seen.
export function createFilm(strokes, changed) {
    const isUpright = at('stage').clientHeight > at('stage').clientWidth;
    const [width, height] = isUpright ? [short, long] : [long, short];
    const canvas = Object.assign(document.createElement('canvas'), { width, height });
    const context = canvas.getContext('2d', { alpha: false }); // alpha would be encoded as a second picture
    // The picture by itself: drawn from its SVG once, and copied for each picture of the film.
    const picture = Object.assign(document.createElement('canvas'), { width, height });
    let loading = null; // a promise
    let hasLoaded = false; // since the film's last picture
    let isOld = false;

    // The stage in the film: { left, top, width, height, by }, px.
    function placeOfStage() {
        const { clientWidth, clientHeight } = at('stage');
        const by = Math.min(width / clientWidth, height / clientHeight);
        const size = { width: by * clientWidth, height: by * clientHeight };
        return { left: (width - size.width) / 2, top: (height - size.height) / 2, ...size, by };
    }
    async function loadPicture() {
        const next = new Image();
        next.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(at('picture').innerHTML)}`;
        try {
            await next.decode();
        } catch {
            return; // the one before stays until the next change
        }
        const { left, top, ...size } = placeOfStage();
        const sheet = picture.getContext('2d', { alpha: false });
        sheet.fillStyle = paper;
        sheet.fillRect(0, 0, width, height);
        sheet.drawImage(next, left, top, size.width, size.height);
        hasLoaded = true;
        changed();
    }
    // Resolves when the picture is the one on the stage, also if that changes meanwhile.
    function load() {
        isOld = true;
        loading ??= (async () => {
            while (isOld) {
                isOld = false;
                await loadPicture();
            }
            loading = null;
        })();
        return loading;
    }
    function paint() {
        hasLoaded = false;
        const { left, top, by, ...size } = placeOfStage();
        context.drawImage(picture, 0, 0);
        context.save();
        context.translate(left, top);
        drawStrokes(context, strokes(), size);
        paintPause(context, size);
        paintRing(context, by);
        context.restore();
    }
    const pictureWatcher = new MutationObserver(load);
    pictureWatcher.observe(at('picture'), { childList: true, subtree: true, attributes: true });
    const otherWatcher = new MutationObserver(changed);
    for (const each of [at('pause'), at('halo')]) {
        otherWatcher.observe(each, { childList: true, subtree: true, attributes: true, characterData: true });
    }
    const events = ['pointermove', 'pointerup', 'click', 'keydown']; // after which the pen has drawn, or undone
    events.forEach((name) => addEventListener(name, changed));
    return {
        canvas,
        load,
        paint,
        isBehind: () => loading !== null && !hasLoaded, // the stage shows another picture already
        end() {
            pictureWatcher.disconnect();
            otherWatcher.disconnect();
            events.forEach((name) => removeEventListener(name, changed));
        },
    };
}
