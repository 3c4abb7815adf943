import { fileReply } from '@/app/_server/file-reply';
import { readQueueFile } from '@/lib/usecases/deliveries/read-queue';

type Given = { params: Promise<{ society: string; delivery: string }> };

/** What a share-out rests on and what is shown of it, as a file to work it out again with. */
export async function GET(_: Request, { params }: Given): Promise<Response> {
  const { society, delivery: deliveryId } = await params;
  return fileReply('application/json', society, readQueueFile, { deliveryId });
}
