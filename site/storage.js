// The work in local storage: two copies written in turn, so that one is whole whatever happens during a
// write. Each begins with a number that grows; the program finds out itself whether a copy is damaged.
const slots = ['gusset.work.0', 'gusset.work.1'];

function numberOf(text) {
    const number = Number.parseInt(text ?? '', 10);
    return Number.isFinite(number) ? number : -1;
}

function copies() {
    try {
        return slots
            .map((slot) => ({ slot, text: localStorage.getItem(slot) }))
            .sort((one, other) => numberOf(other.text) - numberOf(one.text));
    } catch {
        return [];
    }
}

// The newer copy and the older one, without their numbers; empty texts for none.
export function readWork() {
    const texts = copies().map(({ text }) => (text ?? '').replace(/^\d+ /, ''));
    return [texts[0] ?? '', texts[1] ?? ''];
}

export function storeWork(text) {
    try {
        const [newer, older] = copies();
        localStorage.setItem(older.slot, `${numberOf(newer.text) + 1} ${text}`);
        return true;
    } catch {
        return false;
    }
}
