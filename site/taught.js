// Whether the first steps on an empty board have been taken in this browser: then they are not offered again.
const key = 'gusset.taught'; // in local storage

export function isTaught() {
    try {
        return localStorage.getItem(key) !== null;
    } catch {
        return true; // storage is switched off: nobody wants them at every visit
    }
}

export function rememberTaught() {
    try {
        localStorage.setItem(key, '1');
    } catch {
        // isTaught() says so too
    }
}
