// The work in local storage. It is kept in places: a place is one board with its undo history, and belongs to the
// tab that has it open; no other tab writes there. The rule when a tab opens:
//   1. the place it had before (a reload), if no other tab has it;
//   2. else the intact place written last, if no other tab has it;
//   3. else a new place, starting as a copy of the one written last: the later tab says so, and from the first
//      change on they are two separate boards.
// A board that came by a link gets a new place as soon as it is changed, so that what was there before stays in
// the list of recent boards. The eight places written last are kept, and all that are open.
//
// An open place is held by a browser lock (Web Locks), which is released when the tab ends, however it ends.
// Without locks (a page without https), a tab that sees another one write to its place leaves the place to that
// one and continues in a new place.
//
// Each place has two copies written in turn, so that one is intact whatever happens during a write, and a third
// one in IndexedDB (disk.js), which reaches the disk sooner. Each starts with an increasing number, the time of
// writing; the program itself finds out whether a copy is damaged. When local storage is full, the place written
// longest ago loses its two copies there.
import { diskWorks, forgetOnDisk, onDisk, putOnDisk } from './disk.js';

const prefix = 'gusset.work.';
const keptPlaces = 8;
// ms for a lock that a page being reloaded still holds: where this is that page it will come, however slow the device is;
// else a tab may have been duplicated, and the lock never comes.
const patience = performance.getEntriesByType('navigation')[0]?.type === 'reload' ? 10000 : 500;
const century = 100 * 365.25 * 86400e3; // ms
const ownKey = 'gusset.place'; // in session storage

let place = ''; // '': the keys from when there was only one place
let release = () => {};
let wantsNewPlace = false;
let copiedModel = null; // of another place, until something in the copy is changed
let hasLeft = false; // for another place, which a reload will show
let onDiskThen = new Map(); // the third copies as the page found them, with the current one of this place
let last = { newer: '', older: '' }; // what was last stored, or would have been
let isStored = false; // this place holds what was last stored
let newest = 0; // number of the latest write in any place, as far as this tab knows

const slotsOf = (name) => ['0', '1'].map((slot) => prefix + (name === '' ? '' : `${name}.`) + slot);
const lockOf = (name) => `${prefix}${name}`;
const newName = () => Math.random().toString(36).slice(2, 10);

// -1 if the text does not start with a time, or starts with an impossible one.
function numberOf(text) {
    const number = Number.parseInt(text ?? '', 10);
    return number > 0 && number <= Date.now() + century ? number : -1;
}

const bodyOf = (text) => (text ?? '').replace(/^\d+ /, '');

// Newer first.
function copiesOf(name) {
    return slotsOf(name)
        .map((slot) => ({ slot, text: localStorage.getItem(slot) }))
        .concat(onDiskThen.has(name) ? { slot: null, text: onDiskThen.get(name) } : [])
        .sort((one, other) => numberOf(other.text) - numberOf(one.text));
}

// Names, the latest written first.
export function places() {
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

// Resolves to whether this tab now holds the place; it keeps it until it leaves it or ends.
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

// The texts of a place that the program can read, newer first. Each is judged separately.
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

// Session storage is copied when a tab is duplicated, so the lock decides; and a page being reloaded writes as long
// as it holds the lock, so its place is read only after that. What can't be read is left where it is, and
// reported: a later version may be able to read it.
async function findPlace(reads) {
    const own = sessionStorage.getItem(ownKey);
    const names = places();
    let isDamaged = false; // the board that should be here
    if (names.includes(own) && await take(own, true)) {
        const texts = await wholeCopies(own, reads);
        if (texts.length > 0) {
            return { name: own, from: own, texts, isCopy: false, isDamaged };
        }
        release();
        isDamaged = true;
    }
    for (const name of names.includes(own) ? [own, ...names] : names) { // a duplicated tab shows what it was made from
        const texts = await wholeCopies(name, reads);
        if (texts.length > 0) {
            const isFree = name !== own && await take(name, false);
            return { name: isFree ? name : await takeNew(), from: name, texts, isCopy: !isFree, isDamaged };
        }
        isDamaged = true;
    }
    return { name: await takeNew(), from: null, texts: [], isCopy: false, isDamaged };
}

// The model of saved work is one line of JSON below the line that names it (web/app/state/session.cpp).
export function modelOf(text) {
    const begins = text.indexOf('\n', text.search(/^model /m)) + 1;
    const ends = text.indexOf('\n', begins);
    return text.slice(begins, ends < 0 ? undefined : ends);
}

// The newer and the older copy of the work, empty texts for none; whether they are a copy of a board that another
// tab has open; whether the board that should be here can't be read; and the place that they are from. `reads` resolves
// to whether the program can read a text.
export async function openWork(reads) {
    try {
        onDiskThen = await onDisk();
        newest = Math.max(0, ...places().map((name) => numberOf(copiesOf(name)[0].text)));
        const { name, from, texts, isCopy, isDamaged } = await findPlace(reads);
        settleIn(name);
        const [newer = '', older = ''] = texts;
        copiedModel = isCopy ? modelOf(newer) : null;
        isStored = texts.length > 0 && !isCopy;
        last = { newer, older };
        return { newer, older, isCopy, isDamaged, from };
    } catch { // storage is switched off
        return { newer: '', older: '', isCopy: false, isDamaged: false, from: null };
    }
}

// Where the board that is shown is kept; null if it is not, as long as somebody only looks at it.
export function boardPlace() {
    return isStored && !wantsNewPlace ? place : null;
}

// What was last to be stored, whether or not the browser accepted it.
export function lastWork() {
    return last;
}

// Returns the name of the place that was left.
function moveToNewPlace() {
    const left = place;
    release();
    settleIn(newName());
    take(place, false);
    return left;
}

const isInPlace = (model) => isStored && modelOf(last.newer) === model;

// Another board is shown in this tab from now on, and the place is left as it is; unless it is exactly the board of
// the place, reached again by Back.
export function useNewPlaceForChanges(model = '') {
    wantsNewPlace = !isInPlace(model);
}

const clearSlots = (name) => slotsOf(name).forEach((slot) => localStorage.removeItem(slot));

// Those that no tab has open, the latest written first. The lock of the place `left` just now may not have been
// released yet.
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

// Unless something newer has been stored in the place `name` meanwhile.
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
        return true; // has been stored already
    }
    if (copiedModel !== null && copiedModel === modelOf(text)) {
        return true; // is stored in the other tab's place
    }
    copiedModel = null;
    if (wantsNewPlace && isInPlace(modelOf(text))) { // the other one was only looked at, and Undo has led back
        wantsNewPlace = false;
    }
    last = { newer: text, older: last.newer };
    try {
        if (wantsNewPlace) {
            forgetOldPlaces(moveToNewPlace()).catch(() => {}); // then there are more of them
        }
        const copies = copiesOf(place);
        // Also after the clock was turned back: otherwise this would count as written long ago, and be deleted.
        newest = Math.max(Date.now(), newest + 1, numberOf(copies[0].text) + 1);
        const older = copies.filter(({ slot }) => slot !== null)[1];
        const numbered = `${newest} ${text}`;
        keepOnDisk(place, numbered);
        isStored = fits(older.slot, numbered);
        if (!isStored) {
            isStored = diskWorks();
            makeRoom(place, older.slot, numbered).catch(() => {}); // then there is only the third copy
        }
    } catch {
        isStored = false;
    }
    return isStored;
}

// Without locks: another tab has written to this tab's place.
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
        return 'A board that cannot be read';
    }
}

// Whether a board is kept here, as far as can be told at once: the third copies are read later.
export function keepsWork() {
    try {
        return places().length > 0;
    } catch {
        return false; // storage is switched off
    }
}

const minute = 60e3; // ms, tolerance for ordinary clock corrections

// Null if there is none, or if it is in the future because the clock was turned back since.
function timeOf(number) {
    return number < 0 || number > Date.now() + minute ? null : new Date(number);
}

// All boards but the one that is shown, latest first: { name, title, time, text }; without text if it can't be
// read, without time if that is unknown.
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

// False if another tab has it open. Store the board first: nothing more is stored until the page is reloaded, which
// then shows that place.
export async function goToPlace(name) {
    const leave = release;
    if (name !== place) { // it is the same when a link was only looked at
        if (!await take(name, false)) {
            return false;
        }
        leave();
        settleIn(name);
    }
    hasLeft = true;
    return true;
}

// Resolves to what `change` returns; to false without calling it if another tab has the board open.
function whileShut(name, change) {
    if (name === place || !navigator.locks) {
        return Promise.resolve(change());
    }
    return navigator.locks.request(lockOf(name), { ifAvailable: true }, (lock) => lock !== null && change());
}

// Removes a board that is not shown. Resolves to a function that brings it back, or to false (whileShut).
export function forgetBoard(name) {
    return whileShut(name, () => {
        const copies = copiesOf(name);
        clearSlots(name);
        onDiskThen.delete(name);
        forgetOnDisk(name);
        isStored = isStored && name !== place;
        return () => {
            const bringBack = ({ slot, text }) => (slot === null ? keepOnDisk(name, text) : fits(slot, text));
            copies.filter(({ text }) => text !== null).forEach(bringBack);
            isStored = isStored || name === place;
        };
    });
}

function keepOnDisk(name, text) {
    onDiskThen.set(name, text);
    putOnDisk(name, text);
}

// Another text for a board that is not shown, written when that one was. Resolves to whether it is stored.
export function rewriteBoard(name, text) {
    return whileShut(name, () => {
        const copies = copiesOf(name);
        const numbered = `${numberOf(copies[0].text) + 1} ${text}`;
        keepOnDisk(name, numbered);
        return fits(copies.filter(({ slot }) => slot !== null)[1].slot, numbered) || diskWorks();
    });
}
