// The program of these pages: one function that takes a request and gives an answer, both JSON (engine/desk/desk.hpp).
import createDesk from './desk.js';

export async function startDesk() {
    const desk = await createDesk();
    return (request) => {
        const text = JSON.stringify(request);
        const size = desk.lengthBytesUTF8(text) + 1;
        const address = desk._malloc(size);
        desk.stringToUTF8(text, address, size);
        const answer = desk._gussetDesk(address);
        desk._free(address);
        const reply = JSON.parse(desk.UTF8ToString(answer));
        desk._free(answer);
        return reply;
    };
}
