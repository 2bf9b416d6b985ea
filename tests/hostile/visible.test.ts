import {describe, expect, test} from 'vitest';
import {previewFindings} from '../../src/commands/preview-findings.ts';
import {tellStatus} from '../../src/commands/status/tell-status.ts';
import type {Finding} from '../../src/diagnostics/finding.ts';
import {formatJson} from '../../src/diagnostics/format-json.ts';
import {formatSarif} from '../../src/diagnostics/format-sarif.ts';
import {formatText} from '../../src/diagnostics/format-text.ts';
import {renderCheckReport} from '../../src/layout/render-check-report.ts';
import {renderStatus} from '../../src/layout/render-status.ts';
import {visibleJson} from '../../src/support/visible-json.ts';
import {visibleText} from '../../src/support/visible-text.ts';
import {emptyFolder, smallBinder, swatchleaf} from '../support/run-cli.ts';
import {workedExample} from '../support/worked-example.ts';

/*
 * Text of a file must not steer a terminal, turn the words around it, or hide between them. What must not come out as it is:
 * Unicode's category Cc but tab and line end, the property Bidi_Control (Unicode Standard Annex 9; CVE-2021-42574 shows
 * what they do to a reader), and the space without width.
 */
const hidden = /(?![\t\n])\p{Cc}|\p{Bidi_Control}|\u200b/u;
const marks = ['\u202e', '\u0000', '\u001b[31m', '\u2066', '\u200b', '\u009b2J', '\u007f', '\u061c'];
const evil = `a${marks.join('b')}c`;
/** An argument of a program cannot hold U+0000. */
const typed = evil.replaceAll('\u0000', '');

const finding: Finding = {
  rule: 'word-limit',
  severity: 'error',
  file: `content/${evil}.md`,
  place: {line: 1, column: 1, endLine: 1, endColumn: evil.length + 1},
  message: `\`${evil}\` is wrong`,
  hint: `Take out \`${evil}\`.`,
  actual: evil,
  expected: [evil],
  related: [{file: `${evil}.yaml`, place: {line: 1, column: 1, endLine: 1, endColumn: 1}, message: evil}],
};

describe('findings', () => {
  test('as text', () => {
    const said = formatText([finding], () => evil);
    expect(said).not.toMatch(hidden);
    // The message, the hint, the line, two files and the other message: nothing is left out.
    expect(said.split('\\u{202e}')).toHaveLength(7);
  });

  test.each([
    ['JSON', formatJson([finding])],
    ['SARIF', formatSarif([finding], [], '1')],
    ['any value', visibleJson({[evil]: evil, tag: '\u{e0041}'})],
  ])('as %s, which reads as what was written', (_, text) => {
    expect(text).not.toMatch(hidden);
    expect(text).not.toMatch(/[\u{e0000}-\u{e007f}]/u);
    expect(JSON.stringify(JSON.parse(text))).toContain(JSON.stringify(evil).slice(1, -1));
  });
});

test('made visible once is visible; words of every script, emoji and their joiners stay as they are', () => {
  expect(visibleText(visibleText(evil))).toBe(visibleText(evil));
  const plain = 'Häkeln, вязание, חרוט, நெசவு, می‌خواهم, 👩‍🌾 und 手編み\n\t½';
  expect(visibleText(plain)).toBe(plain);
});

describe('a binder full of them', async () => {
  const input = await workedExample();
  const {binder} = input;
  const hostile = {
    ...binder,
    settings: {
      ...binder.settings,
      candidate: {...binder.settings.candidate, name: evil, number: evil},
      certificate: {...binder.settings.certificate, name: evil, part: evil},
    },
    syllabus: {
      ...binder.syllabus,
      sections: binder.syllabus.sections.map((section) => ({
        ...section,
        title: evil,
        requirements: section.requirements.map((requirement) => ({...requirement, title: evil})),
      })),
    },
    items: binder.items.map((item) => ({...item, title: evil})),
  };
  const [first] = binder.items;
  const findings = [finding, {...finding, file: first?.file ?? ''}, {...finding, file: binder.settingsFile}];
  const view = {...input, binder: hostile, findings};

  test.each([
    ['check report', () => renderCheckReport(view)],
    ['status page', () => renderStatus(view)],
  ])('%s', (_, render) => {
    const {html} = render();
    const styles = /<style>[\s\S]*?<\/style>/.exec(html)?.[0] ?? '';
    expect(html.replace(styles, '')).not.toMatch(hidden);
    // In running heads a long word may be broken where we say so.
    expect(styles.replaceAll('\u200b', '')).not.toMatch(hidden);
    expect(html.split('\\u{202e}').length).toBeGreaterThan(hostile.items.length);
  });

  test('preview', () => {
    const shown = previewFindings(hostile, findings, first?.id ?? null, '1 error');
    expect(shown.notes).toHaveLength(1);
    expect(JSON.stringify(shown.notes)).toContain('u{202e}');
    const texts: string[] = [];
    JSON.stringify(shown, (_, value) => {
      if (typeof value === 'string') texts.push(value);
      return value;
    });
    expect(texts.join('\n')).not.toMatch(hidden);
  });

  test.each([
    ['whole', []],
    ['of one item', [first?.id ?? '']],
  ])('status, %s', (_, ids) => {
    for (const isJson of [false, true]) {
      const said = tellStatus(hostile, findings, {ids, tiedTo: null, isJson}, 80);
      expect(said).not.toMatch(hidden);
      expect(said).toContain(isJson ? '\\u202e' : '\\u{202e}');
    }
  });
});

describe('the command line', () => {
  test.each([
    ['status', ['status', typed]],
    ['status --json', ['status', '--json', typed]],
    ['explain', ['explain', typed]],
    ['clip', ['clip', 'S-01', '--source', typed, 'words']],
    ['import', ['import', `${typed}.bib`]],
    ['new', ['new', typed]],
    ['answer', ['answer', typed]],
    ['check', ['check', typed]],
    ['build --browser', ['build', '--only', 'S-01', '--browser', `/${typed}`]],
    ['printed', ['printed', typed]],
    ['init', ['init', `${typed}/${typed}`, '--rings', typed]],
    ['a command that is none', [typed]],
    ['an option that is none', ['check', `--${typed}`]],
    ['a choice that is none', ['check', '--format', typed]],
  ])('%s: what was typed is shown, visibly', async (_, args) => {
    const {code, out, err} = await swatchleaf(args, {cwd: await smallBinder()});
    expect(out + err).not.toMatch(hidden);
    if (code !== 0) expect(err).toContain('\\u{202e}');
  });

  test.each(['text', 'json', 'sarif'])('check --format %s of a binder that holds them', async (format) => {
    const title = JSON.stringify(evil);
    const folder = await smallBinder({
      'content/syllabus.yaml': `title: ${title}\nsections:\n  - title: ${title}\n    requirements:\n      - {id: S-01, kind: swatch, title: ${title}, tied-to: [${title}]}\n`,
      'content/questions/q-01.md': `---\nrequirement: ${title}\n${title}: 1\n---\n[@x${evil}] [a](${evil})\n`,
    });
    const {out, err} = await swatchleaf(['check', folder, '--format', format]);
    expect(out + err).not.toMatch(hidden);
    expect(out).toContain(format === 'text' ? '\\u{202e}' : '\\u202e');
    if (format !== 'text') JSON.parse(out);
  });

  test('clip and import say what they wrote', async () => {
    const folder = await smallBinder({
      'a.ris': `TY  - BOOK\nTI  - T\nID  - a${evil}\nAU  - ${evil}\nER  - \n`,
    });
    const clipped = await swatchleaf(['clip', 'S-01', `words ${typed}`], {cwd: folder});
    const imported = await swatchleaf(['import', 'a.ris'], {cwd: folder});
    expect(clipped.code + imported.code).toBe(0);
    for (const {out, err} of [clipped, imported]) expect(out + err).not.toMatch(hidden);
    expect(clipped.out).toContain('\\u{202e}');
  });

  test('no binder in a folder of such a name', async () => {
    const {code, out, err} = await swatchleaf(['check', `${await emptyFolder()}/${typed}`]);
    expect(code).not.toBe(0);
    expect(out + err).not.toMatch(hidden);
  });
});
