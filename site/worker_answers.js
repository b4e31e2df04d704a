// In a worker: answers the requests of a page (in_worker.js) with a program, so that a long one never holds the page
// up. `create` starts the program, whose function `name` takes a request.
import { asking } from './asking.js';

export function answerWith(create, name) {
    let current = 0; // the request that is being worked on
    const told = (progress) => postMessage({ id: current, progress });
    const program = create({ told }).then((started) => asking(started, name));

    addEventListener('message', async ({ data: { id, request } }) => {
        try {
            const ask = await program;
            current = id;
            postMessage({ id, reply: ask(request) });
        } catch (error) {
            postMessage({ id, failure: error.message });
        }
    });
}
