/** What went wrong in a script, in a line for whoever runs it. */

/** The message, and that of the cause behind it. */
export function sayFailure(cause: unknown): string {
  if (!(cause instanceof Error)) return String(cause);
  return cause.cause instanceof Error ? `${cause.message} ${cause.cause.message}` : cause.message;
}
