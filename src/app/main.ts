import './state/engineWorker.ts';

// Loaded afterwards, so that the engine's worker is under way first.
void import('./start.ts');
