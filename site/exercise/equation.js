// An equation that the student builds: each force on the body is in it or not, with or against the axis, times nothing, a
// sine, a cosine or an arm.

const at = (id) => document.getElementById(id);
const signs = [['no', 'not in it', 0], ['+', 'positive', 1], ['−', 'negative', -1]];
const multipliers = [['whole', 'as it is'], ['sine', '· sin α'], ['cosine', '· cos α']];

let lastName = 0; // of groups of buttons, which must differ

function choiceOf(force) {
    const group = `sign-${lastName += 1}`;
    const choice = document.createElement('span');
    choice.className = 'choice';
    choice.setAttribute('role', 'radiogroup');
    choice.setAttribute('aria-label', `${force}: sign`);
    signs.forEach(([text, name, value]) => {
        const radio = Object.assign(document.createElement('input'), { type: 'radio', name: group, value: String(value) });
        radio.checked = value === 0;
        radio.setAttribute('aria-label', name);
        const label = document.createElement('label');
        label.append(radio, Object.assign(document.createElement('span'), { textContent: text }));
        choice.append(label);
    });
    return choice;
}

function termRow(force, takesMoments, changed) {
    const row = Object.assign(document.createElement('div'), { className: 'answer term' });
    const of = Object.assign(document.createElement('span'), { className: 'force', textContent: force });
    const choice = choiceOf(force);
    const by = document.createElement(takesMoments ? 'input' : 'select');
    by.setAttribute('aria-label', takesMoments ? `${force}: arm` : `${force}: times`);
    if (takesMoments) {
        Object.assign(by, { type: 'text', inputMode: 'decimal', placeholder: 'arm' });
    } else {
        by.append(...multipliers.map(([value, text]) => new Option(text, value)));
    }
    const says = Object.assign(document.createElement('span'), { className: 'verdict' });
    row.append(of, choice, by, says);
    row.addEventListener('input', () => {
        says.textContent = '';
        changed();
    });
    const term = () => {
        const sign = Number(choice.querySelector(':checked').value);
        return takesMoments ? { sign, by: 'arm', arm: Number(by.value.replace(',', '.')) || 0 } : { sign, by: by.value };
    };
    return Object.assign(row, { term, says });
}

// `ask` takes a request without the model and the answers, and adds them.
export function createEquation(ask, joints) {
    let rows = [];
    const body = at('body');
    const sum = at('sum');
    at('about').replaceChildren(...joints.map((joint) => new Option(joint)));

    function show() {
        const takesMoments = sum.value === 'moments';
        at('about').hidden = at('about-label').hidden = !takesMoments;
        at('judge-says').textContent = '';
        rows = (ask({ do: 'body', joint: body.value }).forces ?? [])
            .map((force) => termRow(force, takesMoments, () => { at('judge-says').textContent = ''; }));
        at('terms').replaceChildren(...rows);
    }
    [body, sum].forEach((one) => one.addEventListener('change', show));
    at('judge').addEventListener('click', () => {
        const reply = ask({ do: 'equation', joint: body.value, sum: sum.value, about: at('about').value,
            terms: rows.map((row) => row.term()) });
        (reply.terms ?? []).forEach(({ says }, index) => { rows[index].says.textContent = says; });
        const wrong = (reply.terms ?? []).filter(({ right }) => !right).length;
        at('judge-says').textContent = reply.faults?.[0] ?? (reply.says || `${wrong} of ${rows.length} forces need another look.`);
    });
    show();
}
