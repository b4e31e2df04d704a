// What the start page asks of the program and of the board beneath it.
import { openedFrom } from './files.js';
import { createReader } from './reader.js';
import { goToPlace } from './storage.js';
import { isTaught } from './taught.js';

// `needs` (app.js): begun, a promise, until which the program takes nothing; running(), which returns the program and
// its page; open, files, views, hasBoard(), newProgram(); and openGround(), which opens the dialog of the photograph.
export function createBoardAccess({ begun, running, open, files, views, hasBoard, newProgram, openGround }) {
    const said = (name, texts = [], ...numbers) => {
        const { program, page } = running();
        return program.withTexts(texts, (...addresses) =>
            program.UTF8ToString(program[name](page, ...numbers, ...addresses)));
    };
    const drawing = (text, palette) => {
        const { program, page } = running();
        return program.withTexts([text], (address) =>
            program.UTF8ToString(program._gussetSmallPicture(page, address, palette)));
    };
    const put = async (text, from) => {
        await begun;
        open(text, from);
    };

    const begin = async () => {
        await begun;
        open(said('_gussetEmptyBoard'), isTaught() ? openedFrom.new : openedFrom.firstNew);
    };

    return {
        forms: {
            forms: async () => {
                await begun;
                return JSON.parse(said('_gussetStarterForms'));
            },
            make: (typed) => said('_gussetStarter', [JSON.stringify(typed)]),
            shares: (typed) => said('_gussetStarterShares', [JSON.stringify(typed)]),
            outline: () => said('_gussetOutline'),
            drawing,
        },
        recent: {
            retitled: (text, title) => said('_gussetRetitled', [text, title]),
            // Stores the board that is shown; then a reload brings the one that `goTo` has gone to.
            open: async (name) => {
                await begun;
                const { program, page } = running();
                program._gussetLeave(page);
                const isFree = await goToPlace(name);
                if (isFree) {
                    views.pushBoard();
                    location.reload();
                }
                return isFree;
            },
            newReader: () => createReader(newProgram),
        },
        put: (model) => put(model, openedFrom.form),
        begin,
        trace: () => begin().then(openGround),
        openLink: (link) => put(link, openedFrom.link),
        openExample: files.fetchExample,
        chooseFile: files.choose,
        goOn: () => views.goTo('board'),
        // The board to go on with, or null.
        now: async () => {
            await begun;
            if (!hasBoard()) {
                return null;
            }
            const model = said('_gussetBoard');
            return { title: JSON.parse(model).title, drawing: (palette) => drawing(model, palette) };
        },
    };
}
