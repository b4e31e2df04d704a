// The work in local storage. It stands in places: a place is one board with its undo, and belongs to the
// tab that has it open; no other tab writes there. The rule, when a tab opens:
//   1. the place it had before (a reload), if no other tab has it;
//   2. else the place written last that is whole, if no other tab has it;
//   3. else a new place, beginning as a copy of the one written last: the later tab says so, and from the
//      first change there on they are two boards.
// A board that came by a link gets a new place as soon as it is changed, so that what was there before stays
// in the list of recent boards. The eight places written last are kept, and all that are open.
//
// Who has a place open is known by a lock of the browser (Web Locks), which ends with the tab however the
// tab ends. Where there are no locks (a page without https), a tab that sees another one write to its place
// leaves it to that one and goes on in a new place.
//
// Each place is two copies written in turn, so that one is whole whatever happens during a write, and a third
// one in IndexedDB (disk.js), which reaches the disk sooner. Each begins with a number that grows, the time of
// writing; the program finds out itself whether one is damaged. When local storage is full, the place written
// longest ago gives up its two copies there.
import { diskWorks, forgetOnDisk, onDisk, putOnDisk } from './disk.js';

const prefix = 'gusset.work.';
const keptPlaces = 8;
const patience = 500; // ms for a lock that a page being reloaded still has
const latest = 8.64e15; // ms: ECMA-262 §21.4.1.1
const ownKey = 'gusset.place'; // in the tab's own storage

let place = ''; // '': the keys of the time when there was one place only
let release = () => {};
let wantsNewPlace = false;
let copiedModel = null; // of another place, while nothing in the copy has been changed
let hasLeft = false; // for another place, which a reload will show
let onDiskThen = new Map(); // the third copies, as the page found them, and of this place as it is
let last = { newer: '', older: '' }; // what was stored last, or would have been
let isKept = false; // the board that is shown, in this place

const slotsOf = (name) => ['0', '1'].map((slot) => prefix + (name === '' ? '' : `${name}.`) + slot);
const lockOf = (name) => `${prefix}${name}`;
const newName = () => Math.random().toString(36).slice(2, 10);

// -1 where there is no time at the beginning, or one that no date has.
function numberOf(text) {
    const number = Number.parseInt(text ?? '', 10);
    return number > 0 && number <= latest ? number : -1;
}

const bodyOf = (text) => (text ?? '').replace(/^\d+ /, '');

// The newer first.
function copiesOf(name) {
    return slotsOf(name)
        .map((slot) => ({ slot, text: localStorage.getItem(slot) }))
        .concat(onDiskThen.has(name) ? { slot: null, text: onDiskThen.get(name) } : [])
        .sort((one, other) => numberOf(other.text) - numberOf(one.text));
}

// Names, the one written last first.
function places() {
    const names = new Set(onDiskThen.keys());
    for (let i = 0; i < localStorage.length; ++i) {
        const match = localStorage.key(i).match(/^gusset\.work\.(?:(\w+)\.)?[01]$/);
        if (match) {
            names.add(match[1] ?? '');
        }
    }
    const written = (name) => numberOf(copiesOf(name)[0].text);
    return [...names].sort((one, other) => written(other) - written(one));
}

// Resolves to whether this tab has the place now; then until it leaves it or ends.
function take(name, wait) {
    if (!navigator.locks) {
        return Promise.resolve(true);
    }
    return new Promise((resolve) => {
        const giveUp = new AbortController();
        const options = wait ? { signal: giveUp.signal } : { ifAvailable: true };
        const timer = wait && setTimeout(() => giveUp.abort(), patience);
        navigator.locks.request(lockOf(name), options, (lock) => {
            clearTimeout(timer);
            resolve(lock !== null);
            return lock && new Promise((done) => { release = done; });
        }).catch(() => resolve(false));
    });
}

function remember() {
    try {
        sessionStorage.setItem(ownKey, place);
    } catch {
        // then a reload finds the place as a new tab would
    }
}

function settleIn(name) {
    place = name;
    wantsNewPlace = false;
    remember();
}

// The texts of a place that the program can read, the newer first.
function wholeCopies(name, reads) {
    return [...new Set(copiesOf(name).map(({ text }) => bodyOf(text)))].filter(reads);
}

async function takeNew() {
    const name = newName();
    await take(name, false);
    return name;
}

// A tab's own storage is copied when the tab is duplicated, so the lock has the last word; and a page being
// reloaded writes as long as it has the lock, so its place is read behind it. What can not be read is left
// where it is, and told: it may be for a later version to read.
async function findPlace(reads) {
    const own = sessionStorage.getItem(ownKey);
    const names = places();
    let isDamaged = false; // the board that should be here
    if (names.includes(own) && await take(own, true)) {
        const texts = wholeCopies(own, reads);
        if (texts.length > 0) {
            return { name: own, texts, isCopy: false, isDamaged };
        }
        release();
        isDamaged = true;
    }
    for (const name of names) {
        const texts = wholeCopies(name, reads);
        if (texts.length > 0) {
            const isFree = name !== own && await take(name, false);
            return { name: isFree ? name : await takeNew(), texts, isCopy: !isFree, isDamaged };
        }
        isDamaged = true;
    }
    return { name: await takeNew(), texts: [], isCopy: false, isDamaged };
}

// A saved work's model stands as one line of JSON under the line that names it (web/app/session.cpp).
export function modelOf(text) {
    const lines = text.split('\n', 60);
    return lines[lines.findIndex((line) => line.startsWith('model ')) + 1];
}

// The newer copy of the work and the older one, empty texts for none; whether they are a copy of a board that
// another tab has open; whether the board that should be here can't be read; and the place that they are from,
// null for none of this tab's own. `reads` tells whether the program can read a text.
export async function openWork(reads) {
    try {
        onDiskThen = await onDisk();
        const { name, texts, isCopy, isDamaged } = await findPlace(reads);
        settleIn(name);
        const [newer = '', older = ''] = texts;
        copiedModel = isCopy ? modelOf(newer) : null;
        isKept = texts.length > 0 && !isCopy;
        last = { newer, older };
        return { newer, older, isCopy, isDamaged, place: boardPlace() };
    } catch { // storage is switched off
        return { newer: '', older: '', isCopy: false, isDamaged: false, place: null };
    }
}

// Where the board that is shown is kept; null when it is not, as long as somebody only looks at it.
export function boardPlace() {
    return isKept ? place : null;
}

// What was to be stored last, whether the browser took it or not.
export function lastWork() {
    return last;
}

// Gives back the name of the place that was left.
function moveToNewPlace() {
    const left = place;
    release();
    settleIn(newName());
    take(place, false);
    return left;
}

// What another board in this tab is from now on; the place it came to is left as it is.
export function useNewPlaceForChanges() {
    wantsNewPlace = true;
    isKept = false;
}

const clearSlots = (name) => slotsOf(name).forEach((slot) => localStorage.removeItem(slot));

// Those that no tab has open, the one written last first. The lock of the place `left` just now may still be
// on its way out.
async function shutPlaces(left) {
    const open = new Set((await navigator.locks?.query())?.held.map(({ name }) => name));
    open.delete(lockOf(left));
    return places().filter((name) => name !== place && !open.has(lockOf(name)));
}

async function forgetOldPlaces(left) {
    for (const name of (await shutPlaces(left)).slice(keptPlaces)) {
        clearSlots(name);
        onDiskThen.delete(name);
        forgetOnDisk(name);
    }
}

function fits(slot, text) {
    try {
        localStorage.setItem(slot, text);
        return true;
    } catch {
        return false;
    }
}

// Unless something newer was stored in the place `name` meanwhile.
async function makeRoom(name, slot, text) {
    for (const old of (await shutPlaces(null)).reverse()) {
        if (name !== place || onDiskThen.get(name) !== text) {
            return;
        }
        clearSlots(old);
        if (fits(slot, text)) {
            isKept = true;
            return;
        }
    }
}

export function storeWork(text) {
    if (hasLeft) {
        return true; // was stored before
    }
    if (copiedModel !== null && copiedModel === modelOf(text)) {
        return true; // stands in the other tab's place
    }
    copiedModel = null;
    last = { newer: text, older: last.newer };
    try {
        if (wantsNewPlace) {
            forgetOldPlaces(moveToNewPlace()).catch(() => {}); // then there are more of them
        }
        const copies = copiesOf(place);
        const number = Math.max(Date.now(), numberOf(copies[0].text) + 1);
        const older = copies.filter(({ slot }) => slot !== null)[1];
        const numbered = `${number} ${text}`;
        onDiskThen.set(place, numbered);
        putOnDisk(place, numbered);
        isKept = fits(older.slot, numbered);
        if (!isKept) {
            isKept = diskWorks();
            makeRoom(place, older.slot, numbered).catch(() => {}); // then the third copy is all there is
        }
    } catch {
        isKept = false;
    }
    return isKept;
}

// Without locks: another tab wrote where this one does.
export function watchOtherTabs(tell) {
    addEventListener('storage', ({ key }) => {
        if (!navigator.locks && slotsOf(place).includes(key)) {
            settleIn(newName());
            tell();
        }
    });
}

function titleOf(text) {
    try {
        return JSON.parse(modelOf(text)).title || 'Without a title';
    } catch {
        return 'A board that can not be read';
    }
}

// Boards of other places, the latest first: { name, title, time, text }; no text where it can not be read, no
// time where that can not be told.
export function recentBoards(reads) {
    try {
        return places().filter((name) => name !== place).slice(0, keptPlaces).map((name) => {
            const [text = ''] = wholeCopies(name, reads);
            const number = numberOf(copiesOf(name)[0].text);
            return { name, title: titleOf(text), time: number < 0 ? null : new Date(number), text };
        });
    } catch {
        return [];
    }
}

// False when another tab has it open. Store the board first: nothing is stored any more until the page is
// loaded again, and shows that place.
export async function goToPlace(name) {
    const leave = release;
    if (!await take(name, false)) {
        return false;
    }
    leave();
    settleIn(name);
    hasLeft = true;
    return true;
}
