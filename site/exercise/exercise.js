// A student's page: the truss, the questions, help as far as the exercise allows, and handing in. It has nothing of the
// answers in it: the program is asked about what was written.
import { createFields } from './answers.js';
import { createBody } from './body.js';
import { createEditor } from './editor.js';
import { embed, showsTrussAlone } from './embedded.js';
import { createEquation } from './equation.js';
import { keepOffline } from './offline.js';
import { startDesk } from './program.js';
import { copied, saveFile } from '../saving.js';

const at = (id) => document.getElementById(id);
const say = (words) => { at('says').textContent = words; };

// Letters that can't be taken for one another when read aloud or from paper.
const codeLetters = 'ACDEFGHJKLMNPQRTUVWXY34679';
function newCode() {
    return [...crypto.getRandomValues(new Uint8Array(5))].map((byte) => codeLetters[byte % codeLetters.length]).join('');
}

// That the link gives this student, if it gives one.
const linkedCode = () => location.hash.match(/&code=([A-Z0-9]{1,8})$/)?.[1];

const keeping = 'What you write is kept on this device.';
const keepsNothing = 'This browser keeps nothing of what you write: hand in before you leave the page.';

// Storage may be refused; then the answers live as long as the page.
function createDraft(mark) {
    const name = `gusset-exercise-${mark}`;
    let isKept = true; // else the page has more than what is kept
    return {
        read() {
            try {
                return JSON.parse(localStorage.getItem(name)) ?? {};
            } catch {
                return {};
            }
        },
        keep(draft) {
            try {
                localStorage.setItem(name, JSON.stringify(draft));
                isKept = true;
                at('keeping').textContent = keeping;
            } catch {
                isKept = false;
                at('keeping').textContent = keepsNothing;
                say(keepsNothing);
            }
        },
        // Another tab has kept something, or may have, unseen, while this one was behind it.
        whenKeptElsewhere(adopt) {
            addEventListener('storage', (event) => event.key === name && event.newValue && adopt(JSON.parse(event.newValue)));
            document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && isKept && adopt(this.read()));
        },
    };
}

function showFigure(exercise) {
    at('figure').hidden = exercise.figure === '';
    at('given-tables').innerHTML = exercise.given;
    at('given').open = exercise.figure === '';
}

function createHelp(desk, exercise, body, ask) {
    at('hint').hidden = exercise.hints === 'none';
    at('stand').hidden = exercise.hints === 'none' && !exercise.checksAtOnce;
    at('stand').addEventListener('click', () => {
        const reply = body.isBody() ? ask({ do: 'stand', ...body.chosen() })
            : { says: 'Cut the truss in two first, and choose a part.' };
        at('stand-says').textContent = reply.says ?? reply.faults[0];
    });
    let level = 0;
    let asked = '';
    at('hint').addEventListener('click', () => {
        const request = { do: 'hint', ...body.isBody() ? body.chosen() : {} };
        const now = JSON.stringify([request, ask.answers()]);
        level = now === asked ? level + 1 : 1; // another body, or something was written since: a new place
        asked = now;
        const reply = ask({ ...request, level });
        const lines = reply.lines ?? [];
        at('hints').replaceChildren(...lines.map((html) => {
            const item = document.createElement('li');
            item.innerHTML = html; // made by the program, everything escaped
            return item;
        }));
        at('hint').textContent = reply.more ? 'More of this hint' : 'A hint';
        if (!reply.more) {
            asked = '';
        }
    });
    return { changed() {
        at('hint').textContent = 'A hint';
        at('stand-says').textContent = '';
    } };
}

function createCheck(desk, model, fields, answers) {
    at('check').addEventListener('click', () => {
        const { rows, questions } = desk({ do: 'check', model, answers: answers() });
        rows.forEach(({ of, says }) => {
            const row = fields.rowOf(of);
            row.judge(says);
            (row.closest('details') ?? {}).open = true;
        });
        questions.forEach(({ question, says }) => fields.wholeOf(question).judge(says));
        const told = [...rows, ...questions];
        const right = told.filter((one) => one.right).length;
        at('check-says').textContent = told.length > 0 ? `${right} of ${told.length} answers written so far are right: see each.`
            : fields.count().unread.length > 0 ? 'Nothing that is written can be read: see each.' : 'Nothing is written yet.';
    });
    return { changed(row) {
        at('check-says').textContent = '';
        row?.judge('');
    } };
}

function createFinish(fields, kept, written, code, beginAgain) {
    const count = () => {
        const { of, blank, unread } = fields.count();
        if (unread.length > 0) {
            return `${unread.length} can’t be read: see ${unread.join(', ')}.`;
        }
        return blank.length === 0 ? `All ${of} answers are filled in.`
            : `${of - blank.length} of ${of} answers are filled in; blank: ${
                blank.join(', ')}.`;
    };
    at('code').textContent = code;
    at('review').addEventListener('click', () => {
        written();
        at('review-part').hidden = false;
        at('review-says').textContent = `${count()} Equations kept: ${kept.length}.`;
        at('review-equations').replaceChildren(...[...at('kept-list').children].map((item) => {
            const copy = item.cloneNode(true);
            copy.querySelector('button').remove();
            return copy;
        }));
        at('review-says').focus();
    });
    at('copy').addEventListener('click', async () => {
        const address = `${location.href.split('#')[0]}#${written().link}`;
        at('review-says').textContent = await copied(address) ? 'The link is copied.' : address;
    });
    at('save').addEventListener('click', () => {
        const name = `answers-${code}.json`;
        saveFile(name, written().answers, 'application/json');
        at('review-says').textContent = `Saved as ${name}.`;
    });
    const askAgain = (asks) => {
        at('again').hidden = asks;
        at('again-ask').hidden = !asks;
        at(asks ? 'again-no' : 'again').focus();
    };
    at('again').addEventListener('click', () => askAgain(true));
    at('again-no').addEventListener('click', () => askAgain(false));
    at('again-yes').addEventListener('click', beginAgain);
    return { changed() { at('review-part').hidden = true; } };
}

function begin(desk, exercise) {
    const { model, mark, variant } = exercise;
    document.title = `Gusset: ${exercise.title || 'an exercise'}`;
    at('title').textContent = exercise.title || 'An exercise';
    at('instructions').textContent = exercise.text;
    at('instructions').hidden = exercise.text === '';
    at('work').hidden = false; // before anything is drawn, so that it can be measured
    showFigure(exercise);
    const draft = createDraft(mark);
    const before = draft.read();
    const code = linkedCode() ?? before.code ?? newCode();
    const kept = readable(desk, exercise, before.equations ?? []);
    const typed = (text, what = '') => desk({ do: 'typed', model, typed: text, what });
    const answers = () => fields.answers({ mark, variant, code, equations: kept });
    const written = () => desk({ do: 'answers', model, answers: answers() });
    const ask = Object.assign((request) => desk({ ...request, model, answers: answers() }), { answers });

    draft.keep({ ...before, code }); // so that another tab has the same code
    draft.whenKeptElsewhere((other) => {
        if (!other.rows || JSON.stringify(other) === JSON.stringify(state())) {
            return;
        }
        fields.putBack(other);
        kept.splice(0, kept.length, ...readable(desk, exercise, other.equations ?? []));
        help.changed();
        check.changed();
        finish.changed();
        fields.forceRows.forEach((row) => readBack(row, typed));
        editor.follow(null);
        redraw();
    });
    const state = () => ({ code, ...fields.draft(), equations: kept });
    const keep = () => draft.keep(state());
    const redraw = whenIdle(() => {
        body.redraw();
        equation.refresh();
    });
    function changed(row) {
        keep();
        help.changed();
        check.changed(row);
        finish.changed();
        if (row) {
            readBack(row, typed);
        }
        editor.follow(row);
        redraw();
    }
    const fields = createFields(at('questions'), exercise, typed, changed);
    fields.putBack(before);
    const editor = createEditor({ figure: at('figure'), place: at('editor'), exercise, fields, edited: changed,
        choice: (thing) => body.takesMember(thing) });
    const equation = createEquation({ ask, exercise, kept, keep() {
        keep();
        finish.changed();
    } });
    const body = createBody({ ask, exercise, light: editor.light, press: equation.pick, changed() {
        help.changed();
        equation.of(body);
    } });
    equation.of(body);
    equation.refresh();
    editor.follow(null);
    const help = createHelp(desk, exercise, body, ask);
    const finish = createFinish(fields, kept, written, code, () => {
        draft.keep({ code });
        location.reload();
    });
    const check = createCheck(desk, model, fields, answers);
    at('checking').hidden = !exercise.checksAtOnce;
    at('working').hidden = exercise.questions.every(({ what }) => what === 'determinacy'); // there is no force to find
    embed(exercise, written, () => {
        if (!exercise.checksAtOnce) {
            return null;
        }
        const { rows, questions } = desk({ do: 'check', model, answers: answers() });
        return { right: [...rows.filter(({ of }) => fields.isAsked(of)), ...questions].filter(({ right }) => right).length,
            of: fields.count().of };
    });
    at('questions').addEventListener('submit', (event) => event.preventDefault());
    if (at('says').textContent !== keepsNothing) {
        say(kept.length < (before.equations ?? []).length ? 'Equations that were kept before can’t be read any more, and are left out.' : '');
    }
    keepOffline(at('offline'));
}

// One that can't be read would make all answers unreadable.
function readable(desk, { model, mark }, equations) {
    return equations.filter((equation) => !desk({ do: 'equations', model,
        answers: JSON.stringify({ gussetAnswers: 1, exercise: mark, equations: [equation] }) }).faults);
}

// At most once a moment, as what is typed comes letter by letter.
function whenIdle(work) {
    let timer = 0;
    return () => {
        clearTimeout(timer);
        timer = setTimeout(work, 200);
    };
}

// "12.5 kN T" is a size and a sense: the sense is shown on its button.
function readBack(row, typed) {
    const { text, sign } = row.read();
    const read = text.trim() === '' ? {} : typed(text, row.made.what);
    row.tell(read.faults?.[0] ?? '');
    if (!read.faults && sign === null && read.sign !== undefined) {
        row.put(read.sign);
    }
}

async function start() {
    if (location.hash.startsWith('#a=')) { // answers: their instructor has opened them
        location.replace(`../course/${location.hash}`);
        return;
    }
    if (location.hash.length < 2) {
        say('There is no exercise in this address: open the whole link that you were given.');
        return;
    }
    const desk = await startDesk();
    const exercise = desk({ do: 'open', model: location.hash });
    if (exercise.faults) {
        say(exercise.faults.join(' '));
    } else if (showsTrussAlone) {
        at('title').textContent = exercise.title;
        showFigure(exercise);
        at('figure').innerHTML = exercise.figure; // made by the program, everything escaped
        at('answering').hidden = true;
        at('work').hidden = false;
        say('');
    } else if (exercise.asksNothing) {
        location.replace(`../course/${location.hash}`); // to be asked something
    } else {
        begin(desk, exercise);
    }
}

addEventListener('hashchange', () => location.reload());
start().catch((error) => say(`The exercise can’t be shown: ${error.message}. Reload the page to try again.`));
