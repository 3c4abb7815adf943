import { databaseAnswers } from '@/lib/usecases/health';

/** For the start script and any balancer: up means that the database answers too. */
export async function GET() {
  const up = await databaseAnswers();
  return Response.json({ up }, { status: up ? 200 : 503 });
}
