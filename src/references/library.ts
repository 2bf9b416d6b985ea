import {invariant} from '../support/invariant.ts';
import type {Source} from './source.ts';

/**
 * The sources by key, each with a number as id towards the citation processor: its tables are plain objects, in which a
 * key such as `constructor` would be taken for something else.
 */
export class Library {
  readonly #sources: readonly Source[];
  readonly #idByKey = new Map<string, string>();

  constructor(sources: readonly Source[]) {
    this.#sources = sources;
    for (const [index, {id}] of sources.entries()) {
      if (!this.#idByKey.has(id)) this.#idByKey.set(id, String(index));
    }
  }

  has(key: string): boolean {
    return this.#idByKey.has(key);
  }

  idOf(key: string): string {
    const id = this.#idByKey.get(key);
    invariant(id !== undefined, `the key ${key} is in no library`);
    return id;
  }

  sourceOf(id: string): Source {
    const source = this.#sources[Number(id)];
    invariant(source !== undefined, `no source has the number ${id}`);
    return source;
  }

  source(key: string): Source {
    return this.sourceOf(this.idOf(key));
  }
}
