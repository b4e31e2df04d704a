// The program of the lesson's page: requests and answers are JSON (engine/lectern/lectern.hpp).
import createLectern from './lectern.js';

export async function startLectern() {
    const lectern = await createLectern();
    return (request) => {
        const text = JSON.stringify(request);
        const size = lectern.lengthBytesUTF8(text) + 1;
        const address = lectern._malloc(size);
        lectern.stringToUTF8(text, address, size);
        const answer = lectern._gussetLectern(address);
        lectern._free(address);
        const reply = JSON.parse(lectern.UTF8ToString(answer));
        lectern._free(answer);
        return reply;
    };
}
