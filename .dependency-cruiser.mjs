// The import table of DEVELOPERS.md, enforced. Each layer lists the folders and packages it may import besides itself.
const citationEngine = [
  'citeproc',
  '@citation-js/core',
  '@citation-js/plugin-bibtex',
  '@citation-js/plugin-csl',
  '@citation-js/plugin-ris',
  '@citation/csl-style-chicago-fullnote-bibliography',
];
const unistUtilities = ['unist-util-visit', 'mdast-util-to-string'];
const node = ['core'];

/** layer → [folders of src it may import, packages it may import, whether Node's own modules are allowed, why] */
const layers = {
  support: [[], [], false, 'support is tiny pure functions that everything may use'],
  knitting: [['support'], [], false, "the trade's arithmetic knows no files, no Markdown, no packages"],
  references: [
    ['support'],
    citationEngine,
    false,
    'references are text in, text out, behind one citation engine',
  ],
  diagnostics: [
    ['support'],
    ['vfile', 'vfile-message'],
    false,
    'findings are data; text is made from data only',
  ],
  yaml: [['support', 'diagnostics'], ['yaml'], false, 'the one place that knows the YAML library'],
  model: [
    ['support', 'knitting', 'references', 'diagnostics', 'yaml'],
    ['zod'],
    false,
    'typed content, read-only',
  ],
  rules: [
    ['support', 'knitting', 'references', 'diagnostics', 'model'],
    unistUtilities,
    false,
    'a rule sees the binder and nothing else',
  ],
  tables: [
    ['support', 'knitting', 'references', 'diagnostics', 'model'],
    ['hastscript'],
    false,
    'a computed table is a pure function of the binder',
  ],
  markdown: [
    ['support', 'diagnostics', 'yaml', 'model'],
    [
      'unified',
      'remark-',
      'rehype-',
      'gray-matter',
      'hastscript',
      'micromark',
      'mdast-util-',
      'hast-util-',
      'unist-util-',
      'vfile',
    ],
    false,
    'markdown receives computed tables through a lookup',
  ],
  layout: [
    ['support', 'diagnostics', 'model'],
    ['handlebars'],
    false,
    'layout shows finished values; it computes nothing',
  ],
  compose: [
    ['support', 'knitting', 'references', 'diagnostics', 'model', 'tables', 'markdown'],
    ['diff'],
    false,
    'an item with everything computed that its pages show; no disk, no browser, no layout',
  ],
  photos: [['support', 'io'], ['sharp'], true, 'the one place that decodes pictures'],
  print: [
    ['support', 'diagnostics'],
    ['puppeteer-core'],
    true,
    'the one place that knows the browser and PDF',
  ],
  io: [['support'], [], true, 'files, atomically'],
  preview: [
    ['support'],
    [],
    true,
    'a page that follows the work; it shows what it is given and knows no binder',
  ],
  commands: [
    [
      'support',
      'knitting',
      'references',
      'diagnostics',
      'yaml',
      'model',
      'rules',
      'tables',
      'markdown',
      'compose',
      'layout',
      'photos',
      'print',
      'io',
      'preview',
      'pipeline.ts',
    ],
    [],
    true,
    'one file per command',
  ],
};

const literal = (text) => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
const folderPattern = (name) => (name.endsWith('.ts') ? `^src/${literal(name)}$` : `^src/${name}/`);

const layerRules = Object.entries(layers).flatMap(([layer, [folders, packages, mayUseNode, why]]) => {
  const packagePattern = packages.map((name) => `^node_modules/(@types/)?${literal(name)}`);
  const types = '^node_modules/@types/(mdast|hast|unist|node)/';
  return [
    {
      name: `${layer}-imports`,
      comment: `src/${layer} may import only itself, ${[...folders, ...packages].join(', ') || 'nothing else'}: ${why}.`,
      severity: 'error',
      from: {path: folderPattern(layer)},
      to: {
        pathNot: [folderPattern(layer), ...folders.map(folderPattern), ...packagePattern, types],
        dependencyTypesNot: node,
      },
    },
    ...(mayUseNode
      ? []
      : [
          {
            name: `${layer}-no-node`,
            comment: `src/${layer} may not import a Node module: ${why}.`,
            severity: 'error',
            from: {path: folderPattern(layer)},
            to: {dependencyTypes: node},
          },
        ]),
  ];
});

export default {
  forbidden: [
    ...layerRules,
    {
      name: 'no-cycles',
      comment: 'Imports flow one way.',
      severity: 'error',
      from: {},
      to: {circular: true},
    },
    {
      name: 'pipeline-knows-no-world',
      comment:
        'src/pipeline.ts names the phases; printing and the disk belong to commands. Of io it knows only the Workspace type.',
      severity: 'error',
      from: {path: '^src/pipeline\\.ts$'},
      to: {
        path: ['^src/(print|commands|dev|photos)/', '^src/cli\\.ts$', '^src/io/', '^node_modules/'],
        pathNot: ['^src/io/workspace\\.ts$', '^node_modules/@types/'],
      },
    },
    {
      name: 'cli-is-thin',
      comment: 'src/cli.ts turns arguments into a command, prints and sets the exit code.',
      severity: 'error',
      from: {path: '^src/cli\\.ts$'},
      to: {
        pathNot: ['^src/(commands|diagnostics|support)/', '^node_modules/(commander|picocolors|@types)/'],
        dependencyTypesNot: node,
      },
    },
    {
      name: 'nothing-imports-dev',
      comment: 'src/dev is for developers; the program must work without it.',
      severity: 'error',
      from: {path: '^src/', pathNot: '^src/dev/'},
      to: {path: ['^src/dev/', '^tests/']},
    },
    {
      name: 'nothing-imports-cli',
      comment: 'src/cli.ts is the outermost layer.',
      severity: 'error',
      from: {},
      to: {path: '^src/cli\\.ts$'},
    },
    {
      name: 'must-resolve',
      comment: 'An import that does not resolve cannot be checked.',
      severity: 'error',
      from: {},
      to: {couldNotResolve: true, pathNot: '^vitest'},
    },
  ],
  options: {
    // `exclude` would hide packages from the layer rules; they must be seen but not followed.
    doNotFollow: {path: 'node_modules'},
    tsPreCompilationDeps: true,
    tsConfig: {fileName: 'tsconfig.json'},
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'node', 'default'],
    },
  },
};
