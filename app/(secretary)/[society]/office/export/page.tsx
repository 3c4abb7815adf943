import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { Caution, PageHead, Sheet } from '@/app/_ui/sheet';
import { readExport } from '@/lib/usecases/export/read-export';

export const metadata: Metadata = { title: 'Take everything out' };

export default async function ExportPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { files, lastOn } = await ask(readExport, society);
  return (
    <>
      <PageHead
        title="Take everything out"
        lead="All that the society has on record, as one archive (.zip) of open files: a table each, the drawing of the ground, the rules in force, and a README that says what every column is."
      />
      <Sheet title="The archive">
        <Caution>
          It holds names, addresses and telephone numbers. Keep it as you keep the list of members: where nobody else
          reads it, and no longer than the society needs it.
        </Caution>
        <p>
          Not in it: passwords and other ways in, letters, gate notes, the lot of a delivery before it is revealed, and
          what is its holders’ own (notes, varieties, habits of digging, what a need was worked out from). Each member
          takes out their own from the page “You”.
        </p>
        <form method="post" action={`/api/export/${society}`}>
          <input type="hidden" name="writeId" value={randomUUID()} />
          <button type="submit" className="button first">
            Take it out
          </button>
        </form>
        <p className="small soft">
          The book of changes notes who took it out and when
          {lastOn ? `; the last time was ${lastOn}.` : '; nobody has yet.'}
        </p>
      </Sheet>
      <Sheet title="What is in it">
        <ul>
          {files.map(({ file, says }) => (
            <li key={file}>
              <strong>{file}</strong>: {says}
            </li>
          ))}
        </ul>
      </Sheet>
    </>
  );
}
