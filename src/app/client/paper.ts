import { mount } from 'svelte';
import PaperFromFile from './PaperFromFile.svelte';

/** Puts the bare page in place of the workbench. */
export function showPaper(target: HTMLElement): void {
  mount(PaperFromFile, { target });
}
