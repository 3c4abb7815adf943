import 'server-only';
import type { Caller } from '@/lib/usecases/operation';
import { NotFound } from '@/lib/usecases/refusal';
import { callerOf } from './caller';

type File = { readonly name: string; readonly text: string };

export type FileQuestion = { readonly run: (caller: Caller, raw: unknown) => Promise<File> };

/** A file to keep, for whoever may ask for it; to everybody else it is not there. */
export async function fileReply(
  type: 'text/csv' | 'application/json',
  slug: string,
  question: FileQuestion | undefined,
  asked: object,
): Promise<Response> {
  const caller = await callerOf(slug);
  try {
    if (!question) throw new NotFound();
    const { name, text } = await question.run(caller, asked);
    return new Response(text, {
      headers: {
        'Content-Type': `${type}; charset=utf-8`,
        'Content-Disposition': `attachment; filename="${name}"`,
        'Cache-Control': 'no-store',
      },
    });
  } catch (error) {
    if (error instanceof NotFound) return new Response('There is nothing here.', { status: 404 });
    throw error;
  }
}
