import { mount } from 'svelte';
import App from './App.svelte';
import './styles/base.css';

const target = document.getElementById('app')!;

// The command line prints the client page without the workbench around it.
if (location.hash === '#paper') {
  void import('./client/paper.ts').then(({ showPaper }) => showPaper(target));
} else {
  mount(App, { target });
}
