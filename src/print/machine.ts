import {accessSync, constants, readdirSync, statSync} from 'node:fs';
import {homedir} from 'node:os';

/** What finding a browser has to know of a computer. */
export interface Machine {
  /** As `process.platform` names it: `linux`, `darwin`, `win32`. */
  readonly platform: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly home: string;
  /** Whether a file is there that may be run. */
  isProgram(path: string): boolean;
  /** The names within a folder; none when there is no such folder. */
  namesIn(folder: string): readonly string[];
}

/** The computer this runs on. */
export function thisMachine(): Machine {
  return {
    platform: process.platform,
    env: process.env,
    home: homedir(),
    isProgram(path) {
      try {
        accessSync(path, constants.X_OK);
        return statSync(path).isFile();
      } catch {
        return false;
      }
    },
    namesIn(folder) {
      try {
        return readdirSync(folder);
      } catch {
        return [];
      }
    },
  };
}
