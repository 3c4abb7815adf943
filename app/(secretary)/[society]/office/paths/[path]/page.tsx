import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { pathLengthCm } from '@/lib/domain/placing/stretch-points';
import { formatLength } from '@/lib/domain/quantity/length';
import { readPath } from '@/lib/usecases/site/read-paths';
import { PathFields } from '../_parts/path-fields';
import { PathsPlan } from '../_parts/paths-plan';
import { changePathAction, retirePathAction } from '../actions';

export const metadata: Metadata = { title: 'A path' };

export default async function PathPage({ params }: { params: Promise<{ society: string; path: string }> }) {
  const { society, path: pathId } = await params;
  const { path, site, units, plan, paths, dropPoints } = await ask(readPath, society, { pathId });
  const bound = [null, society, pathId] as const;
  return (
    <>
      <PageHead
        title={path.name ?? 'A path without a name'}
        lead={`${formatLength(pathLengthCm(path.points), units)} long.`}
      >
        <Link className="button" href={`/${society}/office/paths?site=${path.siteId}`}>
          Back to the paths
        </Link>
      </PageHead>
      {site ? <PathsPlan {...{ site, plan, dropPoints, units }} paths={[...paths, path]} what={['path']} /> : null}
      <Sheet title="Change it">
        <Form action={changePathAction.bind(...bound)} writeId={randomUUID()} submit="Save">
          <PathFields path={path} units={units} />
        </Form>
      </Sheet>
      <Sheet title="Retire it">
        <Form action={retirePathAction.bind(...bound)} writeId={randomUUID()} submit="Retire it" danger>
          <p>It leaves the plan, and no way is taken along it any more. The book keeps what it was.</p>
          <TickField name="sure" label="Yes, retire it" />
        </Form>
      </Sheet>
    </>
  );
}
