import type {CitationCluster} from '../../src/references/citation.ts';
import {parseCitations} from '../../src/references/citation.ts';

/** A cluster from what stands between its brackets; throws where the test's own text cannot be read. */
export function cluster(text: string, inText = false): CitationCluster {
  const result = parseCitations(text);
  if (!result.ok) throw new Error(`${text}: ${result.problems.map(({message}) => message).join('; ')}`);
  return {citations: result.value, inText};
}

/** The in-text form: `@key [p. 57]`. */
export function inText(text: string): CitationCluster {
  return cluster(text, true);
}
