// What is handed on of a lesson: slides to print, pictures, a step that moves.
import { base64urlOf, bytesOf } from '../bytes.js';
import { paper, pngOf } from '../png.js';
import { saveFile } from '../saving.js';

const pixelsOfPicture = 1.2; // for a px of a slide, which is 900 px high: 1080 high, as most projectors are

const page = `
<h2>Slides</h2>
<p class="row"><label for="shape">Shape</label> <select id="shape"><option>16:9</option><option>4:3</option></select>
<label for="each">A page for each</label> <select id="each"><option value="stroke">equation and answer</option>
<option value="step">step</option></select>
<label><input type="checkbox" id="with-words"> what is said below</label></p>
<p class="row"><button type="button" id="print-slides">Print the slides</button>
<button type="button" id="save-slides">Save them as a file</button></p>
<h2>Pictures</h2>
<p class="row"><button type="button" id="save-png">Save the slides as PNG files</button>
<button type="button" id="save-svg">Save them as SVG files</button></p>
<p class="row"><button type="button" id="animate">Save this step as a moving SVG</button>
<label><input type="checkbox" id="loops"> over and over</label></p>`;

// A document of its own, printed from a frame, so that the stage stays as it is.
function printDocument(html) {
    document.getElementById('printed')?.remove();
    const frame = document.createElement('iframe');
    frame.id = 'printed';
    frame.className = 'unseen';
    frame.title = 'Slides to print';
    frame.srcdoc = html;
    frame.addEventListener('load', () => frame.contentWindow.print(), { once: true });
    document.body.append(frame);
}

export function createHandedOn({ place, lectern, lesson, tell }) {
    place.innerHTML = page;
    const at = (id) => document.getElementById(id);
    const choices = () => ({
        shape: at('shape').value, byStep: at('each').value === 'step', hides: at('hides').checked,
    });
    const slides = () => lectern({ do: 'slides', words: at('with-words').checked, ...choices() }).html;
    at('print-slides').addEventListener('click', () => printDocument(slides()));
    at('save-slides').addEventListener('click', () => {
        saveFile('slides.html', slides(), 'text/html');
        tell('Saved as slides.html.');
    });

    function saveZip(name, files) {
        const reply = lectern({ do: 'zip', files });
        if (reply.faults) {
            tell(reply.faults.join(' '));
            return;
        }
        saveFile(name, bytesOf(reply.base64), 'application/zip');
        tell(`Saved as ${name}: ${files.length} numbered pictures.`);
    }
    // One after the other, so that the page stays alive and tells how far it is. `made` turns a drawing into a file.
    async function drawAll(made) {
        const files = [];
        const chosen = choices();
        for (let of = 1; files.length < of;) {
            const picture = lectern({ do: 'picture', index: files.length, ...chosen });
            if (picture.faults) {
                throw new Error(picture.faults.join(' '));
            }
            ({ of } = picture);
            tell(`Drawing ${files.length + 1} of ${of} …`);
            files.push(await made(picture));
        }
        return files;
    }
    const pause = () => new Promise((resolve) => { setTimeout(resolve); });
    const asSvg = async ({ name, svg }) => {
        await pause();
        return { name: `${name}.svg`, text: svg };
    };
    const asPng = async ({ name, svg }) =>
        ({ name: `${name}.png`, base64: await base64urlOf(await pngOf(svg, { scale: pixelsOfPicture, ground: paper })) });
    for (const [button, name, made] of [['save-png', 'pictures-png.zip', asPng], ['save-svg', 'pictures-svg.zip', asSvg]]) {
        at(button).addEventListener('click', async () => {
            at(button).disabled = true;
            try {
                saveZip(name, await drawAll(made));
            } catch (error) {
                tell(`The pictures could not be made: ${error.message}`);
            }
            at(button).disabled = false;
        });
    }
    at('animate').addEventListener('click', () => {
        const { item, step } = lesson.state().place;
        const { svg } = lectern({ do: 'animation', item, step, stroke: 0, loops: at('loops').checked, ...choices() });
        saveFile('step.svg', svg, 'image/svg+xml');
        tell('Saved as step.svg. It moves wherever a page or a slide shows it as a picture.');
    });
}
