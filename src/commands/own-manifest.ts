import {readFileSync} from 'node:fs';

/** What Swatchleaf's own package says of itself. */
export interface OwnManifest {
  readonly version: string;
  readonly engines: {readonly node: string};
}

export function readOwnManifest(): OwnManifest {
  return JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
}
