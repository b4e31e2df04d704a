// What was shown while a film was recorded, and when: the words as they were, since the model may change in
// mid-lesson. Times are the film's, in s.

export const keyOf = ({ place: { item }, subject }) => `${item} ${subject}`;

export function createShown() {
    let entries = []; // { says, title, about, from, now (the place's number), mark (of the recorder) }

    // Where each visit to a step begins, as indices.
    const visits = () => entries.flatMap(({ about }, i) => (i === 0 || entries[i - 1].about !== about ? [i] : []));

    return {
        add(state, says, from, mark) {
            entries = entries.filter((each) => each.from < from); // what was shown while the recording paused
            entries.push({ says, title: state.title, about: keyOf(state), from, now: state.now, mark });
        },
        // The visit that is taken again from the step that is shown: this one, or, when somebody has gone back to it, the
        // one before. Null if the film does not have it.
        visitOf(state) {
            const about = keyOf(state);
            const all = visits();
            const here = all.at(-1);
            const before = all.slice(0, -1).findLast((i) => entries[i].about === about);
            const wentBack = before !== undefined && entries[here - 1]?.now > entries[here].now;
            if (entries[here]?.about !== about) {
                return null;
            }
            return entries[wentBack ? before : here];
        },
        cutAt(entry) { entries = entries.slice(0, entries.indexOf(entry)); },
        // Each until the next; what was shown for less than a twentieth of a second nobody saw.
        until(end) {
            const seen = entries.filter(({ from }, i) => (entries[i + 1]?.from ?? end) - from >= 0.05);
            return seen.map(({ says, title, about, from }, i) => ({ says, title, about, from, to: seen[i + 1]?.from ?? end }));
        },
    };
}
