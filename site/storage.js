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
const century = 100 * 365.25 * 86400e3; // ms
const ownKey = 'gusset.place'; // in the tab's own storage

let place = ''; // '': the keys of the time when there was one place only
let release = () => {};
let wantsNewPlace = false;
let copiedModel = null; // of another place, while nothing in the copy has been changed
let hasLeft = false; // for another place, which a reload will show
let onDiskThen = new Map(); // the third copies, as the page found them, and of this place as it is
let last = { newer: '', older: '' }; // what was stored last, or would have been
let isStored = false; // this place has what was stored last
let newest = 0; // number of what was written last in any place, as far as this tab knows

const slotsOf = (name) => ['0', '1'].map((slot) => prefix + (name === '' ? '' : `${name}.`) + slot);
const lockOf = (name) => `${prefix}${name}`;
const newName = () => Math.random().toString(36).slice(2, 10);

// -1 where there is no time at the beginning, or none that a clock has shown.
function numberOf(text) {
    const number = Number.parseInt(text ?? '', 10);
    return number > 0 && number <= Date.now() + century ? number : -1;
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

// The texts of a place that the program can read, the newer first. Each is judged by itself.
async function wholeCopies(name, reads) {
    const whole = [];
    for (const text of new Set(copiesOf(name).map((copy) => bodyOf(copy.text)))) {
        if (await reads(text)) {
            whole.push(text);
        }
    }
    return whole;
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
        const texts = await wholeCopies(own, reads);
        if (texts.length > 0) {
            return { name: own, texts, isCopy: false, isDamaged };
        }
        release();
        isDamaged = true;
    }
    for (const name of names) {
        const texts = await wholeCopies(name, reads);
        if (texts.length > 0) {
            const isFree = name !== own && await take(name, false);
            return { name: isFree ? name : await takeNew(), texts, isCopy: !isFree, isDamaged };
        }
        isDamaged = true;
    }
    return { name: await takeNew(), texts: [], isCopy: false, isDamaged };
}

// A saved work's model stands as one line of JSON under the line that names it (web/app/state/session.cpp).
export function modelOf(text) {
    const begins = text.indexOf('\n', text.search(/^model /m)) + 1;
    const ends = text.indexOf('\n', begins);
    return text.slice(begins, ends < 0 ? undefined : ends);
}

// The newer copy of the work and the older one, empty texts for none; whether they are a copy of a board that
// another tab has open; whether the board that should be here can't be read; and the place that they are from,
// null for none of this tab's own. `reads` resolves to whether the program can read a text.
export async function openWork(reads) {
    try {
        onDiskThen = await onDisk();
        newest = Math.max(0, ...places().map((name) => numberOf(copiesOf(name)[0].text)));
        const { name, texts, isCopy, isDamaged } = await findPlace(reads);
        settleIn(name);
        const [newer = '', older = ''] = texts;
        copiedModel = isCopy ? modelOf(newer) : null;
        isStored = texts.length > 0 && !isCopy;
        last = { newer, older };
        return { newer, older, isCopy, isDamaged, place: boardPlace() };
    } catch { // storage is switched off
        return { newer: '', older: '', isCopy: false, isDamaged: false, place: null };
    }
}

// Where the board that is shown is kept; null when it is not, as long as somebody only looks at it.
export function boardPlace() {
    return isStored && !wantsNewPlace ? place : null;
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

const isInPlace = (model) => isStored && modelOf(last.newer) === model;

// Another board is shown in this tab from now on, and the place is left as it is; unless it is the very board of
// the place, to which Back has led again.
export function useNewPlaceForChanges(model = '') {
    wantsNewPlace = !isInPlace(model);
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
            isStored = true;
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
    if (wantsNewPlace && isInPlace(modelOf(text))) { // the other one was only looked at: Undo has led back
        wantsNewPlace = false;
    }
    last = { newer: text, older: last.newer };
    try {
        if (wantsNewPlace) {
            forgetOldPlaces(moveToNewPlace()).catch(() => {}); // then there are more of them
        }
        const copies = copiesOf(place);
        // Also where the clock was turned back: else this would count as written long ago, and be forgotten.
        newest = Math.max(Date.now(), newest + 1, numberOf(copies[0].text) + 1);
        const older = copies.filter(({ slot }) => slot !== null)[1];
        const numbered = `${newest} ${text}`;
        onDiskThen.set(place, numbered);
        putOnDisk(place, numbered);
        isStored = fits(older.slot, numbered);
        if (!isStored) {
            isStored = diskWorks();
            makeRoom(place, older.slot, numbered).catch(() => {}); // then the third copy is all there is
        }
    } catch {
        isStored = false;
    }
    return isStored;
}

// Without locks: another tab wrote where this one does.
export function watchOtherTabs(tell) {
    addEventListener('storage', ({ key }) => {
        if (!navigator.locks && slotsOf(place).includes(key)) {
            settleIn(newName());
            isStored = false;
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

const minute = 60e3; // ms, that the clocks of a day may differ by

// Null where there is none, or one to come: the clock was turned back since.
function timeOf(number) {
    return number < 0 || number > Date.now() + minute ? null : new Date(number);
}

// All boards but the one that is shown, the latest first: { name, title, time, text }; no text where it can not be
// read, no time where that can not be told.
export async function recentBoards(reads) {
    const boards = [];
    try {
        for (const name of places().filter((one) => one !== place || wantsNewPlace).slice(0, keptPlaces)) {
            const [text = ''] = await wholeCopies(name, reads);
            boards.push({ name, title: titleOf(text), time: timeOf(numberOf(copiesOf(name)[0].text)), text });
        }
    } catch {
        // storage is switched off
    }
    return boards;
}

// False when another tab has it open. Store the board first: nothing is stored any more until the page is
// loaded again, and shows that place.
export async function goToPlace(name) {
    const leave = release;
    if (name !== place) { // as it is when a link was only looked at
        if (!await take(name, false)) {
            return false;
        }
        leave();
        settleIn(name);
    }
    hasLeft = true;
    return true;
}
