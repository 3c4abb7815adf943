import { csvReply } from '@/app/_server/csv-reply';
import { readHarvestsCsv } from '@/lib/usecases/harvest/read-yields';

/** One's own harvests, as a file. */
export async function GET(_: Request, { params }: { params: Promise<{ society: string }> }): Promise<Response> {
  return csvReply((await params).society, readHarvestsCsv, {});
}
