import workerpool from 'workerpool';
import { createTasks } from './tasks.ts';

workerpool.worker({ batch: createTasks() });
