/** Runs once when a server process starts. */
export async function register() {
  if (process.env.NEXT_RUNTIME !== 'nodejs') return;
  const { startWork } = await import('@/lib/usecases/work-queue');
  const { weekLetter } = await import('@/app/(member)/[society]/_parts/week-letter');
  await startWork({ letter: weekLetter });
}
