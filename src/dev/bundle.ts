import {rm} from 'node:fs/promises';
import {fileURLToPath} from 'node:url';
import {build, type Plugin} from 'esbuild';

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

/**
 * gray-matter only splits here: every engine that it could call is refused (src/markdown/front-matter.ts). Its YAML reader
 * would be loaded all the same, and would load a reader of JavaScript.
 */
const withoutSecondYaml: Plugin = {
  name: 'without-second-yaml',
  setup({onResolve, onLoad}) {
    onResolve({filter: /^js-yaml$/}, ({path}) => ({path, namespace: 'left-out'}));
    onLoad({filter: /.*/, namespace: 'left-out'}, () => ({
      contents: "exports.safeLoad = exports.safeDump = () => { throw new Error('js-yaml is left out'); };",
    }));
  },
};

// A chunk of an earlier run would be packed too.
await rm(`${compiled}/program`, {recursive: true, force: true});
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
  plugins: [withoutSecondYaml],
  // gray-matter and what it uses call `require` for what Node itself brings.
  banner: {
    js: "import {createRequire as requireFrom} from 'node:module'; const require = requireFrom(import.meta.url);",
  },
  logLevel: 'warning',
});
