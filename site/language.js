// The language of the board, the tables, the working and the lesson: a file of translations (languages/NAME.json, made from
// what `node site/languages/sentences.mjs` prints), loaded only if the address asks for it with ?language=NAME.
// Without one the page is in English.
export async function loadLanguage() {
    const name = new URLSearchParams(location.search).get('language') ?? '';
    if (!/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/.test(name)) { // a language tag (RFC 5646), not a path
        return '';
    }
    const response = await fetch(new URL(`languages/${name}.json`, import.meta.url)).catch(() => null);
    if (!response?.ok) {
        return '';
    }
    document.documentElement.lang = name;
    return response.text();
}
