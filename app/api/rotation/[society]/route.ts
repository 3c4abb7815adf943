import { callerOf } from '@/app/_server/caller';
import { NotFound } from '@/lib/usecases/refusal';
import { readRotationCsv } from '@/lib/usecases/site/read-rotation';

/** A season's compliance by plot, as a file. */
export async function GET(request: Request, { params }: { params: Promise<{ society: string }> }): Promise<Response> {
  const { society } = await params;
  const asked = Object.fromEntries(new URL(request.url).searchParams);
  const caller = await callerOf(society);
  try {
    const { name, text } = await readRotationCsv.run(caller, asked);
    return new Response(text, {
      headers: {
        'Content-Type': 'text/csv; charset=utf-8',
        'Content-Disposition': `attachment; filename="${name}"`,
        'Cache-Control': 'no-store',
      },
    });
  } catch (error) {
    if (error instanceof NotFound) return new Response('There is nothing here.', { status: 404 });
    throw error;
  }
}
