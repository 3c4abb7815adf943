import 'server-only';
import { type FileQuestion, fileReply } from './file-reply';

/** A table as a file to keep, for whoever may ask for it; to everybody else it is not there. */
export async function csvReply(slug: string, question: FileQuestion | undefined, asked: object): Promise<Response> {
  return fileReply('text/csv', slug, question, asked);
}
