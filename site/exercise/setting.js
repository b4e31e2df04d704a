// The instructor's page: what is asked about this truss, and the link for students.

const asks = [
    ['reactions', 'The reactions', true],
    ['forces', 'The force in members', true],
    ['zero-members', 'Which members carry nothing', false],
    ['determinacy', 'The degree of indeterminacy', false],
    ['displacement', 'A displacement', false],
];

const page = `
<h2 tabindex="-1" id="setting-title">Set an exercise</h2>
<p class="small">Choose what is asked about this truss. Students get a link; nothing is sent anywhere.
The link does not show the answers, but whoever has the truss can have it solved.</p>
<form id="setting-form" autocomplete="off">
<fieldset><legend>What is asked</legend><div id="asks"></div>
<p class="row"><label for="which">Members, if not all of them</label>
<input id="which" type="text" placeholder="A-B, C-D" spellcheck="false"></p>
<p class="row"><label for="moves">Joint of the displacement</label> <select id="moves"></select>
<select id="axis" aria-label="Direction of the displacement"><option value="y">vertical</option>
<option value="x">horizontal</option></select></p></fieldset>
<fieldset><legend>How it is answered</legend>
<p class="row"><label for="percent">Right within</label>
<input id="percent" type="text" inputmode="decimal" value="1" size="4"> %</p>
<p class="row"><label for="hints-allowed">Hints</label> <select id="hints-allowed">
<option value="terms">body, equation and numbers</option><option value="equations">body and equation</option>
<option value="bodies">which body only</option><option value="none">none</option></select></p>
<p><label for="text">What you want to say (optional)</label>
<textarea id="text" rows="2"></textarea></p></fieldset>
<p class="row"><button class="primary" type="submit">Make the link</button></p>
</form>
<p id="setting-says" role="status"></p>
<div id="made" hidden>
<p><a id="made-link" href="#">Open the exercise as a student sees it</a></p>
<p class="row"><button id="made-copy" type="button">Copy the link</button>
<button id="made-save" type="button">Save it as a file</button></p>
</div>`;

const at = (id) => document.getElementById(id);

function addAsk([what, words, isUsual]) {
    const box = Object.assign(document.createElement('input'), { type: 'checkbox', value: what, checked: isUsual });
    const label = document.createElement('label');
    label.append(box, document.createTextNode(` ${words}`));
    const line = document.createElement('p');
    line.append(label);
    at('asks').append(line);
}

// "A-B, C-D": pairs of labels, which may have hyphens of their own.
function membersNamed(text, members) {
    return text.split(/[,;]/).map((name) => name.trim()).filter(Boolean).map((name) => {
        const found = members.find(({ of, label }) => of === name || label === name);
        if (!found) {
            throw new Error(`There is no member ${name}.`);
        }
        return found.ends;
    });
}

function exerciseOf(truss) {
    const chosen = [...at('asks').querySelectorAll('input:checked')].map((box) => box.value);
    const members = membersNamed(at('which').value, truss.members);
    const ask = chosen.map((what) => {
        if (what === 'forces' && members.length > 0) {
            return { what, members };
        }
        return what === 'displacement' ? { what, joint: at('moves').value, axis: at('axis').value } : what;
    });
    const percent = Number(at('percent').value.replace(',', '.'));
    if (!(percent >= 0 && percent <= 100)) {
        throw new Error('“Right within” must be a number of per cent, from 0 to 100.');
    }
    const loads = Object.fromEntries(['case', 'combination'].filter((key) => key in truss).map((key) => [key, truss[key]]));
    return { text: at('text').value, ...loads, ask, tolerance: { percent }, hints: at('hints-allowed').value };
}

export function showSetting(desk, truss) {
    const setting = at('setting');
    setting.innerHTML = page;
    setting.hidden = false;
    at('title').textContent = truss.title || 'A truss without a title';
    const figure = document.createElement('figure');
    figure.innerHTML = truss.figure; // made by the program, everything escaped
    at('setting-title').after(figure);
    asks.forEach(addAsk);
    at('moves').replaceChildren(...truss.joints.map((joint) => new Option(joint)));
    at('setting-title').focus();
    let made = null;

    function make() {
        const exercise = exerciseOf(truss);
        const reply = desk({ do: 'set', model: truss.model, exercise });
        if (reply.faults) {
            throw new Error(reply.faults.join(' '));
        }
        made = reply;
        at('made-link').href = `#${reply.link}`;
        at('made').hidden = false;
        at('setting-says').textContent = 'The exercise is made.';
    }

    at('setting-form').addEventListener('submit', (event) => {
        event.preventDefault();
        at('made').hidden = true;
        try {
            make();
        } catch (error) {
            at('setting-says').textContent = error.message;
        }
    });
    at('setting-form').addEventListener('change', () => { at('made').hidden = true; });
    at('made-copy').addEventListener('click', async () => {
        try {
            await navigator.clipboard.writeText(at('made-link').href);
            at('setting-says').textContent = 'The link is copied.';
        } catch {
            at('setting-says').textContent = at('made-link').href;
        }
    });
    at('made-save').addEventListener('click', () => {
        const link = document.createElement('a');
        link.href = URL.createObjectURL(new Blob([made.model], { type: 'application/json' }));
        link.download = 'exercise.json';
        link.click();
    });
}
