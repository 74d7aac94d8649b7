import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

/** The engine's modules do nothing by being loaded, so what a page does not use is left out. */
const rolldownOptions = {
  treeshake: {
    moduleSideEffects: [{ test: /[\\/]lib[\\/][a-z]+[\\/].*\.ts$/, sideEffects: false }],
  },
};

export default defineConfig({
  root: 'src/app',
  publicDir: '../../static',
  base: './',
  plugins: [
    svelte({ configFile: '../../svelte.config.js' }),
    VitePWA({
      strategies: 'generateSW',
      // The page registers it itself and lets a new version in when the user says so.
      injectRegister: false,
      manifest: false,
      workbox: {
        globPatterns: ['**/*.{html,js,css,json,svg,png,webmanifest}'],
        maximumFileSizeToCacheInBytes: 4_000_000,
        clientsClaim: true,
        skipWaiting: false,
        cleanupOutdatedCaches: true,
        inlineWorkboxRuntime: true,
        sourcemap: false,
      },
    }),
  ],
  build: { outDir: '../../dist', emptyOutDir: true, target: 'es2022', rolldownOptions },
  worker: { format: 'es', rolldownOptions },
  preview: { port: 4173, strictPort: false, host: '127.0.0.1' },
});
