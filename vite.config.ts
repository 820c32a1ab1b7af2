import { defineConfig, type Plugin } from 'vite';
import solid from 'vite-plugin-solid';

/** Packages that no first view needs; each stays in a file of its own, fetched when a dynamic import asks for it. */
const fetchedOnDemand = ['mathjs', 'katex', 'zod', 'ml-levenberg-marquardt'];

/** The development server injects style elements, which the policy in index.html rightly forbids to the built app. */
const allowInjectedStylesWhileDeveloping: Plugin = {
  name: 'allow-injected-styles-while-developing',
  apply: 'serve',
  transformIndexHtml: (html) => html.replace("style-src 'self'", "style-src 'self' 'unsafe-inline'"),
};

const hasScreen = process.platform !== 'linux' || Boolean(process.env['DISPLAY'] ?? process.env['WAYLAND_DISPLAY']);

/** Entries of the desk reference are plain data: where nobody reads them they may be left out of the page. */
const treeshaking = { manualPureFunctions: ['correlation', 'positionalCorrelation', 'regionCorrelations'] };

export default defineConfig({
  base: './',
  plugins: [solid(), allowInjectedStylesWhileDeveloping],
  worker: { format: 'es', rolldownOptions: { treeshake: treeshaking } },
  preview: { open: hasScreen && !process.env['CI'] },
  build: {
    target: 'es2022',
    sourcemap: true,
    assetsInlineLimit: 0,
    // What is fetched on demand may be larger than the first load, whose size a browser test watches.
    chunkSizeWarningLimit: 800,
    rolldownOptions: {
      treeshake: treeshaking,
      output: {
        codeSplitting: {
          groups: fetchedOnDemand.map((name) => ({ name, test: new RegExp(`[\\\\/]node_modules[\\\\/]${name}[\\\\/]`) })),
        },
      },
    },
  },
});
