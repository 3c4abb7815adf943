import 'server-only';

/** Log a failure under an id that the user is shown too. */
export function logFailure(id: string, error: unknown): void {
  const { name, message, stack } = error instanceof Error ? error : new Error(String(error));
  process.stderr.write(
    `${JSON.stringify({ at: new Date().toISOString(), event: 'failure', id, name, message, stack })}\n`,
  );
}
