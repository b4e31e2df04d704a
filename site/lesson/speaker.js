// The speaker's window: what is said now and next, the time since it was opened, and both ways to turn the page.
const at = (id) => document.getElementById(id);
const channel = new BroadcastChannel(location.hash.slice(1) || 'gusset-lesson');
let since = performance.now();

function show(state) {
    at('says').textContent = '';
    at('all').hidden = false;
    at('here').textContent = state.title;
    at('where').textContent = `${state.now + 1} of ${state.of}`;
    at('spoken').textContent = state.spoken;
    at('next-title').textContent = state.next ? `Next: ${state.next.title}` : 'This is the last one';
    at('next-spoken').textContent = state.next?.spoken ?? '';
    at('back').disabled = state.now === 0;
    at('next').disabled = !state.next;
}

function tick() {
    const seconds = Math.floor((performance.now() - since) / 1000);
    at('clock').textContent = `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

channel.addEventListener('message', ({ data }) => data.state && show(data.state));
channel.postMessage({ ask: 'state' });
const go = (by) => channel.postMessage({ ask: 'go', by });
at('back').addEventListener('click', () => go(-1));
at('next').addEventListener('click', () => go(1));
at('again').addEventListener('click', () => {
    since = performance.now();
    tick();
});
addEventListener('keydown', (event) => {
    const by = { ArrowRight: 1, PageDown: 1, ' ': 1, ArrowLeft: -1, PageUp: -1 }[event.key];
    if (by && !(event.key === ' ' && event.target.matches('button'))) {
        event.preventDefault();
        go(by);
    }
});
setInterval(tick, 250);
