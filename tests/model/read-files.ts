import {parseItem} from '../../src/markdown/parse-item.ts';
import {readBinderFiles} from '../../src/model/read-binder-files.ts';
import {readYaml} from '../../src/yaml/read-yaml.ts';
import {textAt} from '../support/text-at.ts';

export const settings =
  'candidate: {name: Marit Haldane-Roe}\ncertificate: {name: Certificate}\ndate: 2026-09-28\n';
export const syllabus = `title: Part Two
sections:
  - title: Swatches
    requirements:
      - {id: S-01, kind: swatch, title: Garter stitch}
      - {id: S-02, kind: swatch, title: Ribs}
  - title: Questions
    tab: Answers
    requirements:
      - {id: Q-01, kind: question, title: Why block?, tied-to: [S-01]}
`;

/** Reads a binder from texts by path: `.md` files are items. A path with the text `null` is left out. */
export function readFiles(files: Readonly<Record<string, string | null>>, save = (text: string) => text) {
  const all = {'content/binder.yaml': settings, 'content/syllabus.yaml': syllabus, ...files};
  const texts = Object.entries(all).flatMap(([path, text]) =>
    text === null ? [] : [{path, text: save(text)}],
  );
  const isItem = ({path}: {path: string}) => path.endsWith('.md');
  const read = readBinderFiles({
    yamlFiles: texts.filter((file) => !isItem(file)),
    items: texts.filter(isItem).map(({path, text}) => parseItem(path, text)),
    clippings: '',
    styles: [],
    photos: new Map(),
    today: '2026-10-01',
    readYaml: ({text}) => readYaml(text),
  });
  const textOf = new Map(texts.map(({path, text}) => [path, text]));
  return {
    ...read,
    /** `rule: message ← text at its place`, without the file. */
    report: read.findings.map(
      ({rule, message, file, place}) => `${rule}: ${message} ← ${textAt(textOf.get(file) ?? '', place)}`,
    ),
  };
}
