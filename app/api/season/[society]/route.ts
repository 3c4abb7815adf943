import { csvReply } from '@/app/_server/csv-reply';
import { readSeasonCsv } from '@/lib/usecases/season/read-season';

/** What a season came to, by delivery or by holding, as a file. */
export async function GET(request: Request, { params }: { params: Promise<{ society: string }> }): Promise<Response> {
  const asked = Object.fromEntries(new URL(request.url).searchParams);
  return csvReply((await params).society, readSeasonCsv, asked);
}
