import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig, type Plugin } from 'vite';

/** Each rule carries worked examples and rows for the tests to run; nobody reads them on the page, which leaves them at home. */
function withoutExamples(): Plugin {
  return {
    name: 'without-examples',
    apply: 'build',
    enforce: 'pre',
    transform(code, id) {
      // What is noted of a tool stands beside its figures for whoever reads the source.
      if (/[\\/]src[\\/]methods[\\/]quantity[\\/]tools\.ts$/.test(id)) return { code: code.replace(/\}, '(?:[^'\\]|\\.)*'/g, "}, ''"), map: null };
      if (!/[\\/]src[\\/]knowledge[\\/]criteria[\\/]/.test(id)) return undefined;
      // Rows of the component list are for the tests, too.
      const left = code.replace(/\brows: \[[\d., ]*\],?/g, '').replace(/\bexamples: \[(?:\s*\{[^{}]*\},?)*\s*\],?/g, '');
      // Only of a gate is the question ever asked in words of its own: where nothing else says what would settle it.
      const asked = left.split(/(?=\n {4}id: ')/).map((one) => (/\bgate: true\b/.test(one) ? one : one.replace(/\bquestion: '(?:[^'\\]|\\.)*'/, "question: ''"))).join('');
      if (/\bstands: '/.test(left)) this.error(`the examples of ${id} are written in a way that the build does not read`);
      return { code: asked, map: null };
    },
  };
}

/** Builds the worker that keeps the page for a reload without its server, and writes into it which files the page has. */
function keptForReload(): Plugin {
  const id = join(import.meta.dirname, 'src/app/offline/service-worker.ts');
  return {
    name: 'kept-for-reload',
    apply: 'build',
    buildStart() {
      // A page without such a worker is built as well: the tests of the build make small pages.
      if (existsSync(id)) this.emitFile({ type: 'chunk', id, fileName: 'service-worker.js' });
    },
    generateBundle(_options, bundle) {
      if (!existsSync(id)) return;
      const worker = bundle['service-worker.js'];
      if (worker?.type !== 'chunk' || worker.imports.length > 0) throw new Error('the worker that keeps the page must be one file by itself');
      // Browsers that run the page all read woff2.
      const names = Object.keys(bundle).filter((name) => name !== worker.fileName && !/\.(woff|map)$/.test(name)).sort();
      const hash = createHash('sha256');
      for (const name of names) {
        const file = bundle[name];
        hash.update(name).update(file?.type === 'chunk' ? file.code : (file?.source ?? ''));
      }
      const files = ['/', ...names.filter((name) => name !== 'index.html').map((name) => `/${name}`), '/mark.svg'];
      worker.code = `const PAGE_FILES = ${JSON.stringify(files)}, PAGE_VERSION = ${JSON.stringify(hash.digest('hex').slice(0, 16))};\n${worker.code}`;
    },
  };
}

// The page. It is served by the program itself, so every address in it is its own.
export default defineConfig({
  root: 'src/app',
  plugins: [withoutExamples(), svelte(), keptForReload()],
  build: {
    outDir: '../../dist/app',
    emptyOutDir: true,
    target: 'es2022',
    // Fonts and pictures stay files of their own: a policy that forbids data: addresses must not break them.
    assetsInlineLimit: 0,
    // A later sheet fetches its own scripts; only its style is asked for beforehand, and only of the first page everything.
    modulePreload: { polyfill: false, resolveDependencies: (_file, needed, { hostType }) => (hostType === 'html' ? needed : needed.filter((name) => name.endsWith('.css'))) },
    rolldownOptions: {
      // Without side effects: the core, which is pure, so that a sheet that uses one room of it does not draw the rest of its
      // index into the first page; and the reader of YAML, since the page reads no survey file.
      treeshake: { moduleSideEffects: [{ test: /[\\/]src[\\/](methods|hammer|entries|knowledge|derived|views)[\\/]/, sideEffects: false }, { test: /node_modules[\\/]yaml[\\/]/, sideEffects: false }] },
    },
  },
});
