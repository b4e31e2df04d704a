// The lesson recorded in the page: the stage with pen and ring, and the microphone or silence. Nothing leaves the
// device. Each step is a take of its own, so that the lesson can be taken again from any of them.
import { drawStrokes } from './pen.js';
import { createTakes } from './takes.js';
import { save } from './save.js';
import { movedTo, partsOf } from './webm.js';

const size = { width: 1280, height: 720 };
const types = ['video/webm;codecs=vp8,opus', 'video/webm', 'video/mp4'];

const page = `
<h2>Recording</h2>
<p class="row"><label for="sound">Sound</label> <select id="sound"><option value="microphone">microphone</option>
<option value="silence">none</option></select></p>
<p class="row"><button type="button" id="record">Record</button>
<button type="button" id="hold" disabled>Pause</button>
<button type="button" id="retake" disabled>Again from this step</button>
<button type="button" id="finish" disabled>Finish</button></p>
<p id="recording-says" role="status"></p>
<p class="row" id="recorded" hidden><button type="button" id="save-video">Save the film</button>
<button type="button" id="save-captions">Captions</button> <button type="button" id="save-chapters">Chapters</button>
<button type="button" id="save-transcript">Transcript</button></p>`;

// The stage as a picture: the SVG that is shown, then the pen and the ring.
function createFilm(lesson) {
    const canvas = Object.assign(document.createElement('canvas'), size);
    const context = canvas.getContext('2d');
    let picture = null;
    let shown = '';
    const at = (id) => document.getElementById(id);
    function paint() {
        context.fillStyle = getComputedStyle(at('stage')).backgroundColor;
        context.fillRect(0, 0, size.width, size.height);
        const box = at('picture').getBoundingClientRect();
        const by = Math.min(size.width / box.width, size.height / box.height);
        const [wide, high] = [by * box.width, by * box.height];
        const [left, top] = [(size.width - wide) / 2, (size.height - high) / 2];
        if (picture) {
            context.drawImage(picture, left, top, wide, high);
        }
        context.save();
        context.translate(left, top);
        drawStrokes(context, lesson.pen.strokes(), { width: wide, height: high });
        context.restore();
        const ring = at('halo');
        if (!ring.hidden) {
            context.strokeStyle = '#0e5a61';
            context.lineWidth = 4;
            context.beginPath();
            context.arc(left + by * parseFloat(ring.style.left || 0), top + by * parseFloat(ring.style.top || 0), 28 * by, 0, 7);
            context.stroke();
        }
    }
    async function follow() {
        const svg = at('picture').innerHTML;
        if (svg !== shown) {
            shown = svg;
            const next = new Image();
            next.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
            await next.decode();
            if (svg === shown) {
                picture = next;
            }
        }
        paint();
    }
    return { canvas, follow, paint };
}

export function createRecording({ place, lectern, lesson, tell }) {
    place.innerHTML = page;
    const at = (id) => document.getElementById(id);
    const say = (words) => { at('recording-says').textContent = words; };
    if (!window.MediaRecorder) {
        at('record').disabled = true;
        say('This browser does not record.');
        return;
    }
    const type = types.find((each) => MediaRecorder.isTypeSupported(each));
    let film = null;
    let takes = null;
    let stream = null;
    let recorder = null;
    let takeOf = []; // for each take: its place, key of its step, seconds, and what was shown in it
    let current = null;
    let keeping = Promise.resolve();
    let painting = 0;

    const isOn = () => recorder !== null && recorder.state !== 'inactive';
    const secondsIn = () => (performance.now() - current.began) / 1000;
    const secondsBefore = () => takeOf.reduce((sum, { seconds }) => sum + seconds, 0);
    const keyOf = ({ place: { item }, subject }) => `${item} ${subject}`;

    function buttons() {
        at('record').disabled = isOn();
        at('hold').disabled = !isOn();
        at('hold').textContent = recorder?.state === 'paused' ? 'Go on' : 'Pause';
        at('retake').disabled = takeOf.length === 0 && !current;
        at('finish').disabled = !isOn();
    }
    function beginTake() {
        const state = lesson.state();
        const take = takeOf.length;
        current = { key: keyOf(state), began: performance.now(), shown: [{ ...state.place, at: 0 }], parts: 0 };
        const mine = current;
        recorder = new MediaRecorder(stream, { mimeType: type, videoBitsPerSecond: 2_500_000 });
        recorder.addEventListener('dataavailable', ({ data }) => {
            const part = mine.parts;
            mine.parts += 1;
            if (current) {
                say(`Recording: ${Math.floor(secondsBefore() + secondsIn())} s.`);
            }
            keeping = keeping.then(() => takes.keep(take, part, data)).catch(() => {
                stop();
                say('There is no room left on this device: the recording ends here. What was recorded before can be saved.');
            });
        });
        recorder.start(1000);
        buttons();
    }
    async function endTake() {
        if (!current) {
            return;
        }
        const ending = current;
        ending.seconds = secondsIn();
        current = null;
        await new Promise((resolve) => {
            recorder.addEventListener('stop', resolve, { once: true });
            recorder.stop();
        });
        await keeping;
        takeOf.push(ending);
    }
    // Takes follow one another: a new step waits until the take before it is kept.
    let order = Promise.resolve();
    const inOrder = (act) => {
        order = order.then(act);
        return order;
    };

    async function begin() {
        const wantsSound = at('sound').value === 'microphone';
        let sound = null;
        if (wantsSound) {
            try {
                sound = await navigator.mediaDevices.getUserMedia({ audio: true });
            } catch {
                say('The microphone is not allowed, or there is none. Choose no sound, or allow it for this page.');
                return;
            }
        }
        takes ??= await createTakes();
        await takes.clear();
        takeOf = [];
        film = createFilm(lesson);
        await film.follow();
        stream = film.canvas.captureStream(25);
        sound?.getAudioTracks().forEach((track) => stream.addTrack(track));
        painting = setInterval(film.paint, 40); // a canvas that is not painted gives no frames
        at('recorded').hidden = true;
        beginTake();
        say('Recording.');
    }
    function stop() {
        clearInterval(painting);
        return inOrder(async () => {
            await endTake();
            stream?.getTracks().forEach((track) => track.stop());
            recorder = null;
            at('recorded').hidden = takeOf.length === 0;
            buttons();
        });
    }
    lesson.watch({
        drawn() { film?.follow(); },
        shown(state) {
            if (!isOn()) {
                return;
            }
            if (current && keyOf(state) === current.key) {
                current.shown.push({ ...state.place, at: secondsIn() });
            } else if (recorder.state === 'recording') {
                inOrder(async () => {
                    await endTake();
                    beginTake();
                });
            }
        },
    });
    at('record').addEventListener('click', () => inOrder(begin));
    at('hold').addEventListener('click', () => {
        if (recorder.state === 'paused') {
            current.began += performance.now() - current.held;
            recorder.resume();
            say('Recording.');
        } else {
            current.held = performance.now();
            recorder.pause();
            say('Paused.');
        }
        buttons();
    });
    at('retake').addEventListener('click', () => inOrder(async () => {
        const key = keyOf(lesson.state());
        await endTake();
        const first = takeOf.findIndex((take) => take.key === key);
        if (first >= 0) {
            await takes.dropFrom(first);
            takeOf = takeOf.slice(0, first);
        }
        say('Recording again from this step.');
        beginTake();
    }));
    at('finish').addEventListener('click', async () => {
        await stop();
        say(`Recorded: ${Math.round(secondsBefore())} s.`);
    });
    document.addEventListener('visibilitychange', () => {
        if (document.hidden && recorder?.state === 'recording') {
            at('hold').click();
            say('Paused, since the page was hidden: a hidden page is not painted. Press “Go on”.');
        }
    });

    async function whole() {
        const parts = [];
        let start = 0;
        for (let take = 0; take < takeOf.length; take += 1) {
            const blob = await takes.read(take);
            if (!type.startsWith('video/webm')) {
                return blob; // of one take; see the manual
            }
            const { head, clusters } = partsOf(new Uint8Array(await blob.arrayBuffer()));
            if (take === 0) {
                parts.push(head);
            }
            parts.push(new Blob(movedTo(start, clusters))); // the browser may put it on the disk
            start += 1000 * takeOf[take].seconds;
        }
        return new Blob(parts, { type: type.split(';')[0] });
    }
    function shown() {
        let start = 0;
        return takeOf.flatMap((take) => {
            const from = start;
            start += take.seconds;
            return take.shown.map(({ item, step, stroke, at: since }, i) => ({
                item, step, stroke: stroke ?? 0, from: from + since,
                to: i + 1 < take.shown.length ? from + take.shown[i + 1].at : start,
            }));
        });
    }
    const captions = () => lectern({ do: 'captions', shown: shown() });
    at('save-video').addEventListener('click', async () =>
        tell(`Saved as ${save(await whole(), `lesson.${type.includes('mp4') ? 'mp4' : 'webm'}`)}.`));
    at('save-captions').addEventListener('click', () => tell(`Saved as ${save(captions().captions, 'captions.vtt', 'text/vtt')}.`));
    at('save-chapters').addEventListener('click', () => tell(`Saved as ${save(captions().chapters, 'chapters.vtt', 'text/vtt')}.`));
    at('save-transcript').addEventListener('click', () => tell(`Saved as ${save(captions().transcript, 'transcript.txt', 'text/plain')}.`));
    buttons();
}
