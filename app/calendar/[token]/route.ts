import { calendarText } from '@/app/_server/calendar-reply';
import { readFeed } from '@/lib/usecases/reminders/calendar-feed';

type Given = { params: Promise<{ token: string }> };

/** A private calendar: whoever has the address reads it, and nobody is told why another leads nowhere. */
export async function GET(_: Request, { params }: Given): Promise<Response> {
  const { token } = await params;
  const feed = await readFeed(token.replace(/\.ics$/, ''));
  if (!feed) return new Response('There is nothing here.', { status: 404, headers: { 'Cache-Control': 'no-store' } });
  return new Response(calendarText(feed), {
    headers: {
      'Content-Type': 'text/calendar; charset=utf-8',
      'Content-Disposition': 'inline; filename="barrowmoot.ics"',
      'Cache-Control': 'private, no-cache',
    },
  });
}
