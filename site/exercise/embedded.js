// The exercise in a frame of another page. The address says how: `?theme=dark` (or light, sun), `?show=truss` for the
// truss alone, and `?frame=https://school.example` names the origin of the page around it. To that origin alone, and
// only when the student presses the button that names it, the answers are posted: never to another, and never
// without. As nobody is told whether a message has arrived, that page confirms it. The help describes the messages
// (#embedding).
const wishes = new URLSearchParams(location.search);
const page = document.documentElement;

export const showsTrussAlone = wishes.get('show') === 'truss';
if (['light', 'dark', 'sun'].includes(wishes.get('theme'))) {
    page.dataset.theme = wishes.get('theme');
}
page.classList.toggle('is-framed', window.parent !== window);

// The origin that the address names, if it is one and no more: "https://school.example:8080".
function namedOrigin() {
    try {
        const { origin, protocol } = new URL(wishes.get('frame'));
        return origin === wishes.get('frame') && /^https?:$/.test(protocol) ? origin : null;
    } catch {
        return null;
    }
}

// `written` gives the answers as they are handed in, `right` how many of them are right so far, or null where the
// exercise does not check.
export function embed({ mark, variant }, written, right) {
    const origin = namedOrigin();
    if (window.parent === window || !origin) {
        return;
    }
    const { host } = new URL(origin);
    const say = (words) => { document.getElementById('review-says').textContent = words; };
    const post = (message) => window.parent.postMessage(message, origin);
    const button = Object.assign(document.createElement('button'),
        { type: 'button', className: 'primary', id: 'hand-over', textContent: `Hand in to ${host}` });
    button.addEventListener('click', () => {
        const { answers } = written();
        post({ type: 'gusset-answers', version: 1, exercise: mark, variant, code: JSON.parse(answers).code,
            answers: JSON.parse(answers), ...(right() ?? {}) });
        say(`Given to ${host}, which has not confirmed it: if it does not, copy the link as well.`);
    });
    addEventListener('message', (event) => {
        if (event.origin === origin && event.source === window.parent && event.data?.type === 'gusset-received') {
            say(`${host} has received your answers.`);
        }
    });
    document.getElementById('copy').before(button);
    new ResizeObserver(() => post({ type: 'gusset-size', version: 1, height: Math.ceil(page.getBoundingClientRect().height) }))
        .observe(document.body);
}
