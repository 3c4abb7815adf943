import 'server-only';

/** One line of JSON per event, so that any collector can read it. Never pass contact details or secrets. */
export function log(event: string, facts: Record<string, string | number | boolean | null> = {}): void {
  process.stdout.write(`${JSON.stringify({ at: new Date().toISOString(), event, ...facts })}\n`);
}

/** Log a failure under an id that the user is shown too. */
export function logFailure(id: string, error: unknown): void {
  const { name, message, stack } = error instanceof Error ? error : new Error(String(error));
  process.stderr.write(`${JSON.stringify({ at: new Date().toISOString(), event: 'failure', id, name, message, stack })}\n`);
}
