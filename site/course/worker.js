// The program of this page (engine/course/course.hpp), beside it.
import createCourse from './course.js';
import { answerWith } from '../worker_answers.js';

answerWith(createCourse, '_gussetCourse');
