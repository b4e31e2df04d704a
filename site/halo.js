// While presenting, a ring around the pointer, so that the back row sees where it is.
export function createHalo() {
    const ring = document.getElementById('pointer-halo');
    let shown = false;

    function follow({ clientX, clientY, pointerType, type }) {
        const lifted = type === 'pointerup' || type === 'pointercancel';
        ring.hidden = !shown || (lifted && pointerType !== 'mouse');
        ring.style.transform = `translate(${clientX}px, ${clientY}px)`;
    }

    for (const type of ['pointerdown', 'pointermove', 'pointerup', 'pointercancel']) {
        addEventListener(type, follow, { passive: true });
    }
    document.documentElement.addEventListener('pointerleave', () => { ring.hidden = true; });
    return {
        show(wanted) {
            shown = wanted;
            ring.hidden = true; // until the pointer moves
        },
    };
}
