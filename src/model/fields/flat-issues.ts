import type * as z from 'zod';
import type {YamlPath} from '../../yaml/places.ts';

/** An issue of the schema library with its path from the top, choices resolved. */
export type FlatIssue = Exclude<z.core.$ZodIssue, {code: 'invalid_union'}> & {readonly at: YamlPath};

/** Where a value may follow one of several schemas, the author is told about the one that it most likely was meant for. */
export function flatIssues(issues: readonly z.core.$ZodIssue[], base: YamlPath = []): readonly FlatIssue[] {
  return issues.flatMap((issue) => {
    const at = [...base, ...issue.path.map((step) => (typeof step === 'number' ? step : String(step)))];
    if (issue.code !== 'invalid_union') return [{...issue, at}];
    return likeliestBranch(
      issue.errors.map((branch) => flatIssues(branch, at)),
      at.length,
    );
  });
}

function likeliestBranch(branches: readonly (readonly FlatIssue[])[], depth: number): readonly FlatIssue[] {
  const isAbout = (code: FlatIssue['code']) => (issue: FlatIssue) =>
    issue.at.length === depth && issue.code === code;
  const values = branches.flat().filter(isAbout('invalid_value'));
  const fitting = branches.filter((branch) => !branch.some(isAbout('invalid_type')));
  const [likeliest] = fitting.filter((branch) => !branch.some(isAbout('invalid_value')));
  if (likeliest) return likeliest;
  // A choice among words or numbers: all of them in one message.
  const [first] = values;
  if (first?.code === 'invalid_value') {
    const all = values.flatMap((issue) => (issue.code === 'invalid_value' ? issue.values : []));
    return [{...first, values: all}];
  }
  return branches.find((branch) => branch.length > 0) ?? [];
}
