// The exercises that were set on this device, newest first, with the students' names where there is a class list: they
// never leave it. Storage may be refused; then nothing is kept.
const name = 'gusset-course';
const most = 20;

export function keptExercises() {
    try {
        return JSON.parse(localStorage.getItem(name)) ?? [];
    } catch {
        return [];
    }
}

function store(all) {
    try {
        localStorage.setItem(name, JSON.stringify(all));
        return true;
    } catch {
        return false;
    }
}

// { title, models: [{ link, mark, variant, student }] }; one with the same first exercise is replaced. False if it
// could not be kept.
export function keepExercise(exercise) {
    const others = keptExercises().filter(({ models }) => models[0].mark !== exercise.models[0].mark);
    const models = exercise.models.map(({ link, mark, variant, student }) => ({ link, mark, variant, student }));
    return store([{ ...exercise, models }, ...others].slice(0, most));
}

export function forgetExercise(mark) {
    store(keptExercises().filter(({ models }) => models[0].mark !== mark));
}
