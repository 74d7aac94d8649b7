// A worker thread starts without the TypeScript reader of the thread that made it.
import { register } from 'tsx/esm/api';

register();
await import('./worker.ts');
