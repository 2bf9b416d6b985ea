import type {Place} from '../../diagnostics/finding.ts';
import type {Binder} from '../../model/binder.ts';
import type {Span} from '../../support/result.ts';

type Places = Binder['settingsPlaces'];
type Path = readonly (string | number)[];

/** Where a text of a YAML file stands, or a part of it; with the text when it stands there letter for letter. */
export function scalarAt(
  places: Places,
  path: Path,
  text: string,
  part: Span = {start: 0, end: text.length},
): {place: Place; actual?: string} {
  const written = writtenPath(places, path);
  // Space before a quoted text is not part of what was read, and what is escaped or folded takes more room.
  const whole = places.within(written, 0, Number.MAX_SAFE_INTEGER);
  const isWritten = whole.line === whole.endLine && whole.endColumn - whole.column === text.length;
  if (!isWritten) return {place: places.value(written)};
  return {place: places.within(written, part.start, part.end), actual: text.slice(part.start, part.end)};
}

/** Where a value of a YAML file stands; what is missing climbs to its parent. */
export function valueAt(places: Places, path: Path): Place {
  return places.value(writtenPath(places, path));
}

/**
 * `path` as the author wrote it. The schema turns a single yarn into a list of one and a photo's file name into a
 * record, so an index or a key that the file lacks is left out.
 */
function writtenPath(places: Places, path: Path): Path {
  const written: (string | number)[] = [];
  for (const step of path) if (places.has([...written, step])) written.push(step);
  return written;
}
