import fs from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { bookLoads } from '@/lib/usecases/deliveries/book-loads';
import { closeDelivery, openDelivery, planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { confirmShareOut, measureHeap } from '@/lib/usecases/deliveries/share-out';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import type { Caller } from '@/lib/usecases/operation';
import { deliveryFacts, done, makeBed, makeMember, makePlot, makeSociety, once } from '../fixtures/society';
import { answerTo, fingerprint, type Ids, type Operation, type Row } from './deny';
import { deliveries } from './matrix/deliveries';
import { ground } from './matrix/ground';
import { members } from './matrix/members';

const rows: readonly Row[] = [...members, ...ground, ...deliveries];
const callers = {} as Record<'outsider' | 'stranger' | 'stale' | 'secretary' | Row['deny'][number], Caller>;
let ids: Ids;

beforeAll(async () => {
  const society = await makeSociety();
  const holder = await makeMember(society);
  const neighbour = await makeMember(society);
  const plot = await makePlot(society, 'X', [holder.id]);
  const other = await makePlot(society, 'Y', [neighbour.id]);
  const [bed, second] = [await makeBed(society, plot, 0), await makeBed(society, plot, 1)];
  const secretary = society.secretary.caller;
  const open = async (name: string) => {
    const { deliveryId } = await done(planDelivery.run(secretary, once(deliveryFacts({ name }))));
    await done(openDelivery.run(secretary, once({ deliveryId })));
    return deliveryId;
  };
  const sharedId = await open('shared');
  const { bookingId } = await done(
    bookLoads.run(holder.caller, once({ deliveryId: sharedId, holdingId: plot.holdingId, asked: '3', beds: [] })),
  );
  await done(closeDelivery.run(secretary, once({ deliveryId: sharedId })));
  await done(measureHeap.run(secretary, once({ deliveryId: sharedId, loads: '9' })));
  await done(confirmShareOut.run(secretary, once({ deliveryId: sharedId })));
  const { plantingId } = await done(
    recordPlanting.run(holder.caller, once({ bedId: bed.id, cropKey: 'leek', season: '2026' })),
  );
  const { id: workId } = await db().groundWork.create({
    data: { societyId: society.id, frameId: plot.frameId, ...bed.footprint, season: 2024 },
  });
  const left = await makeMember(society, { withAccount: false });
  ids = {
    siteId: society.siteId,
    plotId: plot.plotId,
    otherPlotId: other.plotId,
    bedId: bed.id,
    otherBedId: second.id,
    plantingId,
    workId,
    holdingId: plot.holdingId,
    memberId: holder.id,
    leftMemberId: left.id,
    deliveryId: await open('open'),
    sharedId,
    bookingId,
  };
  const elsewhere = await makeSociety();
  const withRole = async (role: 'treasurer' | 'gate_helper') => (await makeMember(society, { roles: [role] })).caller;
  Object.assign(callers, {
    secretary,
    member: holder.caller,
    neighbour: neighbour.caller,
    treasurer: await withRole('treasurer'),
    gate_helper: await withRole('gate_helper'),
    // Somebody with an account and no membership here; and the secretary of another society, at home.
    outsider: { ...elsewhere.secretary.caller, slug: society.slug },
    stranger: elsewhere.secretary.caller,
    stale: { ...secretary, sessionVersion: 0 },
  });
});

describe('the matrix', () => {
  it('has a row for every operation there is', async () => {
    const files = fs
      .readdirSync('lib/usecases', { recursive: true })
      .map(String)
      .filter((name) => name.endsWith('.ts'));
    const modules = await Promise.all(files.map((name) => import(path.resolve('lib/usecases', name))));
    const found = modules
      .flatMap((module) => Object.values(module as object))
      .filter((one): one is Operation => one !== null && typeof one === 'object' && 'kind' in one && 'run' in one);
    const named = new Set(rows.map(({ operation }) => operation.name));
    expect(new Set(found.map(({ name }) => name)).size).toBeGreaterThan(50);
    expect(found.map(({ name }) => name).filter((name) => !named.has(name))).toEqual([]);
  });
});

describe.each(rows.map((row) => [row.operation.name, row] as const))('%s', (_, { operation, input, deny }) => {
  it('does not exist for an outsider, nor for a session signed out elsewhere', async () => {
    const before = await fingerprint();
    expect(await answerTo(operation, callers.outsider, input(ids))).toBe('not found');
    expect(await answerTo(operation, callers.stale, input(ids))).toBe('not found');
    expect(await fingerprint()).toBe(before);
  });

  it('finds none of this society’s things from another society', async () => {
    if (Object.keys(input(ids)).every((key) => !key.toLowerCase().endsWith('id') || key === 'writeId')) return;
    const before = await fingerprint();
    // A read may answer with nothing of its own; a change must not find the thing.
    const answer = await answerTo(operation, callers.stranger, input(ids));
    if (operation.kind === 'mutation') expect(answer).toBe('not found');
    expect(await fingerprint()).toBe(before);
  });

  it.each(deny)('does not exist for a %s', async (who) => {
    const before = await fingerprint();
    expect(await answerTo(operation, callers[who], input(ids))).toBe('not found');
    expect(await fingerprint()).toBe(before);
  });
});

describe('the right people', () => {
  it.each(rows.filter(({ operation }) => operation.kind === 'query').map((row) => [row.operation.name, row] as const))(
    '%s answers the secretary',
    async (_, { operation, input }) => {
      expect(await answerTo(operation, callers.secretary, input(ids))).toBe('done');
    },
  );
});
