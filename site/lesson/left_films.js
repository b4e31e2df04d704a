// The films that were recorded and not yet deleted, by what is noted of them: they are found again after the page was
// closed in the midst.
import { createKeeper } from './keeper.js';
import { durationBytes } from './webm.js';

const noteKey = 'gusset.recording';
const lockName = 'gusset.recording';

export const nameOf = (number) => `recording-${number}`;

// Each { number, type, seconds, shown, durationAt }.
export function noted() {
    try {
        return JSON.parse(localStorage.getItem(noteKey)) ?? [];
    } catch {
        return [];
    }
}

export function note(film) {
    try {
        localStorage.setItem(noteKey, JSON.stringify([...noted().filter(({ number }) => number !== film.number), film]));
    } catch {
        // then it is not found again, but can be saved as long as the page is open
    }
}

export async function forget(number) {
    const keeper = await createKeeper(nameOf(number));
    await keeper.cut(0);
    await keeper.rest();
    localStorage.setItem(noteKey, JSON.stringify(noted().filter((film) => film.number !== number)));
}

// A film that was left, with its length in its head; null if nothing of it is there.
export async function found(film) {
    const keeper = await createKeeper(nameOf(film.number));
    if (film.durationAt !== null) {
        await keeper.patch(film.durationAt, durationBytes(1000 * film.seconds)).catch(() => {});
    }
    await keeper.rest();
    const blob = await keeper.film();
    return blob.size > 0 ? { ...film, blob: async () => new Blob([await keeper.film()], { type: film.type.split(';')[0] }) } : null;
}

// Whether this tab may record: one at a time does, as there is one place for a film. It stays so until the tab ends.
let hasPlace = false;
export function takePlace() {
    if (hasPlace || !navigator.locks) {
        return Promise.resolve(true);
    }
    return new Promise((resolve) => {
        navigator.locks.request(lockName, { ifAvailable: true }, (lock) => {
            hasPlace = lock !== null;
            resolve(hasPlace);
            return lock && new Promise(() => {});
        }).catch(() => resolve(false));
    });
}
