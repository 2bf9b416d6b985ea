/**
 * The binder folder as the program sees it. Paths are relative to it, with forward slashes and without `.` or `..`.
 * Reading outside the folder is refused, symbolic links included.
 */
export interface Workspace {
  /** Every file below `folder`, sorted by path; hidden files and editors' swap files are left out. An absent folder is empty. */
  list(folder: string): Promise<readonly string[]>;
  /** UTF-8 text, as it stands: a byte order mark and CRLF are kept. Throws `OperationalError`; null when there is no such file. */
  readText(path: string): Promise<string | null>;
  readBytes(path: string): Promise<Uint8Array | null>;
  /** Writes aside, then renames: the file is the old one or the new one, never a part. Throws `OperationalError`. */
  write(path: string, content: string | Uint8Array): Promise<void>;
}
