import {expect, test} from 'vitest';
import {embeddedFonts} from '../../src/dev/bench-peers.ts';
import {type Profile, sharesOf} from '../../src/dev/bench-stages.ts';

const frame = (functionName: string, url: string, lineNumber = 0) => ({
  functionName,
  url,
  lineNumber,
  columnNumber: 0,
});
const our = (file: string) => `file:///somewhere/.compiled/${file}`;
const library = 'file:///somewhere/node_modules/yaml/dist/index.js';

/** A profile of invented calls: each path from the outermost to the innermost, with its milliseconds. */
function profileOf(paths: readonly (readonly [ReturnType<typeof frame>[], number])[]): Profile {
  const nodes: Profile['nodes'] = [{id: 1, callFrame: frame('(root)', ''), children: []}];
  const samples = paths.map(([frames]) => {
    let parent = 1;
    for (const callFrame of frames) {
      const id = nodes.length + 1;
      nodes.push({id, callFrame, children: []});
      nodes.find((node) => node.id === parent)?.children?.push(id);
      parent = id;
    }
    return parent;
  });
  return {nodes, samples, timeDeltas: paths.map(([, time]) => time * 1000)};
}

test('time in a library counts for the folder of ours that called it; loading and waiting are their own', () => {
  const load = frame('compileSourceTextModule', 'node:internal/modules/esm/utils');
  const shares = sharesOf(
    profileOf([
      [
        [frame('check', our('pipeline.js')), frame('readYaml', our('yaml/read.js')), frame('parse', library)],
        40,
      ],
      [[frame('check', our('pipeline.js'))], 10],
      [[frame('check', our('pipeline.js')), load], 30],
      [[frame('', our('rules/index.js'))], 5],
      [[frame('', our('rules/index.js'), 12), frame('constructor', '')], 6],
      [[frame('tick', library)], 4],
      [[frame('(idle)', '')], 100],
      [[frame('(garbage collector)', '')], 7],
    ]),
  );
  expect(shares.total).toBe(202);
  expect(Object.fromEntries(shares.stages)).toEqual({
    'waiting for the disk, the decoder or the browser': 100,
    yaml: 40,
    'loading modules': 35,
    pipeline: 10,
    rules: 6,
    'collecting garbage': 7,
    'libraries, called by nobody of ours': 4,
  });
  expect(shares.stages.map(([, time]) => time)).toEqual([100, 40, 35, 10, 7, 6, 4]);
  expect(shares.functions[0]).toEqual(['parse yaml/dist/index.js', 40]);
});

test('embedded fonts are counted from the table of pdffonts', () => {
  // As poppler 22.12 prints it.
  const table = `name                                 type              encoding         emb sub uni object ID
------------------------------------ ----------------- ---------------- --- --- --- ---------
AAAAAA+Invented-Sans-yes-no          CID TrueType      Identity-H       yes yes yes     17  0
Helvetica                            Type 1            Custom           no  no  no      18  0
`;
  expect(embeddedFonts(table)).toBe('1 of 2');
});
