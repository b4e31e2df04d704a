// The recorder: one that runs through all steps, and another after each cut. Time is the film's, in seconds.
import { createFilm } from './film.js';
import { createJoiner, durationBytes, emptyFilm } from './webm.js';

const types = ['video/webm;codecs=vp8,opus', 'video/webm', 'video/mp4'];
const between = 100; // ms between two looks at whether there is something to film
const longest = 1000; // ms between two pictures of what does not change
const chunk = 250; // ms of a recorder's chunk
const room = 4; // pictures that the recorder may have in hand
const nearly = 150; // ms before its end, for the last picture of a film
const leastMp4 = 1024; // bytes: its head and a picture
const patience = 5000; // ms after which those that it was given count as dropped

export const recordingType = () => types.find((each) => window.MediaRecorder?.isTypeSupported(each));
export const canBeCut = (type) => type.startsWith('video/webm');

// `keeper` takes the film's bytes; `kept` is called when some were kept, `full` when there is no room for more.
export function createRecorder({ tracks, strokes, type, keeper, kept, full }) {
    const film = emptyFilm();
    const tail = []; // what the disk had no room for
    let recorder = null;
    let push = null;
    let clock = null; // { start (s), began, held (ms) }; while held, time stands still
    let asked = 0; // pictures
    let lastAsked = 0;
    let lastSeen = { pictures: 0, at: 0 };
    let hasChanged = true;
    let fault = null; // why
    let keeping = Promise.resolve();

    const scene = createFilm(strokes, () => { hasChanged = true; });
    const stream = scene.canvas.captureStream(0);
    const [pictures] = stream.getVideoTracks();
    tracks.forEach((track) => stream.addTrack(track));

    const seconds = () => (clock ? clock.start + ((clock.held ?? performance.now()) - clock.began) / 1000 : 0);
    const isRunning = () => recorder?.state === 'recording' && clock.held === null;

    // Pictures are asked for no faster than the recorder writes them: on a busy machine it would come to lag by many
    // seconds, and drop the newest.
    function inHand(now) {
        if (film.pictures !== lastSeen.pictures) {
            lastSeen = { pictures: film.pictures, at: now };
        } else if (now - lastSeen.at > patience && now - lastAsked > patience) {
            asked = film.pictures;
        }
        return asked - film.pictures;
    }
    function ask(now) {
        scene.paint();
        pictures.requestFrame();
        hasChanged = false;
        asked += 1;
        lastAsked = now;
    }
    function look() {
        const now = performance.now();
        if (!isRunning() || scene.isBehind()) {
            return;
        }
        const isTime = hasChanged || now - lastAsked >= longest;
        if (isTime && (!canBeCut(type) || inHand(now) < room)) {
            ask(now);
        }
    }

    async function keep(data) {
        const bytes = new Uint8Array(await data.arrayBuffer());
        const more = push ? push(bytes) : bytes;
        if (!push) { // the times in MP4 are not read: what has come by now
            film.size += bytes.length;
            film.lastPicture = 1000 * seconds();
            film.lastTime = film.lastPicture;
        }
        if (more.length === 0) {
            return;
        }
        if (tail.length === 0) {
            try {
                await keeper.append(more);
                return;
            } catch (error) {
                fault = error;
            }
        }
        tail.push(more);
        full(fault);
    }
    function begin(start) {
        push = canBeCut(type) ? createJoiner(film, 1000 * start) : null;
        recorder = new MediaRecorder(stream, { mimeType: type, videoBitsPerSecond: 2_500_000, videoKeyFrameIntervalDuration: 5000 });
        recorder.addEventListener('dataavailable', ({ data }) => {
            keeping = keeping.then(() => keep(data)).then(kept);
        });
        recorder.start(chunk);
        asked = film.pictures;
        const now = performance.now();
        clock = { start, began: now, held: null };
        ask(now); // the film begins with it
    }
    // The film ends with a picture of its end, and with all that came before it.
    async function settle() {
        await scene.load();
        ask(performance.now());
        const until = performance.now() + 4 * patience;
        const end = 1000 * seconds() - nearly; // the first pictures that are asked for may be dropped, and are not counted
        const isWritten = () => (canBeCut(type) ? film.pictures >= asked || film.lastPicture >= end : film.size >= leastMp4);
        while (!isWritten() && performance.now() < until) {
            await new Promise((resolve) => setTimeout(resolve, chunk));
        }
    }
    async function stop() {
        if (recorder.state !== 'inactive') {
            clock.held ??= performance.now();
            if (recorder.state === 'recording') {
                await settle();
            }
            const stopped = new Promise((resolve) => recorder.addEventListener('stop', resolve, { once: true }));
            recorder.stop();
            await stopped;
        }
        await keeping;
    }
    const timer = setInterval(look, between);
    return {
        seconds,
        writtenSeconds: () => film.lastPicture / 1000,
        isOn: () => recorder !== null && recorder.state !== 'inactive',
        isPaused: () => recorder?.state === 'paused',
        async begin() {
            await scene.load();
            begin(0);
        },
        pause() {
            clock.held = performance.now();
            recorder.pause();
        },
        goOn() {
            clock.began += performance.now() - clock.held;
            clock.held = null;
            recorder.resume();
            hasChanged = true;
        },
        // A place at which the film may be cut later.
        mark(at) {
            const mark = { time: 1000 * at };
            film.marks.push(mark);
            return mark;
        },
        // The film up to a mark, and on from there.
        async retake(mark) {
            await stop();
            if (tail.length > 0) {
                return false;
            }
            const to = mark.at ?? film.size;
            await keeper.cut(to);
            film.marks = film.marks.filter(({ time }) => time < mark.time);
            film.size = to;
            film.lastPicture = Math.min(film.lastPicture, mark.time);
            film.lastTime = Math.min(film.lastTime, mark.time);
            await scene.load();
            begin(mark.time / 1000);
            return true;
        },
        // Resolves to the film's length in s.
        async finish() {
            const length = seconds();
            await stop();
            clearInterval(timer);
            scene.end();
            stream.getTracks().forEach((track) => track.stop());
            const whole = Math.max(length, film.lastTime / 1000);
            if (film.durationAt !== null) {
                await keeper.patch(film.durationAt, durationBytes(1000 * whole)).catch(() => {}); // players then find it themselves
            }
            return whole;
        },
        // What the disk had no room for goes behind what it has.
        film: async () => new Blob([await keeper.film(), ...tail], { type: type.split(';')[0] }),
        durationAt: () => film.durationAt,
    };
}
