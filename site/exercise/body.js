// The free body that the student works on: a joint, the whole truss, or the part beside a cut; drawn with the forces that
// act on it.
import { createPicture } from './picture.js';

const at = (id) => document.getElementById(id);
const section = '§'; // the choice of a cut, which can't be a joint's label in the list

function choiceButton({ type, name, text, spoken, value }) {
    const input = Object.assign(document.createElement('input'), { type, name, value });
    if (spoken) {
        input.setAttribute('aria-label', spoken);
    }
    const label = document.createElement('label');
    label.append(input, Object.assign(document.createElement('span'), { textContent: text }));
    return label;
}

// `ask` takes a request without the model and the answers, and adds them. `changed()`: there is another body.
// `light(things)` lights members in the figure. `press(force)`: a force was picked on the drawing.
export function createBody({ ask, exercise, changed, light, press }) {
    const select = at('body');
    const joints = new Map(exercise.joints.map((joint, index) => [String(index), joint]));
    select.replaceChildren(new Option('the whole truss', ''),
        ...[...joints].map(([value, joint]) => new Option(`joint ${joint}`, value)), new Option('a part, cut off', section));
    at('cut').replaceChildren(...exercise.members.map(({ of, label }) =>
        choiceButton({ type: 'checkbox', text: label, spoken: `Cut ${label}`, value: of })));
    let forces = [];

    const isCut = () => select.value === section;
    const boxes = () => [...at('cut').querySelectorAll('input')];
    const cut = () => boxes().filter((box) => box.checked).map((box) => box.value);
    const part = () => at('parts').querySelector(':checked')?.value ?? '';
    const chosen = () => (isCut() ? { cut: cut(), part: part() }
        : select.value === '' ? {} : { joint: joints.get(select.value) });
    const isBody = () => !isCut() || part() !== '';

    // On a wide page the drawing stands below the truss, else above the equation, where it stays in sight.
    const isWide = matchMedia('(width >= 56rem)');
    function move() {
        if (isWide.matches) {
            at('sight').append(at('free-body'));
        } else {
            at('help').after(at('free-body'));
        }
    }
    move();
    isWide.addEventListener('change', () => {
        move();
        draw();
    });

    const picture = createPicture(at('free-body'), { nameOf: (force) => forces[force].says, press });

    function lightCut() {
        light(...(isCut() ? boxes().flatMap((box, index) => (box.checked ? [index] : [])) : []));
    }

    function draw() {
        const reply = isBody() ? ask({ do: 'body', ...chosen(), narrow: innerWidth < 560 }) : {};
        forces = reply.forces ?? [];
        at('free-body').hidden = !reply.figure;
        picture.show(reply.figure ?? '');
    }

    function showCut() {
        lightCut();
        const { says, parts } = ask({ do: 'cut', cut: cut() });
        at('cut-says').textContent = says;
        at('parts').replaceChildren(...parts.map((one) =>
            choiceButton({ type: 'radio', name: 'part', text: one.says, value: one.part })));
    }

    function show() {
        at('cutting').hidden = !isCut();
        draw();
        changed();
    }
    select.addEventListener('change', () => {
        lightCut();
        if (isCut()) {
            showCut();
        }
        show();
    });
    at('cut').addEventListener('change', () => {
        showCut();
        show();
    });
    at('parts').addEventListener('change', () => {
        at('cut-says').textContent = ask({ do: 'cut', ...chosen() }).says;
        show();
    });

    draw();
    return {
        chosen,
        isBody,
        forces: () => forces,
        light: picture.light,
        redraw: draw,
        // A press on a member in the figure belongs to the cut while one is being made.
        takesMember(member) {
            if (isCut() && member < exercise.members.length) {
                boxes()[member].click();
                return true;
            }
            return false;
        },
    };
}
