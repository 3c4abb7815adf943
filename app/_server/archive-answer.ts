import 'server-only';
import type { WrittenArchive } from '@/lib/platform/archive';

/** An archive as a file to keep. */
export function archiveAnswer({ name, archive }: { name: string; archive: WrittenArchive }): Response {
  return new Response(archive.stream(), {
    headers: {
      'Content-Type': 'application/zip',
      'Content-Length': String(archive.size),
      'Content-Disposition': `attachment; filename="${name}"`,
      'Cache-Control': 'no-store',
    },
  });
}
