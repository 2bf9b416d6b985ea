import {visibleText} from './visible-text.ts';

/** A message cut at its backticks: values of the candidate's between them, words of ours around them. */
export type MessagePart = {readonly text: string; readonly isValue: boolean};

export function messageParts(message: string): readonly MessagePart[] {
  return visibleText(message)
    .split('`')
    .map((text, index) => ({text, isValue: index % 2 === 1}))
    .filter(({text}) => text !== '');
}
