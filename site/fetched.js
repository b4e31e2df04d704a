// A file of the page that is fetched when it is wanted: its response, or an error that says why there is none.
export async function fetched(name) {
    const response = await fetch(new URL(name, import.meta.url));
    if (!response.ok) {
        throw new Error(`the server answers ${response.status} for ${name}`);
    }
    return response;
}
