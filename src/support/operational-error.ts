/**
 * The world said no: browser, font, disk or rights missing.
 * The user gets `message` on one line and exit code 3; `cause` is shown with `--verbose`.
 */
export class OperationalError extends Error {
  override readonly name = 'OperationalError';
}
