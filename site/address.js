// The browser's address names what is on the board, as a link that opens it: for bookmarks, for the browser's
// own sharing, for a browser that forgot the rest.
import { boardPlace } from './storage.js';

// ms without a change: each change is one call of replaceState, and WebKit refuses more than 100 in 10 s.
const rest = 500;
let timer = 0;
let known = location.hash; // as it was read or written here last

export function holdsModel(fragment) {
    return /^#?[mj]=/.test(fragment);
}

// The link in the address, for whoever opens it.
export function readAddress() {
    known = location.hash;
    return known;
}

// Each entry that is written here says in which place of the storage its board is kept. A reload there shows
// that board, which may be newer than the link.
function write(url) {
    try {
        history.replaceState({ place: boardPlace() }, '', url);
        known = location.hash;
    } catch {
        // refused: too many of them, or too long. The next change is another try.
    }
}

// Another one may have been put there whose event is still on its way: that is left to be opened.
export function setAddress(fragment) {
    if (location.hash !== known) {
        return;
    }
    const isModel = fragment !== '' || holdsModel(location.hash); // else it is not ours to clear
    if (isModel && location.hash.slice(1) !== fragment) {
        write(location.pathname + location.search + (fragment === '' ? '' : `#${fragment}`));
    }
    markAddress();
}

// At once when the board has found its place: a reload may come before it rests.
export function markAddress() {
    if (location.hash === known && history.state?.place !== boardPlace()) {
        write(location.href);
    }
}

// Whether the address was written here, for the board of that place.
export function isAddressOf(place) {
    return place !== null && history.state?.place === place;
}

export function whenAtRest(refresh) {
    clearTimeout(timer);
    timer = setTimeout(refresh, rest);
}
