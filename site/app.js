// Loads the program and starts the board; says in words what is wrong when it cannot.
import createGusset from './gusset.js';

const status = document.getElementById('status');

function say(text) {
    status.textContent = text;
}

async function start() {
    say('Loading …');
    let gusset;
    try {
        gusset = await createGusset();
    } catch (error) {
        say(`The program did not load (${error.message}). Reload the page to try again.`);
        return;
    }
    performance.mark('runtime-ready');
    if (!gusset._gussetStart()) {
        say('This browser offers no WebGL2, which the board is drawn with. ' +
            'Switch on hardware acceleration, or open the page in another browser.');
        return;
    }
    performance.mark('first-frame');
    say('');
}

start();
