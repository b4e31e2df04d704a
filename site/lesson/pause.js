// What an author put between two steps: a remark, or a force that has to be tried before the lesson goes on.
const at = (id) => document.getElementById(id);

export function createPause(lectern, opened, goOn) {
    let asked = -1; // index of a member
    const tried = new Set(); // of pauses, by what they ask and say
    let key = '';

    function show(pause) {
        at('pause').hidden = !pause;
        if (!pause) {
            return;
        }
        const { members, forceUnit } = opened();
        at('pause-says').textContent = pause.says ?? '';
        asked = pause.asks ? members.findIndex((ends) => ends.every((label) => pause.asks.includes(label))) : -1;
        at('pause-ask').hidden = asked < 0;
        key = JSON.stringify(pause);
        if (asked >= 0) {
            at('pause-question').textContent = opened().questions[asked];
            at('pause-unit').textContent = forceUnit;
            at('pause-typed').value = '';
            document.querySelectorAll('[name="pause-sense"]').forEach((input) => { input.checked = false; });
            at('pause-reply').textContent = '';
        }
    }
    at('pause').addEventListener('submit', (event) => {
        event.preventDefault();
        const sense = document.querySelector('[name="pause-sense"]:checked')?.value ?? '';
        const typed = sense === '0' ? '0' : `${at('pause-typed').value.trim()} ${sense}`.trim();
        if (typed === '') {
            at('pause-reply').textContent = 'Type a size and choose T, C or 0.';
            return;
        }
        const reply = lectern({ do: 'answer', member: asked, typed });
        if (reply.faults) {
            at('pause-reply').textContent = reply.faults.join(' ');
            return;
        }
        tried.add(key);
        at('pause-reply').textContent = reply.right ? 'Right. Go on.' : 'Not this. Try once more, or go on and see how it is found.';
    });
    at('pause-aloud').addEventListener('click', () => {
        tried.add(key);
        goOn();
    });
    return {
        show,
        isDone: () => asked < 0 || tried.has(key),
        insist() {
            at('pause-reply').textContent = 'Try it first: a size and T, C or 0.';
            at('pause-typed').focus();
        },
    };
}
