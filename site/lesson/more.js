// Everything that is not needed while one turns pages: the plan, the voice, window, slides.
import { createHandedOn } from './handed_on.js';
import { createPlan } from './plan.js';
import { createRecording } from './recording.js';

const page = `
<h2>This room</h2>
<p class="row"><button type="button" id="full">Full screen (F)</button>
<button type="button" id="ring" aria-pressed="false">Ring round the pointer (O)</button>
<button type="button" id="speaker">Speaker’s window</button></p>
<p class="row"><label><input type="checkbox" id="hides"> no values on the truss</label></p>
<h2>Aloud</h2>
<p class="row" id="aloud-row"><button type="button" id="aloud" aria-pressed="false">Read aloud</button>
<label for="rate">Speed</label> <select id="rate"><option value="0.75">slow</option><option value="1" selected>usual</option>
<option value="1.25">fast</option></select></p>
<p id="no-voice" hidden>This browser has no voice; what is said stands in the speaker’s window.</p>
<section id="recording"></section>
<section id="plan"></section>
<section id="handed-on"></section>
<p id="more-says" role="status"></p>`;

export function createMore({ panel, lectern, lesson, link, fullScreen, say }) {
    panel.innerHTML = page;
    const at = (id) => document.getElementById(id);
    const tell = (words) => { at('more-says').textContent = words; };
    at('full').addEventListener('click', fullScreen);
    at('ring').addEventListener('click', () => {
        at('halo').hidden = !at('halo').hidden;
        at('ring').setAttribute('aria-pressed', String(!at('halo').hidden));
    });
    at('speaker').addEventListener('click', () => {
        if (!link.open()) {
            tell('The browser held the window back: allow windows for this page, and try again.');
        }
    });
    at('hides').checked = lesson.plan().values === 'hidden';
    at('hides').addEventListener('change', () => lesson.hideValues(at('hides').checked));
    at('aloud-row').hidden = !lesson.voice.has();
    at('no-voice').hidden = lesson.voice.has();
    at('aloud').addEventListener('click', () => {
        lesson.voice.turn(!lesson.voice.isOn());
        at('aloud').setAttribute('aria-pressed', String(lesson.voice.isOn()));
        lesson.voice.say(lesson.state().spoken);
    });
    at('rate').addEventListener('change', () => lesson.voice.setRate(Number(at('rate').value)));
    createRecording({ place: at('recording'), lectern, lesson, tell });
    createHandedOn({ place: at('handed-on'), lectern, lesson, tell });
    createPlan({ place: at('plan'), lectern, lesson, tell });
    say('');
}
