import { archiveAnswer } from '@/app/_server/archive-answer';
import { callerOf } from '@/app/_server/caller';
import { wordsFor } from '@/app/_server/words';
import { exportSociety, readSocietyArchive } from '@/lib/usecases/export/export-society';
import { NotFound } from '@/lib/usecases/refusal';

/** All of a society as one file, noted in its book first; a form asks for it, so that no link does. */
export async function POST(request: Request, { params }: { params: Promise<{ society: string }> }): Promise<Response> {
  const { society } = await params;
  const caller = await callerOf(society);
  try {
    const form = await request.formData().catch(() => new FormData());
    const noted = await exportSociety.run(caller, Object.fromEntries(form));
    if (!noted.ok) return new Response(noted.refusals.map(wordsFor).join(' '), { status: 400 });
    return archiveAnswer(await readSocietyArchive.run(caller, {}));
  } catch (error) {
    if (error instanceof NotFound) return new Response('There is nothing here.', { status: 404 });
    throw error;
  }
}
