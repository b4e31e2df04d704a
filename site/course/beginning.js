// Which truss: one that is pasted, opened from a file, made from nothing, or set on this device before.
import { at } from '../element.js';
import { onFiles } from '../taken_files.js';
import { forgetExercise, keptExercises } from './kept.js';

const whole = (id) => Number(at(id).value.trim() || NaN);

export function createBeginning(program, open) {
    const say = (words) => { at('beginning-says').textContent = words; };
    const trying = (work) => async (event) => {
        event?.preventDefault();
        say('');
        try {
            await work();
        } catch (error) {
            say(error.message);
        }
    };

    function keptLine({ title, when, models }) {
        const line = document.createElement('li');
        const again = Object.assign(document.createElement('button'), { type: 'button', textContent: 'Open' });
        const away = Object.assign(document.createElement('button'), { type: 'button', textContent: 'Forget' });
        const says = models.length > 1 ? `${title}, ${models.length} variants, ${when} ` : `${title}, ${when} `;
        again.setAttribute('aria-label', `Open ${title}`);
        away.setAttribute('aria-label', `Forget ${title}`);
        again.addEventListener('click', trying(() => open(models[0].link)));
        away.addEventListener('click', () => {
            forgetExercise(models[0].mark);
            show();
        });
        line.append(says, again, away);
        return line;
    }
    function show() {
        const all = keptExercises();
        at('kept').replaceChildren(...all.map(keptLine));
        at('kept-part').hidden = all.length === 0;
    }

    at('open-form').addEventListener('submit', trying(() => open(at('opened').value.trim())));
    onFiles(at('opened-file'), at('beginning'), ({ text }) => trying(() => open(text))());
    at('form-form').addEventListener('submit', trying(async () => {
        const zeros = at('form-zeros').value.trim();
        const { model } = await program.ask({ do: 'form', joints: whole('form-joints'), held: at('form-held').value,
            seed: at('form-seed').value.trim(), ...(zeros === '' ? {} : { zeros: Number(zeros) }) });
        await open(model);
    }));
    return { show };
}
