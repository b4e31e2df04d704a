// Lets the program judge what is stored, one text at a time: a text that crashes it affects only itself, since the
// next is read by a new program.

// `load` resolves to a whole program; `first` is one to start with.
export function createReader(load, first = null) {
    let program = first;
    let page = 0; // one that draws nothing, for pictures

    // Resolves to `answer(program)`, or to `nothing` if that makes the program fail.
    async function ask(answer, nothing) {
        await ready();
        const said = answer(program);
        if (program.lacksRest()) {
            return ask(answer, nothing); // by a whole program
        }
        return program.hasFailed() ? nothing : said;
    }

    async function ready() {
        if (program === null || program.hasFailed()) {
            program = await load();
            page = 0;
        }
        return program;
    }

    return {
        reads: (text) => ask(() =>
            program.withTexts([text], (address) => program._gussetReads(address)) === 1, false),
        // As SVG, in the colours of this palette; empty if the text can't be read.
        drawing: (text, palette) => ask(() => {
            page ||= program._gussetReader();
            return program.withTexts([text], (saved) =>
                program.UTF8ToString(program._gussetSmallPicture(page, saved, palette)));
        }, ''),
        ready, // resolves to a program that has not failed
    };
}
