import { archiveAnswer } from '@/app/_server/archive-answer';
import { callerOf } from '@/app/_server/caller';
import { readOwnArchive } from '@/lib/usecases/export/export-society';
import { NotFound } from '@/lib/usecases/refusal';

/** What the society has on record of whoever asks, as one file. */
export async function GET(_: Request, { params }: { params: Promise<{ society: string }> }): Promise<Response> {
  const { society } = await params;
  const caller = await callerOf(society);
  try {
    return archiveAnswer(await readOwnArchive.run(caller, {}));
  } catch (error) {
    if (error instanceof NotFound) return new Response('There is nothing here.', { status: 404 });
    throw error;
  }
}
