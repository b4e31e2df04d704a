// Keeps the browser's address as a link that opens what is on the board: for bookmarks, for the browser's own
// sharing, and for a browser that has lost everything else. All that is written to the browser's history is written
// here.
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

function write(how, state, url) {
    try {
        history[how](state, '', url);
        known = location.hash;
    } catch {
        // refused: too many of them, or too long. The next change tries again.
    }
}

// Each entry that shows a board says in which storage place the board is kept. A reload there shows that board,
// which may be newer than the link.
const withPlace = () => ({ ...history.state, place: boardPlace() });

const isOfStart = () => history.state?.view === 'start'; // whose address stays plain

export function pushEntry(state, url) {
    write('pushState', state, url);
}

export function stampEntry(state) {
    write('replaceState', { ...history.state, ...state }, location.href);
}

// Another fragment may have been put there whose event has not arrived yet: it is left to be opened.
export function setAddress(fragment) {
    if (location.hash !== known || isOfStart()) {
        return;
    }
    const isModel = fragment !== '' || holdsModel(location.hash); // else it is not a link of ours to clear
    if (isModel && location.hash.slice(1) !== fragment) {
        const plain = location.pathname + location.search;
        write('replaceState', withPlace(), fragment === '' ? plain : `${plain}#${fragment}`);
    }
    markAddress();
}

// At once when the board has its place: a reload may come before the board is at rest.
export function markAddress() {
    if (location.hash === known && !isOfStart() && history.state?.place !== boardPlace()) {
        write('replaceState', withPlace(), location.href);
    }
}

// Whether the address was written here, for the board in that place: by this tab or the one that it was made from.
export function isAddressOf(place) {
    return place !== null && history.state?.place === place;
}

export function whenAtRest(refresh) {
    clearTimeout(timer);
    timer = setTimeout(refresh, rest);
}
