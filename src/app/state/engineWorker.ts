/** The engine's worker; made first of all, so that it loads while the page does. */
export const engineWorker = new Worker(new URL('../../worker/engine.worker.ts', import.meta.url), {
  type: 'module',
});
