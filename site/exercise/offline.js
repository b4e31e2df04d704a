// The page without a network: the service worker of the whole site keeps it (sw.js).
export function keepOffline(place) {
    navigator.serviceWorker?.register('../sw.js', { updateViaCache: 'none' })
        .then(() => navigator.serviceWorker.ready) // everything is kept
        .then(() => { place.hidden = false; })
        .catch(() => {}); // no secure context, or storage switched off: the page works with the network
}
