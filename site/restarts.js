// A program that fails is restarted: how often, and with which board.
const calm = 10000; // ms without a failure, after which the next one counts as the first
const mostFailures = 3; // in quick succession; one more means that an empty board has failed too

export function countFailures() {
    let count = 0;
    let timer = 0;
    return {
        more() {
            clearTimeout(timer);
            return ++count;
        },
        // However long loading took.
        startedAgain() {
            timer = setTimeout(() => { count = 0; }, calm);
        },
    };
}

// How the board comes back after the program has failed `count` times in quick succession: as last stored or
// opened; as before it was opened; with its last step undone; or not at all, as an empty board. Null if the program
// should not be restarted.
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
