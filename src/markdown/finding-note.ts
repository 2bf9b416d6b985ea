import type {Element} from 'hast';
import {h} from 'hastscript';
import type {Finding} from '../diagnostics/finding.ts';
import {messageParts} from '../support/message-parts.ts';

const words: Readonly<Record<Finding['severity'], string>> = {
  error: 'Error',
  warning: 'Warning',
  info: 'For information',
};

/** A finding as it is printed on a draft: how much it weighs, its line, the fact, and what to do. */
export function findingNote(finding: Finding, where = `line ${finding.place.line}`): Element {
  const {severity, message, hint} = finding;
  return h('aside', {className: ['note', severity]}, [
    h('span', {className: ['weight']}, `${words[severity]}, ${where}`),
    h('span', {className: ['fact']}, inWords(message)),
    h('span', {className: ['advice']}, inWords(hint)),
  ]);
}

/** What stands between backticks is a word of the file. */
function inWords(message: string): (Element | string)[] {
  return messageParts(message).map(({text, isValue}) => (isValue ? h('code', text) : text));
}
