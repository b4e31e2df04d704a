// The places of a lesson in their order: each stroke of each step, with the pauses that its author put between.
// A place is { item, step, stroke } or { item, step, pause }; one before the first and after the last is the end.

function pausesOf(lesson, plan, item, subject) {
    return (plan.shows[item].pauses ?? []).filter(({ before }) => (before ?? '') === subject);
}

export function placesOf(opened) {
    const places = [];
    opened.lessons.forEach((lesson, item) => {
        lesson.steps.forEach((step, index) => {
            pausesOf(lesson, opened.plan, item, step.subject)
                .forEach((pause) => places.push({ item, step: index, subject: step.subject, pause }));
            step.strokes.forEach((spoken, stroke) =>
                places.push({ item, step: index, stroke, subject: step.subject, spoken }));
        });
        pausesOf(lesson, opened.plan, item, '').forEach((pause) =>
            places.push({ item, step: lesson.steps.length - 1, subject: '', pause }));
    });
    return places;
}

// Where the same is said in another lesson: the step with the same subject, as far on in it; else as near the
// beginning as before.
export function samePlace(places, before) {
    const same = places.filter(({ item, subject, pause }) =>
        item === before.item && subject === before.subject && !pause === !before.pause);
    if (same.length > 0) {
        return places.indexOf(same[Math.min(before.stroke ?? 0, same.length - 1)]);
    }
    const near = places.findIndex(({ item, step }) => item === before.item && step >= before.step);
    return Math.max(0, near);
}
