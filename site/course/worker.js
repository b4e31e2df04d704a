// The program of this page (engine/course/course.hpp), beside it, so that a long search never holds the page up.
import { asking } from '../asking.js';
import createCourse from './course.js';

let current = 0; // the request that is being worked on
const told = (progress) => postMessage({ id: current, progress });
const course = createCourse({ told }).then((program) => asking(program, '_gussetCourse'));

addEventListener('message', async ({ data: { id, request } }) => {
    try {
        const ask = await course;
        current = id;
        postMessage({ id, reply: ask(request) });
    } catch (error) {
        postMessage({ id, failure: error.message });
    }
});
