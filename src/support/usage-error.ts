/** The command line or a binder file cannot be acted on: one line to the user, exit code 2. */
export class UsageError extends Error {
  override readonly name = 'UsageError';
}
