// The groups of members that get one profile each: by role, or as members are picked, by tap or by name.
import { at, element } from '../element.js';

const newGroup = 'a new group';
const noGroup = 'none: they keep their sections';

// `changed` is called when the groups are no more what they were.
export function createGroups(changed) {
    let truss = null;
    let groups = []; // { name, members: [indices] }
    let isOwn = false;

    const labelOf = (index) => truss.members[index].label;
    const plain = (name) => name.replace(/[\s–-]/g, '').toLowerCase();
    const isNamed = ({ of, label, ends: [a, b] }, name) => [of, label, `${b}${a}`].some((own) => plain(own) === plain(name));

    // The members that the field names, and the first name that no member has.
    function picked() {
        const parts = at('picked').value.split(/[,;]/).map((name) => name.trim()).filter((name) => name !== '');
        const members = new Set();
        for (let from = 0, to; from < parts.length; from = to) {
            to = parts.length; // the longest name first: joints may have commas in theirs
            const indexOf = (end) => truss.members.findIndex((member) => isNamed(member, parts.slice(from, end).join(',')));
            while (to > from && indexOf(to) < 0) {
                to -= 1;
            }
            if (to === from) {
                return { members: [...members], unknown: parts[from] };
            }
            members.add(indexOf(to));
        }
        return { members: [...members] };
    }
    function mark() {
        const chosen = new Set(picked().members);
        at('figure').querySelectorAll('.member').forEach((line) => line.classList.toggle('is-asked', chosen.has(Number(line.dataset.index))));
    }
    function list() {
        at('groups').replaceChildren(...groups.map(({ name, members }) => {
            const shown = members.slice(0, 12).map(labelOf).join(', ');
            return element('li', {}, element('b', { textContent: name }),
                `: ${members.length > 12 ? `${shown} … ${members.length} members` : shown}`);
        }));
        at('into').replaceChildren(...[...groups.map(({ name }) => name), newGroup, noGroup]
            .map((name) => element('option', { textContent: name })));
    }
    function freeName() {
        let number = 1;
        while (groups.some(({ name }) => name === `group ${number}`)) {
            number += 1;
        }
        return `group ${number}`;
    }
    function put() {
        const { members, unknown } = picked();
        if (unknown !== undefined) {
            return `There is no member ${unknown}. Name members by their joints, with commas between them.`;
        }
        if (members.length === 0) {
            return 'Tap members in the drawing first, or type their names.';
        }
        const into = at('into').value;
        const rest = groups.map(({ name, members: all }) => ({ name, members: all.filter((index) => !members.includes(index)) }));
        const name = into === newGroup ? freeName() : into;
        if (into !== noGroup) {
            const target = rest.find((group) => group.name === name) ?? rest[rest.push({ name, members: [] }) - 1];
            target.members = [...target.members, ...members].sort((a, b) => a - b);
        }
        groups = rest.filter(({ members: left }) => left.length > 0);
        isOwn = true;
        at('picked').value = '';
        list();
        mark();
        changed();
        return into === noGroup ? 'They keep the sections they have.' : `They are in ${name}.`;
    }

    at('picked').addEventListener('input', mark);
    at('put').addEventListener('click', () => { at('figure-says').textContent = put(); });
    at('by-role').addEventListener('click', () => {
        groups = truss.groups;
        isOwn = false;
        list();
        changed();
    });

    return {
        // Groups that were picked stay while the truss has the same members.
        show(opened) {
            const same = truss?.members.length === opened.members.length &&
                opened.members.every(({ of }, index) => of === truss.members[index].of);
            truss = opened;
            if (!same) {
                isOwn = false;
                at('picked').value = '';
            }
            groups = isOwn ? groups : truss.groups;
            list();
            mark();
        },
        toggle(index) {
            const { members } = picked();
            const others = members.filter((each) => each !== index);
            at('picked').value = (others.length < members.length ? others : [...members, index]).map(labelOf).join(', ');
            at('picked').closest('details').open = true;
            mark();
        },
        // For a request: nothing while they are by role.
        wish: () => (isOwn ? { groups } : {}),
    };
}
