import {readFile} from 'node:fs/promises';
import {errorCode} from './explain-failure.ts';

/**
 * When a running process began, in the system's own count; `'0'` where the system does not tell (only Linux does, in
 * `/proc/<id>/stat`, see proc(5)); null when no such process is running, one that has ended and was not yet buried by its
 * parent included.
 */
export async function processStart(processId: number): Promise<string | null> {
  if (!isThere(processId)) return null;
  const facts = await readFile(`/proc/${processId}/stat`, 'utf8').catch(() => null);
  if (facts === null) return isThere(processId) ? '0' : null;
  // The second field is the program's name in brackets, which may itself hold blanks and brackets.
  const fields = facts.slice(facts.lastIndexOf(')') + 2).split(' ');
  const [state, start] = [fields[0], fields[19]];
  if (state === 'Z' || state === 'X') return null;
  return start ?? '0';
}

function isThere(processId: number): boolean {
  try {
    process.kill(processId, 0);
    return true;
  } catch (error) {
    // Anything but "no such process" means that it is there and belongs to somebody else.
    return errorCode(error) !== 'ESRCH';
  }
}
