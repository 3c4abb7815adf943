import { callerOf } from '@/app/_server/caller';
import { readPicture } from '@/lib/usecases/board/pictures';
import { NotFound } from '@/lib/usecases/refusal';

type Given = { params: Promise<{ society: string; picture: string }> };

/** A picture of the board, for whoever may read its post. It never changes, and only the reader’s own device may keep it. */
export async function GET(_: Request, { params }: Given): Promise<Response> {
  const { society, picture: pictureId } = await params;
  const caller = await callerOf(society);
  try {
    const { bytes } = await readPicture.run(caller, { pictureId });
    return new Response(bytes, {
      headers: {
        'Content-Type': 'image/webp',
        'Cache-Control': 'private, max-age=3600',
        'Content-Disposition': 'inline',
      },
    });
  } catch (error) {
    if (error instanceof NotFound) return new Response('There is nothing here.', { status: 404 });
    throw error;
  }
}
