import {fileURLToPath} from 'node:url';
import {build} from 'esbuild';

/*
 * Part of `npm run compile`: joins the compiled modules and the small packages they use into the few files in
 * `.compiled/program` that run. A cold `check` opens a dozen files instead of a thousand. What only some commands need
 * stays in files of its own, and is loaded when it is needed.
 */

const compiled = fileURLToPath(new URL('..', import.meta.url));

/** Packages of one large file, or with a native part, or with a licence of their own: loaded from where they were installed. */
const apart = [
  'sharp',
  'puppeteer-core',
  'handlebars',
  'citeproc',
  '@citation-js/*',
  '@citation/*',
  '@fontsource/*',
];

await build({
  entryPoints: [`${compiled}/cli.js`],
  entryNames: 'swatchleaf',
  outdir: `${compiled}/program`,
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20.19',
  external: apart,
  // gray-matter and what it uses call `require` for what Node itself brings.
  banner: {
    js: "import {createRequire as requireFrom} from 'node:module'; const require = requireFrom(import.meta.url);",
  },
  logLevel: 'warning',
});
