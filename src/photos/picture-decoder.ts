import {readFileSync} from 'node:fs';
import {createRequire} from 'node:module';
import {dirname, join} from 'node:path';
import {OperationalError} from '../support/operational-error.ts';

/**
 * The decoder of pictures. It has a native part and takes its time to load; what a cache holds needs none. Throws
 * `OperationalError` when it was installed for another kind of computer.
 */
export async function loadDecoder() {
  try {
    return (await import('sharp')).default;
  } catch (cause) {
    throw new OperationalError(
      'the decoder of photos cannot be loaded; install Swatchleaf again (`npm ci` in a clone)',
      {cause},
    );
  }
}

/** Its version, without loading it; the libraries that it uses come with it. */
export function decoderVersion(): string {
  const main = createRequire(import.meta.url).resolve('sharp');
  const manifest: {version: string} = JSON.parse(
    readFileSync(join(dirname(main), '..', 'package.json'), 'utf8'),
  );
  return manifest.version;
}
