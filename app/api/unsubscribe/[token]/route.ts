import { redirect } from 'next/navigation';
import { unsubscribe } from '@/lib/usecases/reminders/letter-wish';

type Given = { params: Promise<{ token: string }> };

/** One press in a mail program (RFC 8058): it is ended at once, and nobody is told whether there was anything to end. */
export async function POST(_: Request, { params }: Given): Promise<Response> {
  await unsubscribe((await params).token);
  return new Response('The weekly letter is ended.', { headers: { 'Cache-Control': 'no-store' } });
}

/** Whoever follows the address as a link is asked first: programs that look at every link end nothing. */
export async function GET(_: Request, { params }: Given): Promise<Response> {
  redirect(`/unsubscribe/${encodeURIComponent((await params).token)}`);
}
