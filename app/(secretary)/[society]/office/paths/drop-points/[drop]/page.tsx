import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { readDropPoint } from '@/lib/usecases/site/read-paths';
import { DropPointFields } from '../../_parts/path-fields';
import { PathsPlan } from '../../_parts/paths-plan';
import { changeDropPointAction, retireDropPointAction } from '../../actions';

export const metadata: Metadata = { title: 'A drop point' };

export default async function DropPointPage({ params }: { params: Promise<{ society: string; drop: string }> }) {
  const { society, drop: dropPointId } = await params;
  const read = await ask(readDropPoint, society, { dropPointId });
  const { dropPoint, awaits, site, units, plan, paths, dropPoints } = read;
  const bound = [null, society, dropPointId] as const;
  return (
    <>
      <PageHead title={dropPoint.name} lead={awaits ? `“${awaits}” is to be tipped here.` : 'Nothing is to come here.'}>
        <Link className="button" href={`/${society}/office/paths?site=${dropPoint.siteId}`}>
          Back to the drop points
        </Link>
      </PageHead>
      {site ? (
        <PathsPlan {...{ site, plan, paths, units }} dropPoints={[...dropPoints, dropPoint]} what={['place']} />
      ) : null}
      <Sheet title="Change it">
        <Form action={changeDropPointAction.bind(...bound)} writeId={randomUUID()} submit="Save">
          <DropPointFields dropPoint={dropPoint} units={units} />
        </Form>
      </Sheet>
      <Sheet title="Retire it">
        <Form action={retireDropPointAction.bind(...bound)} writeId={randomUUID()} submit="Retire it" danger>
          <p>No load can be sent here any more. What was tipped here stays on record.</p>
          <TickField name="sure" label="Yes, retire it" />
        </Form>
      </Sheet>
    </>
  );
}
