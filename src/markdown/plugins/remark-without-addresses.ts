import type {Construct, Extension} from 'micromark-util-types';
import type {Processor} from 'unified';

/**
 * Takes out of GFM what makes links of bare addresses. It asks of every letter whether an address begins there, which
 * is more than a third of all parsing; most items hold none. For texts without `mayHoldAddress` the tree is the same.
 */
export function remarkWithoutAddresses(this: Processor): undefined {
  const data = this.data();
  data.micromarkExtensions = (data.micromarkExtensions ?? []).map(withoutAddresses);
  data.fromMarkdownExtensions = (data.fromMarkdownExtensions ?? [])
    .flat()
    .filter(({enter}) => enter?.literalAutolink === undefined);
}

/**
 * Whether GFM could find a bare address: `www.`, `http:`, or a letter before an `@` that does not begin a citation, also
 * where a backslash stands between. A character reference may stand for any of these.
 */
export function mayHoldAddress(text: string): boolean {
  return /&#?\w+;|[\w+\-.\\]@|www\\?\.|https?\\?:/i.test(text);
}

const ofAddresses: ReadonlySet<string | undefined> = new Set([
  'emailAutolink',
  'protocolAutolink',
  'wwwAutolink',
]);

function withoutAddresses(extension: Extension): Extension {
  if (extension.text === undefined) return extension;
  const starts = Object.entries(extension.text).map(([code, constructs]): [string, Construct[]] => [
    code,
    [constructs ?? []].flat().filter(({name}) => !ofAddresses.has(name)),
  ]);
  return {...extension, text: Object.fromEntries(starts.filter(([, constructs]) => constructs.length > 0))};
}
