// Requests to a program that works in a worker (worker_answers.js): each is a promise of its answer. `cancel` drops what
// is being worked on, and the next request starts the program anew.
export function programIn(script) {
    let worker = null;
    let lastId = 0;
    const waiting = new Map();

    function stop(reason) {
        worker?.terminate();
        worker = null;
        waiting.forEach(({ reject }) => reject(reason));
        waiting.clear();
    }
    function start() {
        worker = new Worker(script, { type: 'module' });
        worker.addEventListener('message', ({ data: { id, reply, progress, failure } }) => {
            const { resolve, reject, told } = waiting.get(id) ?? {};
            if (progress) {
                told?.(progress);
                return;
            }
            waiting.delete(id);
            if (failure) {
                reject?.(new Error(`The program failed (${failure}). Try again.`));
            } else {
                resolve?.(reply);
            }
        });
        worker.addEventListener('error', ({ message }) =>
            stop(new Error(`The program did not start (${message ?? 'it could not be fetched'}). Reload the page.`)));
    }

    return {
        // Rejects with what is wrong, in words. `told` hears how far a long one has got.
        ask(request, told) {
            if (!worker) {
                start();
            }
            const id = lastId += 1;
            return new Promise((resolve, reject) => {
                waiting.set(id, { reject, told, resolve: (reply) => {
                    if (reply.faults) {
                        reject(new Error(reply.faults.map((fault) => (/[.!?]$/.test(fault) ? fault : `${fault}.`)).join(' ')));
                    } else {
                        resolve(reply);
                    }
                } });
                worker.postMessage({ id, request });
            });
        },
        cancel() {
            stop(new Error('Stopped.'));
        },
    };
}
