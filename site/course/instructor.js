// The instructor's page: a question about a truss, its variants, what is handed out, and marking. Nothing leaves the
// device but what the instructor gives out.
import { createBeginning } from './beginning.js';
import { at } from '../element.js';
import { keepExercise } from './kept.js';
import { createMarking } from './marking.js';
import { createPapers } from './papers.js';
import { programIn } from '../in_worker.js';
import { createQuestions } from './questions.js';
import { createSeries } from './series.js';
import { copied, saveFile } from '../saving.js';

const exercisePage = new URL('../exercise/', location.href).href;
const parts = ['beginning', 'asking', 'series', 'papers', 'marking'];

const program = programIn(new URL('worker.js', import.meta.url));
let truss = null; // what the program said of it when it was opened
let isChanged = false; // the question of the form, since the truss was opened
let made = null; // the exercise, once there is one
let series = null; // its variants, if there are any

const titleOf = () => truss?.title || 'A truss without a title';

function showPart(name, takesFocus = true) {
    parts.forEach((part) => { at(part).hidden = part !== name; });
    at('figure-place').hidden = !truss || name !== 'asking';
    document.querySelectorAll('#parts button').forEach((button) => {
        if (button.dataset.part === name) {
            button.setAttribute('aria-current', 'page');
        } else {
            button.removeAttribute('aria-current');
        }
        button.disabled = !truss && ['asking', 'series', 'papers'].includes(button.dataset.part);
    });
    papers.changed();
    marking.show(Boolean(truss));
    if (takesFocus) {
        at(name).querySelector('h2').focus();
    }
}

// The members are the first lines of a figure, in the order of the list: each gets a wide line over it to tap on.
function showFigure(shown) {
    at('figure').innerHTML = shown.figure; // made by the program, everything escaped
    const svg = at('figure').querySelector('svg');
    at('figure-says').textContent = svg ? 'Tap members to ask for these alone.' : 'This truss is too large to be drawn here.';
    [...svg?.querySelectorAll('path[class^=line]') ?? []].slice(0, shown.members.length).forEach((line, index) => {
        const over = line.cloneNode();
        over.setAttribute('class', 'member');
        over.dataset.of = shown.members[index].of;
        over.addEventListener('click', () => {
            const isIn = questions.toggle(shown.members[index]);
            at('figure-says').textContent = isIn ? `${shown.members[index].label} is asked for.`
                : `${shown.members[index].label} is not asked for.`;
        });
        svg.append(over);
    });
    markChosen();
}

function markChosen() {
    const chosen = questions.chosen();
    at('figure').querySelectorAll('.member').forEach((line) => line.classList.toggle('is-asked', chosen.has(line.dataset.of)));
}

const questions = createQuestions(() => {
    isChanged = true;
    made = null;
    series = null;
    at('made').hidden = true;
    at('setting-says').textContent = '';
    seriesPart.clear();
    markChosen();
});

function keep(variants) {
    const models = variants ?? [{ link: made.link, mark: made.mark }];
    return keepExercise({ title: titleOf(), when: new Date().toISOString().slice(0, 10), models });
}

// The exercise of the form, made now unless nothing has changed since. One that was opened, such as a variant, stays
// the same until its question is changed.
async function exercise() {
    if (!made) {
        const isOpened = truss.exercise && !isChanged;
        made = await program.ask({ do: 'set', model: truss.model, ...(isOpened ? {} : { exercise: questions.exercise() }) });
        at('made-link').href = `${exercisePage}#${made.link}`;
        at('made').hidden = false;
        keep();
    }
    return made;
}

async function open(model) {
    const opened = await program.ask({ do: 'open', model });
    truss = opened;
    made = null;
    series = null;
    at('title').textContent = titleOf();
    document.title = `Gusset: ${titleOf()}`;
    at('made').hidden = true;
    at('setting-says').textContent = '';
    questions.show(truss);
    isChanged = false;
    seriesPart.show(truss);
    showFigure(truss);
    seriesPart.clear();
    showPart('asking');
}

const seriesPart = createSeries(program, exercise, exercisePage, (variants) => {
    series = variants;
    if (series && !keep(series)) {
        at('series-says').textContent += ' This browser keeps nothing: save the files.';
    }
});
const models = async () => series ?? [{ ...await exercise(), variant: 0 }];
const papers = createPapers(program, models, exercisePage, () => (series ? `${series.length} variants` : 'one exercise'));
const marking = createMarking(program, async () => (truss ? models() : []));
const beginning = createBeginning(program, open);

at('setting-form').addEventListener('submit', async (event) => {
    event.preventDefault();
    try {
        await exercise();
        at('setting-says').textContent = 'The exercise is made.';
    } catch (error) {
        at('setting-says').textContent = error.message;
    }
});
at('made-copy').addEventListener('click', async () => {
    const link = at('made-link').href;
    at('setting-says').textContent = await copied(link) ? 'The link is copied.' : link;
});
at('made-save').addEventListener('click', () => saveFile('exercise.json', made.model, 'application/json'));
at('parts').addEventListener('click', ({ target }) => {
    if (target.dataset.part === 'beginning') {
        beginning.show();
    }
    if (target.dataset.part) {
        showPart(target.dataset.part);
    }
});

async function start() {
    const fragment = location.hash;
    at('parts').hidden = false;
    at('course').hidden = false;
    at('says').textContent = '';
    if (fragment.startsWith('#a=')) {
        showPart('marking', false);
        await marking.take(location.href);
    } else if (fragment.length > 1) {
        try {
            await open(fragment);
        } catch (error) {
            beginning.show();
            showPart('beginning', false);
            at('beginning-says').textContent = error.message;
        }
    } else {
        beginning.show();
        showPart('beginning', false);
    }
    document.documentElement.dataset.ready = '';
}

addEventListener('hashchange', () => location.reload());
start().catch((error) => { at('says').textContent = `The page can’t be shown: ${error.message} Reload it to try again.`; });
