import type {CommandWords} from './command.ts';
import {answer} from './words/answer.ts';
import {build} from './words/build.ts';
import {check} from './words/check.ts';
import {clip} from './words/clip.ts';
import {completionOf} from './words/completion.ts';
import {doctor} from './words/doctor.ts';
import {explain} from './words/explain.ts';
import {importLibrary} from './words/import.ts';
import {init} from './words/init.ts';
import {newItems} from './words/new.ts';
import {printed} from './words/printed.ts';
import {reprint} from './words/reprint.ts';
import {schema} from './words/schema.ts';
import {send} from './words/send.ts';
import {status} from './words/status.ts';
import {watch} from './words/watch.ts';

const commands: readonly CommandWords[] = [
  init,
  newItems,
  importLibrary,
  clip,
  check,
  status,
  watch,
  build,
  printed,
  send,
  answer,
  reprint,
  explain,
  doctor,
  schema,
];

/** Every command, in the order in which a year of work needs them. */
export const commandList: readonly CommandWords[] = [...commands, completionOf(commands)];
