import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';

// The page. It is served by the program itself, so every address in it is its own.
export default defineConfig({
  root: 'src/app',
  plugins: [svelte()],
  build: {
    outDir: '../../dist/app',
    emptyOutDir: true,
    target: 'es2022',
    // Fonts and pictures stay files of their own: a policy that forbids data: addresses must not break them.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
});
