import {stringify} from 'yaml';

/** `value` as YAML on one line: plain where that is safe, quoted where it is not, lists and maps between brackets. */
export function oneLine(value: unknown): string {
  const options = {
    lineWidth: 0,
    collectionStyle: 'flow',
    flowCollectionPadding: false,
    blockQuote: false,
  } as const;
  return stringify(value, options).trimEnd();
}
