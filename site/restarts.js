// The program that fails is started again: how often, and with which board.
const calm = 10000; // ms without a failure, after which the next one counts as the first
const mostFailures = 3; // one soon after another: an empty board has failed too by the next

export function countFailures() {
    let count = 0;
    let timer = 0;
    return {
        more() {
            clearTimeout(timer);
            return ++count;
        },
        // However long it took to load.
        startedAgain() {
            timer = setTimeout(() => { count = 0; }, calm);
        },
    };
}

// How the board comes back after the program has failed `count` times, one soon after another: as it was stored
// last, or opened; as it was before it was opened; with its last step undone; not at all, an empty one. Null when
// the program is better left alone.
export function wayBack(count, work, isOpened) {
    if (count > mostFailures) {
        return null;
    }
    if (count === 1) {
        return 'stored';
    }
    if (count === 2 && isOpened) {
        return 'before';
    }
    return count === 2 && work.newer !== '' ? 'undone' : 'empty';
}
