import { randomUUID } from 'node:crypto';
import type { Planting } from '@/generated/prisma/client';
import { db } from '@/lib/data/db';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { logHarvest } from '@/lib/usecases/harvest/keep-harvests';
import { saySharing } from '@/lib/usecases/notes/say-sharing';
import type { Caller } from '@/lib/usecases/operation';
import type { Chance } from '../chance';
import { done } from './done';

type Grower = {
  readonly holdingId: string;
  readonly plotIds: readonly string[];
  readonly caller: Caller;
  /** Has harvests of their own on record, from elsewhere. */
  readonly logs: boolean;
};

const varieties = ['Reach Globe', 'Withy Red', 'Marl Keeper'] as const;

/** Neighbours who grew onions last season and this one: how they treated the bed, what it gave, and whether they let it be compared. */
export async function loadNotes(
  growers: readonly Grower[],
  { chance, today }: { readonly chance: Chance; readonly today: CalendarDate },
): Promise<void> {
  const year = Number(today.slice(0, 4));
  for (const [at, { holdingId, plotIds, caller, logs }] of growers.entries()) {
    if (!logs && at % 4 !== 1) await growOnions(plotIds[0] ?? '', year);
    const onions = await db().planting.findMany({
      where: {
        ...{ bed: { plotId: { in: [...plotIds] } }, holdingId, cropKey: 'onion', retiredAt: null },
        firstSeason: { in: [year - 1, year] },
      },
      orderBy: [{ firstSeason: 'asc' }, { id: 'asc' }],
    });
    for (const planting of onions.filter(({ firstSeason }) => `${firstSeason}-08-21` <= today))
      await grow(caller, planting, chance, logs);
    // One in some is asked and says nothing.
    if (at % 5 !== 3) await done(saySharing.run(caller, { writeId: randomUUID(), holdingId, shares: 'yes' }));
  }
}

/** A newcomer’s onions, dug over once and small: what they ask about. */
export async function growSmallOnions(
  { plotIds: [plotId = ''], caller }: Pick<Grower, 'plotIds' | 'caller'>,
  { season, today }: { readonly season: number; readonly today: CalendarDate },
): Promise<void> {
  await growOnions(plotId, season);
  const planting = await db().planting.findFirst({ where: onionsOn(plotId, season) });
  if (!planting || `${season}-08-12` > today) return;
  await db().planting.update({ where: { id: planting.id }, data: { sownOn: new Date(`${season}-03-20`) } });
  await db().groundWork.createMany({ data: worksOf(planting, false, false) });
  await lift(caller, planting, { perM2: 1_150, onDay: `${season}-08-12` });
}

function onionsOn(plotId: string, season: number) {
  return { bed: { plotId }, firstSeason: season, retiredAt: null, cropKey: 'onion' };
}

// Where the ground had something else of their group, or anything: enough beds to lay side by side.
async function growOnions(plotId: string, season: number): Promise<void> {
  if (await db().planting.count({ where: onionsOn(plotId, season) })) return;
  const there = { ...onionsOn(plotId, season), lastSeason: season, harvests: { none: {} } };
  const of = (cropKey: string[]) => db().planting.findFirst({ where: { ...there, cropKey: { in: cropKey } } });
  const other = (await of(['shallot', 'leek', 'garlic'])) ?? (await of(['kale', 'pea', 'beetroot', 'carrot']));
  if (other) await db().planting.update({ where: { id: other.id }, data: { cropKey: 'onion' } });
}

async function grow(caller: Caller, planting: Planting, chance: Chance, logs: boolean): Promise<void> {
  const { id, firstSeason: season } = planting;
  const isDouble = chance.next() < 0.5;
  const isManured = chance.next() < 0.5;
  const isLogged = chance.next() < 0.85;
  const month = chance.next() < 0.4 ? '02' : '03';
  const sownOn = new Date(`${season}-${month}-${10 + chance.whole(0, 9)}`);
  if (!logs) await db().planting.update({ where: { id }, data: { variety: chance.one(varieties), sownOn } });
  if (isLogged) await db().groundWork.createMany({ data: worksOf(planting, isDouble, isManured) });
  const perM2 = 1_500 + (isDouble ? 350 : 0) + (isManured ? 250 : 0) + (month === '02' ? 200 : 0) + 900 * chance.next();
  if (!logs) await lift(caller, planting, { perM2, onDay: `${season}-08-20` });
}

async function lift(
  caller: Caller,
  { id: plantingId, widthCm, lengthCm }: Planting,
  { perM2, onDay }: { readonly perM2: number; readonly onDay: string },
): Promise<void> {
  const amount = `${Math.round((perM2 * widthCm * lengthCm) / 500_000) * 50} g`;
  const lifted = { plantingId, onDay, measure: 'grams', quality: 'middling', amount, cleared: 'yes' };
  await done(logHarvest.run(caller, { writeId: randomUUID(), ...lifted }));
}

function worksOf(planting: Planting, isDouble: boolean, isManured: boolean) {
  const { societyId, frameId, holdingId, firstSeason: season, xCm, yCm, widthCm, lengthCm } = planting;
  const ground = { societyId, frameId, holdingId, season, xCm, yCm, widthCm, lengthCm };
  const dug = { kind: 'dug', method: isDouble ? 'double-digging' : 'single-digging', depthCm: isDouble ? 50 : 25 };
  return [{ ...ground, ...dug }, ...(isManured ? [{ ...ground, kind: 'manured', materialKey: 'horse-manure' }] : [])];
}
