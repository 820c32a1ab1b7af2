import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { defineConfig, type Plugin } from 'vite';
import solid from 'vite-plugin-solid';
import { notices } from './vite.notices.ts';
import { unreadWords } from './vite.unread-words.ts';

/** Packages that no first view needs; each stays in a file of its own, fetched when a dynamic import asks for it. */
const fetchedOnDemand = ['mathjs', 'katex', 'zod'];

/** The development server injects style elements, which the policy in index.html rightly forbids to the built app. */
const allowInjectedStylesWhileDeveloping: Plugin = {
  name: 'allow-injected-styles-while-developing',
  apply: 'serve',
  transformIndexHtml: (html) => html.replace("style-src 'self'", "style-src 'self' 'unsafe-inline'"),
};

const OFFLINE_WORKER = 'offline-worker.js';
/** What is no part of the app, and faces in forms that only old browsers ask for. */
const NOT_KEPT = /\.(?:cdx\.json|ttf|woff)$|^(?:bench\.png|server-headers\.txt)$/;

/** Tells the worker that keeps the app offline which files it is made of. */
const keptOffline: Plugin = {
  name: 'kept-offline',
  apply: 'build',
  buildStart() {
    if (this.environment.name !== 'client') return;
    this.emitFile({
      type: 'chunk',
      id: join(import.meta.dirname, 'src/workers/offline/offline-worker.ts'),
      fileName: OFFLINE_WORKER,
    });
  },
  generateBundle: {
    order: 'post',
    handler(_options, bundle) {
      const worker = bundle[OFFLINE_WORKER];
      if (worker?.type !== 'chunk') return;
      const own = join(import.meta.dirname, 'public');
      const files = [...readdirSync(own), ...Object.keys(bundle)]
        .filter((file) => file !== OFFLINE_WORKER && !NOT_KEPT.test(file))
        .sort();
      const main = join(import.meta.dirname, 'src/main.tsx');
      const entry = Object.values(bundle).find((made) => made.type === 'chunk' && made.moduleIds.includes(main));
      if (!entry) throw new Error('no script is known that the page begins with');
      const build = createHash('sha256');
      for (const file of files) {
        const made = bundle[file];
        build
          .update(file)
          .update(made ? (made.type === 'chunk' ? made.code : made.source) : readFileSync(join(own, file)));
      }
      worker.code = `const offlineFiles = ${JSON.stringify(files)}, offlineEntry = ${JSON.stringify(entry.fileName)}, offlineBuild = '${build.digest('hex').slice(0, 16)}';\n${worker.code}`;
    },
  },
};

const hasScreen = process.platform !== 'linux' || Boolean(process.env['DISPLAY'] ?? process.env['WAYLAND_DISPLAY']);

/** Entries of the desk reference are plain data: where nobody reads them they may be left out of the page. */
const treeshaking = {
  manualPureFunctions: [
    'correlation',
    'forReaders',
    'alternative',
    'entryNamed',
    'withProperties',
    'regionCorrelations',
    'ofTemperature',
    'atAltitude',
    'onSaturationLine',
  ],
};

export default defineConfig({
  base: './',
  plugins: [solid(), allowInjectedStylesWhileDeveloping, notices(import.meta.dirname), keptOffline],
  worker: {
    format: 'es',
    plugins: () => [unreadWords(import.meta.dirname, 'run-worker.ts')],
    rolldownOptions: { treeshake: treeshaking },
  },
  preview: { open: hasScreen && !process.env['CI'] },
  build: {
    target: 'es2022',
    // Browsers that know light-dark(): the two palettes stand side by side in tokens.css.
    cssTarget: ['chrome123', 'firefox128', 'safari17.5'],
    assetsInlineLimit: 0,
    modulePreload: {
      // Every browser of those fetches modules ahead by itself.
      polyfill: false,
      // The names of all that is fetched later are a kilobyte of the first load; each file finds its own parts.
      resolveDependencies: (_file, parts, { hostId }) => (hostId.includes('first-view') ? [] : parts),
    },
    // What is fetched on demand may be larger than the first load, whose size a browser test watches.
    chunkSizeWarningLimit: 800,
    rolldownOptions: {
      treeshake: treeshaking,
      output: {
        codeSplitting: {
          groups: [
            // What the first view needs comes in one file: twenty small ones pack worse and are asked for one by one.
            { name: 'first-view', test: /[\\/]src[\\/](?:main|app[\\/]App)\.tsx$/u, priority: 1 },
            ...fetchedOnDemand.map((name) => ({
              name,
              test: new RegExp(`[\\\\/]node_modules[\\\\/]${name}[\\\\/]`, 'u'),
            })),
          ],
        },
      },
    },
  },
});
