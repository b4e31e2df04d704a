// Keeps the browser's address as a link that opens what is on the board: for bookmarks, for the browser's own
// sharing, and for a browser that has lost everything else.
import { boardPlace } from './storage.js';

// ms without a change: each change is one call of replaceState, and WebKit refuses more than 100 in 10 s.
const rest = 500;
let timer = 0;
let known = location.hash; // as last read or written here

export function holdsModel(fragment) {
    return /^#?[mj]=/.test(fragment);
}

// The link in the address, for the code that opens it.
export function readAddress() {
    known = location.hash;
    return known;
}

// Each history entry written here says in which storage place its board is kept. A reload there shows that board,
// which may be newer than the link.
function write(url) {
    try {
        history.replaceState({ place: boardPlace() }, '', url);
        known = location.hash;
    } catch {
        // refused: too many of them, or too long. The next change tries again.
    }
}

// Another fragment may have been put there whose event has not arrived yet: it is left to be opened.
export function setAddress(fragment) {
    if (location.hash !== known) {
        return;
    }
    const isModel = fragment !== '' || holdsModel(location.hash); // else it is not a link of ours to clear
    if (isModel && location.hash.slice(1) !== fragment) {
        write(location.pathname + location.search + (fragment === '' ? '' : `#${fragment}`));
    }
    markAddress();
}

// At once when the board has its place: a reload may come before the board is at rest.
export function markAddress() {
    if (location.hash === known && history.state?.place !== boardPlace()) {
        write(location.href);
    }
}

// Whether the address was written here, for the board in that place.
export function isAddressOf(place) {
    return place !== null && history.state?.place === place;
}

export function whenAtRest(refresh) {
    clearTimeout(timer);
    timer = setTimeout(refresh, rest);
}
