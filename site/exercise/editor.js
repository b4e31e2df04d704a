// Answers in the figure: a press on a member or a support opens its blanks within reach, and what is typed stands there.
// The list of answers stays, and the two follow each other.
import { answerRow } from './answers.js';
import { createPicture } from './picture.js';

// `choice(thing)` may take a press for itself, by returning true. `edited(row)`: a row of the list was changed here.
export function createEditor({ figure, place, exercise, fields, edited, choice }) {
    const members = exercise.members.length;
    let open = []; // pairs of a row in the list and its copy here
    let shown = null;

    const rowsOf = (thing) => (thing < members ? [fields.rowOf(exercise.members[thing].of)]
        : exercise.reactions.filter(({ joint }) => joint === exercise.reactions[thing - members].joint)
            .map(({ of }) => fields.rowOf(of))).filter(Boolean);
    const nameOf = (thing) => (thing < members ? `Member ${exercise.members[thing].label}`
        : `Support at ${exercise.reactions[thing - members].joint}`);
    const thingOf = (row) => {
        const member = exercise.members.findIndex(({ of }) => of === row.of);
        const reaction = exercise.reactions.find(({ of }) => of === row.of);
        return member >= 0 ? member
            : reaction ? members + exercise.reactions.findIndex(({ joint }) => joint === reaction.joint) : null;
    };

    function copy(from, to) {
        const { text, sign } = from.read();
        to.input.value = text;
        to.put(sign);
    }

    function close() {
        place.hidden = true;
        place.replaceChildren();
        picture.light();
        picture.focus(shown);
        open = [];
    }

    function copyOf(row) {
        const own = answerRow({ ...row.made, spoken: `${row.made.spoken}, in the figure`, changed: () => {
            copy(own, row);
            edited(row);
            own.tell(row.fault());
        } });
        copy(row, own);
        own.tell(row.fault());
        own.input.enterKeyHint = 'done';
        return own;
    }

    function press(thing) {
        if (choice(thing)) {
            return;
        }
        const rows = rowsOf(thing);
        if (rows.length === 0) {
            return;
        }
        open = rows.map((row) => [row, copyOf(row)]);
        const done = Object.assign(document.createElement('button'), { type: 'button', textContent: 'Done' });
        done.addEventListener('click', close);
        place.setAttribute('aria-label', nameOf(thing));
        place.replaceChildren(...open.map(([, own]) => own), done);
        place.hidden = false;
        shown = thing;
        picture.light(thing);
        open[0][1].input.focus({ preventScroll: true });
    }

    place.addEventListener('keydown', (event) => {
        if (event.key === 'Escape' || (event.key === 'Enter' && event.target.type === 'text')) {
            event.preventDefault();
            close();
        }
    });

    const picture = createPicture(figure, { nameOf: (thing) => (rowsOf(thing).length > 0 ? nameOf(thing) : ''), press });
    picture.show(exercise.figure);

    // "A_x 0, A_y 36 ↑" at a support, with the letters of its reactions.
    function runsOf(row, index) {
        const name = document.createElement('template');
        name.innerHTML = row.made.label; // made by the program, everything escaped
        const letters = [...name.content.childNodes].map((node) => ({ text: node.textContent, isLow: node.nodeName === 'SUB' }));
        return [...index > 0 ? [{ text: ', ' }] : [], ...letters, { text: ` ${row.words()}` }];
    }

    function write(thing) {
        const written = rowsOf(thing).filter((row) => row.words() !== '');
        picture.write(thing, thing < members ? written.map((row) => ({ text: row.words() })) : written.flatMap(runsOf),
            thing >= members);
    }

    return {
        light: picture.light,
        // After a change of the row in the list, or of all.
        follow(row) {
            open.filter(([listed, own]) => listed === row && own.input !== document.activeElement)
                .forEach(([listed, own]) => copy(listed, own));
            (row ? [row] : fields.forceRows).map(thingOf).filter((thing) => thing !== null).forEach(write);
        },
    };
}
