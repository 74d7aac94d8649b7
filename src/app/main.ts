import { mount } from 'svelte';
import { config } from 'zod';
import App from './App.svelte';
import './styles/base.css';

// The page allows no code made from text; without this the checks of the project try it.
config({ jitless: true });

mount(App, { target: document.getElementById('app')! });
