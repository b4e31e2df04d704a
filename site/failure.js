// The bar shown over the board after the program has crashed and been restarted: what happened, and the board that
// it happened on, as a file and as a link. Made from what the scripts have, without the program.
import { copyText, saveContent } from './files.js';

const longestLink = 65536; // characters: engine/exchange/links/link.hpp reads no more
const begins = 'Gusset made a mistake and stopped. It has started again, ';
const words = {
    stored: `${begins}and the board is as it was last kept: at most the step in hand is lost.`,
    undone: `${begins}and stopped on the same board. So this is the board before its last step: Redo brings it back.`,
    before: `${begins}and stopped on the board that was opened. So this is the one before it.`,
    empty: `${begins}and stopped on the same board. So an empty one is here; the other is kept under Recent boards on ` +
        'the start page.',
};

const isJson = (board) => /^\s*\{/.test(board);

// The link to a board given as JSON, or the link that it was opened by; null if it is too long.
function linkOf(board) {
    const fragment = isJson(board) ? `j=${encodeURIComponent(board)}` : board.slice(board.indexOf('#') + 1);
    return board !== '' && fragment.length <= longestLink ? `${location.href.split('#')[0]}#${fragment}` : null;
}

export function createFailure() {
    const bar = document.getElementById('failure');
    const says = document.getElementById('failure-text');
    const save = document.getElementById('failure-save');
    const copy = document.getElementById('failure-copy');
    const again = document.getElementById('failure-again');
    let board = '';

    save.addEventListener('click', () => saveContent('board.json', board));
    copy.addEventListener('click', async () => {
        if (await copyText(linkOf(board))) {
            copy.textContent = 'Link copied';
        }
    });
    again.addEventListener('click', () => location.reload());
    document.getElementById('failure-close').addEventListener('click', () => {
        bar.hidden = true;
        document.getElementById('board').focus(); // which receives the keys
    });

    function show(text, canReload, failedOn) {
        board = failedOn;
        save.hidden = !isJson(board);
        copy.hidden = linkOf(board) === null;
        copy.textContent = 'Copy its link';
        again.hidden = !canReload;
        bar.hidden = false;
        says.textContent = text; // last, so that it is read out
    }

    return {
        cameBack: (how, failedOn) => show(words[how], false, failedOn),
        staysAway: (reason, failedOn) => show(`Gusset made a mistake and stopped, and cannot start again (${reason}). ` +
            'What was kept of the board is safe: load the page again.', true, failedOn),
        // The board offered before is the one that matters.
        stays: () => show('Gusset made a mistake and stopped, on an empty board too. So it does not start again by ' +
            'itself. What was kept of the board is safe: load the page again.', true, board),
    };
}
