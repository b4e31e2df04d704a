// The lesson recorded in the page: the stage with pen and ring, and the microphone or silence. Nothing leaves the
// device.
import { createChunks } from './chunks.js';
import { drawStrokes } from './pen.js';
import { save } from './save.js';

const size = { width: 1280, height: 720 };
const types = ['video/webm;codecs=vp8,opus', 'video/webm', 'video/mp4'];

const page = `
<h2>Recording</h2>
<p class="row"><label for="sound">Sound</label> <select id="sound"><option value="microphone">microphone</option>
<option value="silence">none</option></select></p>
<p class="row"><button type="button" id="record">Record</button>
<button type="button" id="hold" disabled>Pause</button>
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
    let chunks = null;
    let recorder = null;
    let clock = { began: 0, held: null }; // ms; while held, time stands still
    let shown = []; // places, with the time at which each was shown
    let keeping = Promise.resolve();
    let painting = 0;

    const seconds = () => ((clock.held ?? performance.now()) - clock.began) / 1000;
    const isOn = () => recorder !== null && recorder.state !== 'inactive';

    function buttons() {
        at('record').disabled = isOn();
        at('hold').disabled = !isOn();
        at('hold').textContent = recorder?.state === 'paused' ? 'Go on' : 'Pause';
        at('finish').disabled = !isOn();
    }
    async function sound() {
        if (at('sound').value !== 'microphone') {
            return [];
        }
        return (await navigator.mediaDevices.getUserMedia({ audio: true })).getAudioTracks();
    }
    // A canvas gives a frame only when it is painted for the screen.
    function paintOn() {
        film.paint();
        painting = requestAnimationFrame(paintOn);
    }
    async function begin() {
        let tracks = [];
        try {
            tracks = await sound();
        } catch {
            say('The microphone is not allowed, or there is none. Choose no sound, or allow it for this page.');
            return;
        }
        chunks ??= await createChunks();
        await chunks.clear();
        film = createFilm(lesson);
        await film.follow();
        const stream = film.canvas.captureStream(25);
        tracks.forEach((track) => stream.addTrack(track));
        paintOn();
        recorder = new MediaRecorder(stream, { mimeType: type, videoBitsPerSecond: 2_500_000 });
        let parts = 0;
        recorder.addEventListener('dataavailable', ({ data }) => {
            const part = parts;
            parts += 1;
            if (recorder.state === 'recording') {
                say(`Recording: ${Math.floor(seconds())} s.`);
            }
            keeping = keeping.then(() => chunks.keep(part, data)).catch(() => finish(
                'There is no room left on this device: the recording ends here. What was recorded can be saved.'));
        });
        clock = { began: performance.now(), held: null };
        shown = [{ ...lesson.state().place, at: 0 }];
        at('recorded').hidden = true;
        recorder.start(1000);
        buttons();
        say('Recording.');
    }
    function hold(says) {
        clock.held = performance.now();
        recorder.pause();
        buttons();
        say(says);
    }
    function goOn() {
        clock.began += performance.now() - clock.held;
        clock.held = null;
        recorder.resume();
        buttons();
        say('Recording.');
    }
    async function finish(says) {
        if (!isOn()) {
            return;
        }
        clock.held ??= performance.now();
        cancelAnimationFrame(painting);
        await new Promise((resolve) => {
            recorder.addEventListener('stop', resolve, { once: true });
            recorder.stop();
        });
        recorder.stream.getTracks().forEach((track) => track.stop());
        await keeping;
        at('recorded').hidden = false;
        buttons();
        say(says ?? `Recorded: ${Math.round(seconds())} s.`);
    }
    lesson.watch({
        drawn() { film?.follow(); },
        shown({ place: now }) {
            if (isOn()) {
                shown.push({ ...now, at: seconds() });
            }
        },
    });
    at('record').addEventListener('click', begin);
    at('hold').addEventListener('click', () => (recorder.state === 'paused' ? goOn() : hold('Paused.')));
    at('finish').addEventListener('click', () => finish());
    document.addEventListener('visibilitychange', () => {
        if (document.hidden && recorder?.state === 'recording') {
            hold('Paused, since the page was hidden: a hidden page is not painted. Press “Go on”.');
        }
    });

    const timed = () => shown.map(({ item, step, stroke, at: from }, i) => (
        { item, step, stroke: stroke ?? 0, from, to: shown[i + 1]?.at ?? seconds() }));
    const captions = () => lectern({ do: 'captions', shown: timed() });
    at('save-video').addEventListener('click', async () =>
        tell(`Saved as ${save(await chunks.film(type.split(';')[0]), `lesson.${type.includes('mp4') ? 'mp4' : 'webm'}`)}.`));
    at('save-captions').addEventListener('click', () => tell(`Saved as ${save(captions().captions, 'captions.vtt', 'text/vtt')}.`));
    at('save-chapters').addEventListener('click', () => tell(`Saved as ${save(captions().chapters, 'chapters.vtt', 'text/vtt')}.`));
    at('save-transcript').addEventListener('click', () => tell(`Saved as ${save(captions().transcript, 'transcript.txt', 'text/plain')}.`));
    buttons();
}
