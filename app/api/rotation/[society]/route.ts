import { csvReply } from '@/app/_server/csv-reply';
import { readRotationCsv } from '@/lib/usecases/site/read-rotation';

/** A season's compliance by plot, as a file. */
export async function GET(request: Request, { params }: { params: Promise<{ society: string }> }): Promise<Response> {
  const asked = Object.fromEntries(new URL(request.url).searchParams);
  return csvReply((await params).society, readRotationCsv, asked);
}
