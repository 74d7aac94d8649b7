import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';

export default defineConfig({
  root: 'src/app',
  publicDir: '../../static',
  base: './',
  plugins: [svelte({ configFile: '../../svelte.config.js' })],
  build: { outDir: '../../dist', emptyOutDir: true, target: 'es2022' },
  worker: { format: 'es' },
  preview: { port: 4173, strictPort: false, host: '127.0.0.1' },
});
