import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { Form } from '@/app/_ui/form';
import { Caution, Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { SiteSwitch } from '@/app/_ui/site-switch';
import { Table } from '@/app/_ui/table';
import { pathLengthCm } from '@/lib/domain/placing/stretch-points';
import { formatDistance } from '@/lib/domain/placing/parse-distance';
import { formatLength } from '@/lib/domain/quantity/length';
import { readPaths } from '@/lib/usecases/site/read-paths';
import { DropPointFields, PathFields } from './_parts/path-fields';
import { PathsPlan } from './_parts/paths-plan';
import { addDropPointAction, addPathAction } from './actions';

export const metadata: Metadata = { title: 'Paths and drop points' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ site?: string }> };
type Read = Awaited<ReturnType<typeof readPaths.run>>;

export default async function PathsPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { site: siteId } = await searchParams;
  const { site, sites, units, plan, paths, dropPoints } = await ask(readPaths, society, { siteId: siteId ?? null });
  if (!site)
    return (
      <>
        <PageHead title="Paths and drop points" />
        <Empty>
          <Link href={`/${society}/office/plots`}>Add the site and its plots first</Link>
        </Empty>
      </>
    );
  return (
    <>
      <PageHead
        title="Paths and drop points"
        lead={`${site.name}: ${paths.length} paths and ${dropPoints.length} drop points. The way of every barrow is reckoned along these lines.`}
      >
        <SiteSwitch sites={sites} siteId={site.id} />
        <Link className="button" href={`/${society}/site/heap?site=${site.id}`}>
          Where the heap walks least
        </Link>
      </PageHead>
      <PathsPlan {...{ site, plan, paths, dropPoints, units }} what={['path', 'place']} />
      <div className="stack">
        <Sheet title="Draw a path">
          <Form action={addPathAction.bind(null, society, site.id)} writeId={randomUUID()} submit="Draw it">
            <PathFields units={units} />
          </Form>
        </Sheet>
        <Sheet title="Paths" flush>
          <PathTable society={society} paths={paths} units={units} />
        </Sheet>
      </div>
      <div className="stack">
        <Sheet title="Make a drop point">
          <Form action={addDropPointAction.bind(null, society, site.id)} writeId={randomUUID()} submit="Make it">
            <DropPointFields units={units} />
          </Form>
          <Caution>
            Where a lorry reverses, somebody walks it in and everybody else stays well clear. Keep the gate and the way
            for fire engine and ambulance free of any heap.
          </Caution>
        </Sheet>
        <Sheet title="Drop points" flush>
          <DropPointTable society={society} dropPoints={dropPoints} units={units} />
        </Sheet>
      </div>
    </>
  );
}

function PathTable({ society, paths, units }: Pick<Read, 'paths' | 'units'> & { society: string }) {
  if (paths.length === 0)
    return <Empty>None is drawn yet. Until then ways are taken straight, which is less than anybody walks.</Empty>;
  const lorryWords = (lorry: Read['paths'][number]['lorry']) => {
    if (typeof lorry === 'string') return lorry === 'whole' ? 'all of it' : 'no';
    return `${formatLength(lorry.fromCm, units)} to ${formatLength(lorry.toCm, units)}`;
  };
  return (
    <Table
      caption="Paths"
      columns={[{ head: 'path' }, { head: 'length', number: true }, { head: 'lorry' }]}
      rows={paths.map(({ id, name, points, lorry }, at) => ({
        key: id,
        cells: [
          <Link key="path" href={`/${society}/office/paths/${id}`}>
            {name ?? `Path ${at + 1}`}
          </Link>,
          formatLength(pathLengthCm(points), units),
          lorryWords(lorry),
        ],
      }))}
    />
  );
}

function DropPointTable({ society, dropPoints, units }: Pick<Read, 'dropPoints' | 'units'> & { society: string }) {
  if (dropPoints.length === 0)
    return <Empty>None is there yet. Make one where a lorry can tip, and deliveries can be sent to it.</Empty>;
  const unit = units === 'metric' ? 'm' : 'ft';
  return (
    <Table
      caption="Drop points"
      columns={[
        { head: 'drop point' },
        { head: `east, ${unit}`, number: true },
        { head: `south, ${unit}`, number: true },
      ]}
      rows={dropPoints.map(({ id, name, at }) => ({
        key: id,
        cells: [
          <Link key="drop" href={`/${society}/office/paths/drop-points/${id}`}>
            {name}
          </Link>,
          formatDistance(at.xCm, units),
          formatDistance(at.yCm, units),
        ],
      }))}
    />
  );
}
