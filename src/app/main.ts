import './state/engineWorker.ts';
import './strict.ts';

// Loaded afterwards, as the parts of the page make schemas while they are loaded.
void import('./start.ts');
