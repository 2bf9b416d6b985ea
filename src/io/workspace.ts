import {OperationalError} from '../support/operational-error.ts';

/**
 * The binder folder as the program sees it. Paths are relative to it, with forward slashes and without `.` or `..`;
 * accented letters may be composed or not. Reading and writing outside the folder is refused, symbolic links included:
 * such a path throws `OutsideFolderError`.
 */
export interface Workspace {
  /**
   * Every file below `folder` (`''` is the whole binder), sorted by path, accented letters composed; hidden files and
   * editors' swap files are left out. An absent folder is empty.
   */
  list(folder: string): Promise<readonly string[]>;
  /** UTF-8 text, as it stands: a byte order mark and CRLF are kept. Throws `OperationalError`; null when there is no such file. */
  readText(path: string): Promise<string | null>;
  readBytes(path: string): Promise<Uint8Array | null>;
  /** A text that changes when the file is written; null when there is no such file. Throws `OperationalError`. */
  stamp(path: string): Promise<FileStamp | null>;
  /** Writes aside, then renames: the file is the old one or the new one, never a part. Throws `OperationalError`. */
  write(path: string, content: string | Uint8Array): Promise<void>;
  /** As `write`, for a new file: false, and nothing is changed, when anything has that name already, be it a link that leads nowhere. */
  create(path: string, content: string | Uint8Array): Promise<boolean>;
  /** Removes a file that the program itself made. False when there is none. Throws `OperationalError`. */
  remove(path: string): Promise<boolean>;
}

export interface FileStamp {
  readonly stamp: string;
  /** Milliseconds since 1970. */
  readonly changed: number;
}

/** A path that names something outside the binder folder, by its letters or through a symbolic link. */
export class OutsideFolderError extends OperationalError {
  readonly path: string;

  constructor(path: string) {
    super(`\`${path}\` lies outside the binder folder`);
    this.path = path;
  }
}
