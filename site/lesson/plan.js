// The plan of a lesson: which derivations in which order, steps left out, remarks and questions between them. It is
// part of the model, and of the lesson's link.
import { copied, saveFile } from '../saving.js';

const kinds = [
    ['forces', 'all forces'], ['member', 'one member'], ['section', 'a section'], ['displacement', 'a displacement'],
    ['force-method', 'the force method'], ['polygon', 'the force polygon'], ['influence', 'an influence line'],
];

function optionsOf(list, chosen) {
    return list.map(([value, text]) => new Option(text, value, false, value === chosen));
}

function nameOf(item) {
    const kind = kinds.find(([value]) => value === item.of)[1];
    const what = item.member ? item.member.join('') : item.members ? item.members.map((ends) => ends.join('')).join(', ')
        : item.joint ? `of ${item.joint}, ${item.axis === 'x' ? 'horizontal' : 'vertical'}` : '';
    return `${kind} ${what}`.trim();
}

const page = `
<h2>Plan</h2>
<ol id="plan-items"></ol>
<p class="row"><label for="add-kind">Add</label> <select id="add-kind"></select>
<input type="text" id="add-what" size="14" spellcheck="false" aria-label="Which" placeholder="A-B">
<button type="button" id="add">Add</button></p>
<p class="row"><button type="button" id="leave-out">Leave this step out</button>
<button type="button" id="join">Join this step to the one before</button>
<button type="button" id="all-steps">Show all steps again, each alone</button></p>
<div id="joints-in-order" hidden><h3>Joints in their order</h3>
<ol id="joint-order"></ol>
<p class="row"><button type="button" id="usual-order">In the usual order</button></p></div>
<p><label for="remark">Before this step: say, or ask</label><textarea id="remark" rows="2"></textarea></p>
<p class="row"><label for="ask-member">Ask the force in</label> <select id="ask-member"></select>
<button type="button" id="put">Put it before this step</button></p>
<p class="row"><button type="button" id="copy-lesson">Copy the lesson’s link</button>
<button type="button" id="save-lesson">Save it as a file</button></p>`;

// "A-B" or "AB", "A-B,C-D", "C:y", "A,B,C of B-D": what an item is about, as typed. `members` are pairs of labels.
function itemOf(kind, typed, members) {
    const ends = (text) => {
        const name = text.trim();
        const written = members.find((pair) => name === pair.join('') || name === [...pair].reverse().join(''));
        return written ?? name.split('-').map((label) => label.trim());
    };
    if (kind === 'member') {
        return { of: kind, member: ends(typed) };
    }
    if (kind === 'section') {
        return { of: kind, members: typed.split(',').map(ends) };
    }
    if (kind === 'displacement') {
        const [joint, axis = 'y'] = typed.split(':').map((text) => text.trim());
        return { of: kind, joint, axis };
    }
    if (kind === 'influence') {
        const [path, member = ''] = typed.split(/\s+of\s+/);
        return { of: kind, path: path.split(',').map((label) => label.trim()), member: ends(member) };
    }
    return { of: kind };
}

const placeholders = { member: 'A-B', section: 'A-B, C-D, E-F', displacement: 'C:y', influence: 'A,B,C of B-D' };

export function createPlan({ place, lectern, lesson, tell }) {
    place.innerHTML = page;
    const at = (id) => document.getElementById(id);
    at('add-kind').replaceChildren(...optionsOf(kinds, 'forces'));
    const needsMore = () => {
        const placeholder = placeholders[at('add-kind').value];
        at('add-what').hidden = placeholder === undefined;
        at('add-what').placeholder = placeholder ?? '';
    };
    at('add-kind').addEventListener('change', needsMore);
    needsMore();

    const copy = () => structuredClone(lesson.plan());
    function use(plan) {
        const reply = lectern({ do: 'plan', plan });
        if (reply.faults) {
            tell(reply.faults.join(' '));
            return;
        }
        if (lesson.change(reply)) {
            history.replaceState(null, '', `#${reply.link}`);
            tell('');
            show();
        }
    }
    function show() {
        const { shows } = lesson.plan();
        at('plan-items').replaceChildren(...shows.map((item, i) => {
            const entry = document.createElement('li');
            entry.textContent = `${nameOf(item)} `;
            const button = (text, label, act, disabled) => {
                const made = Object.assign(document.createElement('button'), { type: 'button', textContent: text, disabled });
                made.setAttribute('aria-label', `${label}: ${nameOf(item)}`);
                made.addEventListener('click', () => {
                    const plan = copy();
                    act(plan.shows);
                    use(plan);
                });
                return made;
            };
            entry.append(
                button('↑', 'Earlier', (list) => list.splice(i - 1, 2, list[i], list[i - 1]), i === 0), ' ',
                button('×', 'Remove', (list) => list.splice(i, 1), shows.length === 1));
            return entry;
        }));
        showJoints();
        at('ask-member').replaceChildren(new Option('nothing', ''),
            ...lesson.opened().members.map((ends) => new Option(ends.join(''), JSON.stringify(ends))));
    }
    const here = () => {
        const { place: { item }, subject } = lesson.state();
        return { item, subject };
    };
    at('add').addEventListener('click', () => {
        const plan = copy();
        plan.shows.push(itemOf(at('add-kind').value, at('add-what').value, lesson.opened().members));
        use(plan);
    });
    at('leave-out').addEventListener('click', () => {
        const { item, subject } = here();
        const plan = copy();
        plan.shows[item].without = [...plan.shows[item].without ?? [], subject];
        use(plan);
    });
    at('all-steps').addEventListener('click', () => {
        const plan = copy();
        plan.shows.forEach((item) => { delete item.without; delete item.joined; });
        use(plan);
    });
    at('join').addEventListener('click', () => {
        const { item, subject } = here();
        if (lesson.opened().lessons[item].steps[0].subject === subject) {
            tell('The first step has none before it.');
            return;
        }
        const plan = copy();
        plan.shows[item].joined = [...plan.shows[item].joined ?? [], subject];
        use(plan);
    });
    // The joints as the derivation on the stage takes them.
    function jointsTaken() {
        const { item } = here();
        const { of, order = [] } = lesson.plan().shows[item];
        const taken = lesson.opened().lessons[item].joints ?? [];
        return { item, joints: ['forces', 'member'].includes(of) ? taken : [], isOwn: order.length > 0 };
    }
    function showJoints() {
        const { item, joints, isOwn } = jointsTaken();
        at('joints-in-order').hidden = joints.length < 2;
        at('usual-order').disabled = !isOwn;
        at('joint-order').replaceChildren(...joints.map((joint, i) => {
            const entry = document.createElement('li');
            const earlier = Object.assign(document.createElement('button'), { type: 'button', textContent: '↑', disabled: i === 0 });
            earlier.setAttribute('aria-label', `Earlier: joint ${joint}`);
            earlier.addEventListener('click', () => {
                const plan = copy();
                plan.shows[item].order = [...joints.slice(0, i - 1), joint, joints[i - 1]];
                use(plan);
            });
            entry.append(`joint ${joint} `, earlier);
            return entry;
        }));
    }
    at('usual-order').addEventListener('click', () => {
        const plan = copy();
        delete plan.shows[here().item].order;
        use(plan);
    });
    at('put').addEventListener('click', () => {
        const { item, subject } = here();
        const plan = copy();
        const pauses = (plan.shows[item].pauses ?? []).filter(({ before }) => before !== subject);
        const says = at('remark').value.trim();
        const asks = at('ask-member').value ? JSON.parse(at('ask-member').value) : undefined;
        if (says !== '' || asks) {
            pauses.push({ before: subject, ...(says && { says }), ...(asks && { asks }) });
        }
        plan.shows[item].pauses = pauses;
        use(plan);
    });
    at('copy-lesson').addEventListener('click', async () =>
        tell(await copied(location.href) ? 'The link is copied.' : location.href));
    at('save-lesson').addEventListener('click', () => {
        saveFile('lesson.json', lesson.model(), 'application/json');
        tell('Saved as lesson.json.');
    });
    at('more-open').addEventListener('click', show); // it may be another derivation's turn by now
    show();
}
