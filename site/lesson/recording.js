// The lesson recorded in the page: the stage with pen and ring, and the microphone or none. Nothing leaves the device.
import { saveFile } from '../saving.js';
import { createKeeper } from './keeper.js';
import { forget, found, nameOf, note, noted, takePlace } from './left_films.js';
import { canBeCut, createRecorder, recordingType } from './recorder.js';
import { createShown } from './shown.js';

const page = `
<h2>Recording</h2>
<p class="row"><label for="sound">Sound</label> <select id="sound"><option value="microphone">microphone</option>
<option value="none">none</option><option value="words">none, turned at the pace of the spoken words</option></select>
<button type="button" id="record" title="Record (R)">Record</button></p>
<p id="words-note" hidden>A page can’t record its browser’s voice. The film is silent, goes on by itself in the time that it
takes to say each step, and its captions are the spoken words.</p>
<p>Without a recording, at a speaker’s pace:</p>
<p class="row" id="paced"></p>`;

const bar = `
<span id="recording-time" role="timer"></span>
<button type="button" id="hold" title="Pause, go on (R)">Pause</button>
<button type="button" id="again" title="Again from this step (T)">Again from this step</button>
<button type="button" id="finish">Finish</button>
<p id="recording-says" role="status"></p>
<div id="films"></div>`;

const texts = [['Captions', 'captions', 'captions.vtt', 'text/vtt'], ['Chapters', 'chapters', 'chapters.vtt', 'text/vtt'],
    ['Transcript', 'transcript', 'transcript.txt', 'text/plain'], ['List of chapters', 'list', 'chapters.txt', 'text/plain']];

const clockTime = (seconds) => `${Math.floor(seconds / 60)}:${String(Math.floor(seconds % 60)).padStart(2, '0')}`;

function button(text, act) {
    const made = Object.assign(document.createElement('button'), { type: 'button', textContent: text });
    made.addEventListener('click', act);
    return made;
}

const at = (id) => document.getElementById(id);
const say = (words) => {
    at('recorder').hidden = false;
    at('recording-says').textContent = words;
};

// The files of a lesson's words; `shown` is empty for those at reading pace.
function wordButtons(lectern, shown, suffix, tell) {
    return texts.map(([title, key, name, type]) => button(title, () => {
        const file = name.replace('.', `${suffix}.`);
        saveFile(file, lectern({ do: 'captions', shown: shown() })[key], type);
        tell(`Saved as ${file}.`);
    }));
}

// The films that can be saved, below the controls.
function createFilms(lectern, changed) {
    const films = []; // { number, type, seconds, shown, blob() }
    function show() {
        at('films').replaceChildren(...films.map((film, i) => {
            const suffix = i === 0 ? '' : `-${i + 1}`;
            const name = `lesson${suffix}.${film.type.includes('mp4') ? 'mp4' : 'webm'}`;
            const row = document.createElement('p');
            row.className = 'row';
            row.append(`${clockTime(film.seconds)} `,
                button('Save the film', async () => {
                    saveFile(name, await film.blob(), film.type.split(';')[0]);
                    say(`Saved as ${name}. When it is where you want it, delete it here.`);
                }),
                ...wordButtons(lectern, () => film.shown, suffix, say),
                button('Delete', async () => {
                    await forget(film.number);
                    films.splice(films.indexOf(film), 1);
                    show();
                    at('recorder').hidden = films.length === 0;
                    at('more-open').focus();
                }));
            return row;
        }));
        changed();
    }
    return {
        add(film) {
            films.push(film);
            show();
        },
        has: () => films.length > 0,
    };
}

async function microphone() {
    const stream = await navigator.mediaDevices.getUserMedia({ audio: true });
    return stream.getAudioTracks();
}

// The controls take room from the stage: it is drawn anew in the next frame.
async function laidOut() {
    await new Promise(requestAnimationFrame);
    await new Promise(requestAnimationFrame);
}

const noMicrophone = {
    NotAllowedError: 'The microphone is not allowed for this page. Allow it in the browser, or choose no sound; nothing is recorded yet.',
    NotFoundError: 'This device has no microphone. Choose no sound; nothing is recorded yet.',
};

export function createRecording({ place, lectern, lesson, tell }) {
    place.innerHTML = page;
    at('bar').before(Object.assign(document.createElement('section'), { id: 'recorder', hidden: true, innerHTML: bar }));
    at('recorder').setAttribute('aria-label', 'Recording');
    at('paced').append(...wordButtons(lectern, () => [], '', tell));
    at('sound').addEventListener('change', () => { at('words-note').hidden = at('sound').value !== 'words'; });
    const type = recordingType();
    let recorder = null;
    let keeper = null;
    let number = 0; // of the film
    let tracks = [];
    let shown = createShown();
    let isBusy = false; // while one recorder ends and another begins
    let missed = null; // what was shown meanwhile
    let pace = 0; // timer of the spoken words
    let notedAt = 0; // ms

    const films = createFilms(lectern, showControls);

    function showControls() {
        const isOn = recorder !== null;
        for (const id of ['hold', 'again', 'finish', 'recording-time']) {
            at(id).hidden = !isOn;
            at(id).disabled = isBusy;
        }
        at('record').disabled = !type || isOn || isBusy || films.has();
        if (isOn) {
            at('hold').textContent = recorder.isPaused() ? 'Go on' : 'Pause';
            const visit = shown.visitOf(lesson.state());
            at('again').disabled = isBusy || !visit;
            at('again').textContent = canBeCut(type) ? `Again from ${clockTime(visit?.from ?? 0)}` : 'Again as a second film';
        }
    }
    function noteNow() {
        note({ number, type, seconds: recorder.writtenSeconds(), shown: shown.until(recorder.writtenSeconds()),
            durationAt: recorder.durationAt() });
    }
    function kept() {
        if (!recorder) {
            return;
        }
        at('recording-time').textContent = clockTime(recorder.writtenSeconds());
        if (performance.now() - notedAt > 1000) {
            notedAt = performance.now();
            noteNow();
        }
    }
    function wordsOf(state) {
        const question = at('pause').hidden || at('pause-ask').hidden ? '' : at('pause-question').textContent;
        return `${state.spoken} ${question}`.trim();
    }
    // The silent film goes on by itself.
    function turnAfter(says, state) {
        clearTimeout(pace);
        if (at('sound').value === 'words') {
            const { seconds } = lectern({ do: 'pace', says });
            pace = setTimeout(() => (state.next ? lesson.goTo(state.now + 1) : finish()), 1000 * seconds);
        }
    }
    function showAt(state, seconds) {
        const says = wordsOf(state);
        shown.add(state, says, seconds, recorder.mark(seconds));
        if (!recorder.isPaused()) {
            turnAfter(says, state);
        }
        showControls();
    }
    function show(state) {
        if (isBusy) {
            missed = state;
        } else if (recorder) {
            showAt(state, recorder.seconds());
        }
    }
    // The film, or its part after a cut, begins with what is shown.
    function showFirst(seconds) {
        missed = null;
        showAt(lesson.state(), seconds);
    }

    async function startRecorder() {
        keeper = await createKeeper(nameOf(number));
        await keeper.cut(0);
        shown = createShown();
        recorder = createRecorder({ tracks: tracks.map((track) => track.clone()), strokes: lesson.pen.strokes, type, keeper, kept, full });
        await recorder.begin();
        showFirst(0);
    }
    async function begin() {
        if (!await takePlace()) {
            say('Another tab of this browser records a lesson. Finish it there first.');
            return;
        }
        tracks = [];
        if (at('sound').value === 'microphone') {
            try {
                tracks = await microphone();
            } catch ({ name, message }) {
                say(noMicrophone[name] ?? `The microphone gives no sound (${message}). Choose no sound; nothing is recorded yet.`);
                return;
            }
            tracks.forEach((track) => track.addEventListener('ended', () => hold(
                'The microphone has gone: the recording pauses, and has all until now. Finish it, or go on without sound.')));
        }
        number = 0;
        say('Recording.');
        at('more').hidden = true;
        at('more-open').setAttribute('aria-expanded', 'false');
        at('picture').focus();
        await laidOut();
        await startRecorder();
    }
    // One change after another: a press in between waits for nothing and does nothing.
    async function act(change) {
        if (isBusy) {
            return;
        }
        isBusy = true;
        showControls();
        try {
            await change();
        } catch (error) {
            say(`The recording does not go on: ${error.message}. What was recorded before can be saved when this page is opened again.`);
            recorder = null;
        } finally {
            isBusy = false;
            if (missed) {
                show(missed);
                missed = null;
            }
            showControls();
        }
    }
    function hold(says) {
        if (!recorder || recorder.isPaused() || isBusy) {
            return;
        }
        clearTimeout(pace);
        recorder.pause();
        say(says);
        showControls();
    }
    function goOn() {
        recorder.goOn();
        say('Recording.');
        show(lesson.state());
    }
    // The film as it is, with the others that can be saved.
    async function endFilm() {
        clearTimeout(pace);
        say('One moment: the last pictures are being written.');
        const ending = recorder;
        const seconds = await ending.finish();
        recorder = null;
        const film = { number, type, seconds, shown: shown.until(seconds), durationAt: ending.durationAt() };
        note(film);
        await keeper.rest();
        films.add({ ...film, blob: ending.film });
        return seconds;
    }
    const finish = (says) => act(async () => {
        if (recorder) {
            const seconds = await endFilm();
            tracks.forEach((track) => track.stop());
            say(says ?? `Recorded: ${clockTime(seconds)}.`);
        }
    });
    function full({ name }) {
        const why = name === 'QuotaExceededError' ? 'There is no room left on this device' : `This device keeps no more of it (${name})`;
        finish(`${why}: the recording ends here, and nothing of it is lost. Save it before you close this page.`);
    }
    async function again() {
        const visit = shown.visitOf(lesson.state());
        if (!visit) {
            return;
        }
        clearTimeout(pace);
        if (!canBeCut(type)) {
            await endFilm();
            number += 1;
            await startRecorder();
            say('This browser records MP4, which can’t be cut here: the film before is kept as it is, and a second one begins.');
            return;
        }
        lesson.goTo(visit.now);
        say('One moment: the film is cut.');
        if (await recorder.retake(visit.mark)) {
            shown.cutAt(visit);
            showFirst(visit.from);
            say(`Recording again from ${clockTime(visit.from)}; what came after it is gone.`);
        }
    }

    lesson.watch(show);
    at('record').addEventListener('click', () => act(begin));
    const holdOrGoOn = () => (recorder.isPaused() ? goOn() : hold('Paused.'));
    at('hold').addEventListener('click', holdOrGoOn);
    at('again').addEventListener('click', () => act(again));
    at('finish').addEventListener('click', () => finish());
    document.addEventListener('visibilitychange', () => {
        if (document.hidden) {
            hold('Paused, since this page was hidden and a hidden page is not painted. Nothing is lost: go on when you are ready.');
        }
    });
    const keys = {
        r: () => (recorder ? holdOrGoOn() : !at('record').disabled && act(begin)),
        t: () => recorder && act(again),
    };
    addEventListener('keydown', ({ key, target, ctrlKey, metaKey, altKey }) => {
        if (!ctrlKey && !metaKey && !altKey && !isBusy && !target.matches?.('input, textarea, select')) {
            keys[key]?.();
        }
    });
    addEventListener('beforeunload', (event) => {
        if (recorder) {
            event.preventDefault(); // the browser asks
        }
    });

    async function offerLeft() {
        const left = noted();
        if (left.length === 0 || !await takePlace()) {
            return;
        }
        const all = await Promise.all(left.map(found));
        const there = all.filter((film) => film !== null);
        there.forEach(films.add);
        if (there.length > 0) {
            say('There is a recording on this device, up to where it was finished or the page was closed. Save it if you want it, then delete it to record again.');
        }
        showControls();
    }
    if (!type) {
        tell('This browser can’t record a page. The captions below are for a film made otherwise.');
    }
    showControls();
    offerLeft().catch((error) => say(`A recording that was left here can’t be read: ${error.message}.`));
}
