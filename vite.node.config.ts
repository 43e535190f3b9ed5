import { defineConfig } from 'vite';

// The command line and the server, for Node. Packages stay outside and are found in node_modules.
export default defineConfig({
  publicDir: false,
  build: {
    ssr: 'src/cli/main.ts',
    outDir: 'dist/node',
    emptyOutDir: true,
    target: 'node20',
    rolldownOptions: {
      output: { format: 'es', entryFileNames: 'tupwise.mjs', chunkFileNames: '[name]-[hash].mjs' },
    },
  },
});
