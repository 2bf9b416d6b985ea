import type {CommandWords} from './command.ts';
import {build} from './words/build.ts';
import {check} from './words/check.ts';
import {explain} from './words/explain.ts';
import {reprint} from './words/reprint.ts';
import {watch} from './words/watch.ts';

/** Every command, in the order in which a year of work needs them. */
export const commandList: readonly CommandWords[] = [check, watch, build, reprint, explain];
