import 'server-only';
import { db } from '@/lib/data/db';

/** Whether the database answers. */
export async function databaseAnswers(): Promise<boolean> {
  return db().$queryRaw`SELECT 1`.then(
    () => true,
    () => false,
  );
}
