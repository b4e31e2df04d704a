// A lesson on its stage: one stroke at a time, by key, clicker, thumb or the speaker's window.
import { createBoard } from './board.js';
import { createMore } from './more.js';
import { createMotion } from './motion.js';
import { createPause } from './pause.js';
import { createPen } from './pen.js';
import { placesOf, samePlace } from './places.js';
import { startLectern } from './program.js';
import { createSpeakerLink } from './speaker_link.js';
import { createVoice } from './voice.js';

const at = (id) => document.getElementById(id);
const say = (words) => { at('says').textContent = words; };

function createLesson(lectern, opened) {
    let { lessons, model } = opened;
    let places = placesOf(opened);
    let now = 0;
    let came = []; // where "Why?" was asked
    let hides = false;
    const watchers = []; // of what is shown: the speaker's window, the recording

    const voice = createVoice();
    const pen = createPen(at('pen'), at('stage'));
    const pause = createPause(lectern, () => opened, () => go(1));
    const board = createBoard(at('picture'), {
        moved(joint, x, y) { change(lectern({ do: 'move', joint, x, y })); },
        tapped(member) { const found = lessons[place().item].found?.[member]; why(found < 0 ? null : found); },
        next: () => go(1),
        back: () => go(-1),
    });

    const place = () => places[now];
    const step = () => lessons[place().item].steps[place().step];
    const keyOf = ({ item, subject }) => `${item} ${subject}`;

    // A pause stands on the picture before it.
    function picturePlace() {
        const { item, step: index, stroke, pause: pausing } = place();
        if (!pausing) {
            return { item, step: index, stroke };
        }
        const before = places.slice(0, now).findLast((each) => each.item === item && !each.pause);
        return before ?? { item, step: index, stroke: 0 };
    }

    function draw({ phase = 0.25, along = 1 } = {}) {
        const { clientWidth: width, clientHeight: height } = at('picture');
        if (width === 0) {
            return;
        }
        const { item, step: index, stroke } = picturePlace();
        const reply = lectern({ do: 'stage', item, step: index, stroke, width, height, phase, along, hides });
        at('picture').innerHTML = reply.svg; // made by the program, everything escaped
        board.follow(reply.board, opened);
    }

    const motion = createMotion(draw);

    function showWhys() {
        const uses = place().pause ? [] : step().uses ?? [];
        at('why').hidden = uses.length === 0;
        at('whys').hidden = true;
        at('why').setAttribute('aria-expanded', 'false');
        at('whys').replaceChildren(...uses.map(({ says, step: found }) => {
            const item = document.createElement('li');
            const button = document.createElement('button');
            button.type = 'button';
            button.textContent = `Why ${says}?`;
            button.addEventListener('click', () => why(found));
            item.append(button);
            return item;
        }));
        at('return').hidden = came.length === 0;
    }

    function show(by = 0) {
        const { pause: pausing, spoken } = place();
        draw();
        motion.show(pausing ? {} : step(), { came: by, stroke: place().stroke });
        pen.show(keyOf(place()));
        pause.show(pausing ?? null);
        showWhys();
        at('where').textContent = `${now + 1} of ${places.length}: ${place().title}`;
        at('back').disabled = now === 0;
        at('next').disabled = now === places.length - 1;
        const words = pausing ? pausing.says ?? '' : spoken;
        at('spoken').textContent = words;
        voice.say(words);
        watchers.forEach((watcher) => watcher(state()));
    }

    function state() {
        const next = places[now + 1];
        return {
            now,
            of: places.length,
            place: { item: place().item, step: place().step, stroke: place().stroke },
            title: place().title,
            subject: place().subject || step().subject,
            spoken: place().spoken ?? place().pause?.says ?? '',
            next: next ? { title: next.title, spoken: next.spoken ?? next.pause?.says ?? '' } : null,
        };
    }

    function goTo(index) {
        const before = now;
        now = Math.max(0, Math.min(places.length - 1, index));
        show(now - before);
    }
    function go(by) {
        if (by > 0 && place().pause && !pause.isDone()) {
            pause.insist();
            return;
        }
        goTo(now + by);
    }
    function why(found) {
        if (found === undefined || found === null) {
            return;
        }
        const { item } = place();
        const last = places.findLastIndex((each) => each.item === item && each.step === found && !each.pause);
        if (last < 0 || last === now) {
            return;
        }
        came.push(now);
        goTo(last);
    }
    at('return').addEventListener('click', () => {
        const before = came.pop();
        if (before !== undefined) {
            goTo(before);
        }
    });

    // Another model, or another plan: the lesson goes on where the same is said.
    function change(reply) {
        if (reply.faults) {
            say(reply.faults.join(' '));
            return false;
        }
        const made = lectern({ do: 'open', model: reply.model });
        if (made.faults) {
            say(made.faults.join(' '));
            return false;
        }
        say('');
        const before = { ...place(), index: now };
        const count = places.length;
        const { title } = place();
        Object.assign(opened, made);
        ({ lessons, model } = opened);
        places = placesOf(opened);
        came = [];
        goTo(samePlace(places, before, count));
        if (place().subject !== before.subject) {
            say(`“${title}” is no step of this working; it goes on with “${place().title}”.`);
        }
        fillContents();
        return true;
    }

    function fillContents() {
        const entries = places.map((each, index) => ({ ...each, index }))
            .filter(({ begins, pause: pausing }) => pausing || begins);
        at('contents').replaceChildren(...entries.map(({ title, pause: pausing, index: to }) => {
            const entry = document.createElement('li');
            const button = document.createElement('button');
            button.type = 'button';
            button.textContent = pausing ? `— ${pausing.says || 'A question'}` : title;
            button.addEventListener('click', () => {
                at('contents').hidden = true;
                at('contents-open').setAttribute('aria-expanded', 'false');
                goTo(to);
            });
            entry.append(button);
            return entry;
        }));
    }

    return {
        go,
        goTo,
        state,
        draw,
        motion,
        pen,
        voice,
        change,
        watch(next) { watchers.push(next); },
        count: () => places.length,
        model: () => model,
        plan: () => opened.plan,
        opened: () => opened,
        hideValues(hidden) {
            hides = hidden;
            draw();
        },
        begin() {
            fillContents();
            show();
        },
    };
}

function toggle(button, panel) {
    button.addEventListener('click', () => {
        const opens = panel.hidden;
        document.querySelectorAll('.panel').forEach((each) => { each.hidden = true; });
        document.querySelectorAll('[aria-expanded]').forEach((each) => each.setAttribute('aria-expanded', 'false'));
        panel.hidden = !opens;
        button.setAttribute('aria-expanded', String(opens));
        if (opens) {
            panel.querySelector('button, input, select, textarea')?.focus();
        }
    });
}

function listen(lesson) {
    at('next').addEventListener('click', () => lesson.go(1));
    at('back').addEventListener('click', () => lesson.go(-1));
    toggle(at('contents-open'), at('contents'));
    toggle(at('why'), at('whys'));
    toggle(at('more-open'), at('more'));
    const chooseTool = (tool) => {
        const chosen = lesson.pen.choose(tool);
        document.body.classList.toggle('drawing', chosen !== null);
        document.querySelectorAll('[data-tool][aria-pressed]').forEach((button) =>
            button.setAttribute('aria-pressed', String(button.dataset.tool === chosen)));
    };
    document.querySelectorAll('button[data-tool]').forEach((button) =>
        button.addEventListener('click', () => chooseTool(button.dataset.tool)));
    at('undo').addEventListener('click', () => lesson.pen.undo());
    at('stage').addEventListener('pointermove', ({ clientX, clientY }) => {
        const box = at('stage').getBoundingClientRect();
        at('halo').style.left = `${clientX - box.left}px`;
        at('halo').style.top = `${clientY - box.top}px`;
    });
    const keys = {
        ArrowRight: () => lesson.go(1),
        PageDown: () => lesson.go(1), // clickers send these two
        ' ': () => lesson.go(1),
        ArrowLeft: () => lesson.go(-1),
        PageUp: () => lesson.go(-1),
        Home: () => lesson.goTo(0),
        End: () => lesson.goTo(lesson.count() - 1),
        p: () => chooseTool('pen'),
        h: () => chooseTool('marker'),
        a: () => chooseTool('arrow'),
        e: () => chooseTool('eraser'),
        u: () => lesson.pen.undo(),
        m: () => lesson.motion.turn(),
        o: () => { at('halo').hidden = !at('halo').hidden; },
        f: () => fullScreen(),
    };
    addEventListener('keydown', (event) => {
        const { key, ctrlKey, metaKey, altKey, target } = event;
        const isTyping = target.matches?.('input, textarea, select') || (key === ' ' && target.matches?.('button, a'));
        if (key === 'Escape') {
            document.querySelectorAll('.panel').forEach((panel) => { panel.hidden = true; });
            at('picture').focus();
        }
        if (isTyping || ctrlKey || metaKey || altKey || !keys[key]) {
            return;
        }
        event.preventDefault();
        keys[key]();
    });
    new ResizeObserver(() => {
        lesson.draw();
        lesson.pen.redraw();
    }).observe(at('picture'));
    document.addEventListener('fullscreenchange', () =>
        document.body.classList.toggle('full', document.fullscreenElement !== null));
}

function fullScreen() {
    if (document.fullscreenElement) {
        document.exitFullscreen();
    } else {
        document.documentElement.requestFullscreen?.().catch(() => say('This browser shows no page in full.'));
    }
}

// The drawing has inks of its own for a dark page.
function followTheme() {
    const dark = matchMedia('(prefers-color-scheme: dark)');
    const follow = () => { document.documentElement.dataset.theme = dark.matches ? 'dark' : 'paper'; };
    dark.addEventListener('change', follow);
    follow();
}

async function start() {
    followTheme();
    const lectern = await startLectern();
    const opened = lectern({ do: 'open', model: location.hash });
    if (opened.faults) {
        say(opened.faults.join(' '));
        at('way-out').hidden = false;
        at('to-board').href = `../${location.hash}`;
        return;
    }
    document.title = `Gusset: ${opened.title || 'a lesson'}`;
    at('title').textContent = opened.title || 'A lesson';
    at('leave').href = `../${location.hash}`;
    at('stage').hidden = false;
    at('bar').hidden = false;
    say('');
    const lesson = createLesson(lectern, opened);
    const link = createSpeakerLink(lesson);
    createMore({ panel: at('more'), lectern, lesson, link, fullScreen, say });
    listen(lesson);
    lesson.begin();
}

addEventListener('hashchange', () => location.reload());
start().catch((error) => say(`The lesson can’t be shown: ${error.message}. Reload the page to try again.`));
