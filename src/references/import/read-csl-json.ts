import {failure, type Problem, type Result, type Span, success} from '../../support/result.ts';
import {type CslRecord, isRecord} from './csl-record.ts';

export interface CslItem {
  readonly record: CslRecord;
  readonly span: Span;
}

export interface CslItems {
  readonly items: readonly CslItem[];
  readonly problems: readonly Problem[];
}

/** CSL-JSON: a list of items, a list under `items` or `references`, or one item. */
export function readCslJson(text: string): Result<CslItems> {
  const parsed = parseJson(text);
  if (!parsed.ok) return parsed;
  const list = listIn(parsed.value);
  if (list === null) {
    return failure({
      message: 'no list of references stands in this file',
      hint: 'Save the references as CSL-JSON in the other program.',
      span: {start: 0, end: 0},
    });
  }
  const spans = objectSpans(text);
  const items: CslItem[] = [];
  const problems: Problem[] = [];
  for (const [index, record] of list.entries()) {
    const span = spans[index] ?? {start: 0, end: 0};
    if (isRecord(record)) items.push({record, span});
    else problems.push(noItem(index, span));
  }
  return success({items, problems});
}

function listIn(value: unknown): readonly unknown[] | null {
  if (Array.isArray(value)) return value;
  if (!isRecord(value)) return null;
  const list = value.references ?? value.items;
  if (Array.isArray(list)) return list;
  return 'type' in value || 'title' in value ? [value] : null;
}

function noItem(index: number, span: Span): Problem {
  return {
    message: `entry ${index + 1} of the list is no reference`,
    hint: 'Write it as `{"id": …, "type": …, "title": …}`, or take it out, and import the file again.',
    span,
  };
}

function parseJson(text: string): Result<unknown> {
  try {
    return success(JSON.parse(text));
  } catch (error) {
    const told = /position (\d+)/.exec(error instanceof Error ? error.message : '')?.[1];
    const start = Math.min(told === undefined ? text.trimEnd().length : Number(told), text.length);
    return failure({
      message: text.trim() === '' ? 'nothing stands in this file' : 'this is no JSON from here on',
      hint: 'Look for a comma, a quotation mark or a bracket that is missing before it; or save the references anew in the other program.',
      span: {start, end: Math.min(start + 1, text.length)},
    });
  }
}

/** Where each entry of the first list begins, in order: its first character. */
function objectSpans(text: string): readonly Span[] {
  const spans: Span[] = [];
  const listAt = text.indexOf('[');
  const isSingle = listAt < 0 || /^\s*\{/.test(text);
  let depth = 0;
  let expects = false;
  const marks = /"[^"\\]*(?:\\.[^"\\]*)*"|[[\]{},]|[^\s"[\]{},:]+/gs;
  marks.lastIndex = isSingle ? text.search(/"(?:references|items)"\s*:\s*\[/) : listAt;
  if (marks.lastIndex < 0) return [{start: 0, end: 1}];
  for (let match = marks.exec(text); match; match = marks.exec(text)) {
    const [mark] = match;
    if (depth === 1 && expects && mark !== ']') spans.push({start: match.index, end: match.index + 1});
    if (mark === '[' || mark === '{') depth++;
    if (mark === ']' || mark === '}') depth--;
    expects = depth === 1 && (mark === '[' || mark === ',');
    if (mark === ']' && depth === 0) break;
  }
  return spans;
}
