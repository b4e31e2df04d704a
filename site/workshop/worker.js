// The program of this page (engine/workshop/workshop.hpp), beside it.
import createWorkshop from './workshop.js';
import { answerWith } from '../worker_answers.js';

answerWith(createWorkshop, '_gussetWorkshop');
