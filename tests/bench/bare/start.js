import createBare from './bare.js';

const canvas = document.getElementById('board');
const bare = await createBare();
performance.mark('runtime-ready');
bare._bareStart();

function frame() {
    bare._bareFrame(canvas.width, canvas.height);
}

function point(event) {
    bare._barePointer(event.offsetX, event.offsetY, event.buttons === 1);
    requestAnimationFrame(frame);
}

for (const name of ['pointermove', 'pointerdown', 'pointerup']) {
    canvas.addEventListener(name, point);
}

requestAnimationFrame(() => {
    frame();
    performance.mark('first-frame');
});
