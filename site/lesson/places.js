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
                .forEach((pause) => places.push({ item, step: index, subject: step.subject, title: step.title, pause }));
            let { subject, title } = step;
            step.strokes.forEach((spoken, stroke) => {
                const part = (step.joined ?? []).find((each) => each.stroke === stroke); // of a step that goes on here
                if (part) {
                    ({ subject, title } = part);
                    pausesOf(lesson, opened.plan, item, subject)
                        .forEach((pause) => places.push({ item, step: index, stroke, subject, title, pause }));
                }
                places.push({ item, step: index, stroke, subject, title, spoken, begins: stroke === 0 || part !== undefined });
            });
        });
        pausesOf(lesson, opened.plan, item, '').forEach((pause) =>
            places.push({ item, step: lesson.steps.length - 1, subject: '', title: lesson.steps.at(-1).title, pause }));
    });
    return places;
}

// Where the same is said in another lesson: the step with the same subject, as far on in it; if there is none, a step
// about the same joint, or one as near to the end.
export function samePlace(places, before, count) {
    const ofItem = (test) => places.filter((each) => each.item === before.item && !each.pause === !before.pause && test(each));
    const same = ofItem(({ subject }) => subject === before.subject);
    if (same.length > 0) {
        return places.indexOf(same[Math.min(before.stroke ?? 0, same.length - 1)]);
    }
    const joint = before.subject.match(/^joint\S* (\S+)/)?.[1];
    const about = joint ? ofItem(({ subject }) => subject.match(/^joint\S* (\S+)/)?.[1] === joint) : [];
    return about.length > 0 ? places.indexOf(about[0])
        : Math.min(places.length - 1, Math.round((before.index / count) * places.length));
}
