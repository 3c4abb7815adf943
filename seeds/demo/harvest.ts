import { randomUUID } from 'node:crypto';
import { db } from '@/lib/data/db';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { logHarvest } from '@/lib/usecases/harvest/keep-harvests';
import type { Caller } from '@/lib/usecases/operation';
import type { Chance } from '../chance';
import { done } from './done';

type Kind = {
  readonly cropKey: string;
  /** Days of the season on which it is lifted or picked, as `MM-DD`. */
  readonly days: readonly string[];
  /** In a middling season, of all these days together: grams or pieces on a square metre. */
  readonly perM2: number;
  readonly counted?: true;
  readonly clearsAll?: true;
};

// biome-ignore format: one crop a line
const kinds: readonly Kind[] = [
  { cropKey: 'onion', days: ['08-14'], perM2: 2_300, clearsAll: true },
  { cropKey: 'garlic', days: ['07-12'], perM2: 12, counted: true, clearsAll: true },
  { cropKey: 'shallot', days: ['07-25'], perM2: 1_700, clearsAll: true },
  { cropKey: 'leek', days: ['10-20', '11-15'], perM2: 9, counted: true },
  { cropKey: 'early-potato', days: ['06-28', '07-09'], perM2: 1_900, clearsAll: true },
  { cropKey: 'maincrop-potato', days: ['09-12'], perM2: 3_100, clearsAll: true },
  { cropKey: 'carrot', days: ['08-30', '10-04'], perM2: 3_000, clearsAll: true },
  { cropKey: 'parsnip', days: ['11-10'], perM2: 1_200 },
  { cropKey: 'beetroot', days: ['09-20'], perM2: 2_700, clearsAll: true },
  { cropKey: 'winter-squash', days: ['10-02'], perM2: 1, counted: true, clearsAll: true },
  { cropKey: 'courgette', days: ['07-20', '08-10'], perM2: 5, counted: true },
  { cropKey: 'broad-bean', days: ['06-21'], perM2: 1_500, clearsAll: true },
  { cropKey: 'runner-bean', days: ['08-08', '08-22'], perM2: 2_000 },
  { cropKey: 'french-bean', days: ['08-15'], perM2: 1_100 },
  { cropKey: 'pea', days: ['07-04'], perM2: 900, clearsAll: true },
  { cropKey: 'kale', days: ['11-08'], perM2: 700 },
];

/** What a member lifted last season and this one, as far as the year has come; nothing more than so many plantings a season. */
export async function loadHarvests(
  caller: Caller,
  plotIds: readonly string[],
  given: { readonly chance: Chance; readonly today: CalendarDate; readonly most: number },
): Promise<void> {
  const { chance, today, most } = given;
  const year = Number(today.slice(0, 4));
  for (const season of [year - 1, year]) {
    const plantings = await db().planting.findMany({
      where: {
        bed: { plotId: { in: [...plotIds] } },
        firstSeason: season,
        cropKey: { in: keys },
        retiredAt: null,
        harvests: { none: {} },
      },
      orderBy: [{ cropKey: 'asc' }, { id: 'asc' }],
      take: most,
    });
    for (const planting of plantings) await pick(caller, planting, { chance, today, season });
  }
}

const keys = kinds.map(({ cropKey }) => cropKey);

type Ground = { readonly id: string; readonly cropKey: string; readonly widthCm: number; readonly lengthCm: number };

async function pick(
  caller: Caller,
  { id: plantingId, cropKey, widthCm, lengthCm }: Ground,
  { chance, today, season }: { chance: Chance; today: CalendarDate; season: number },
): Promise<void> {
  const kind = kinds.find((one) => one.cropKey === cropKey);
  const luck = 0.55 + 0.8 * chance.next();
  // One crop in some dozens comes to nothing.
  const hasFailed = chance.next() < 0.04;
  const days = kind?.days.map((day) => `${season}-${day}`).filter((day) => day <= today) ?? [];
  for (const [at, onDay] of (hasFailed ? days.slice(-1) : days).entries()) {
    const all = hasFailed ? 0 : ((kind?.perM2 ?? 0) * luck * widthCm * lengthCm) / 10_000 / (kind?.days.length ?? 1);
    const isLast = hasFailed || at === (kind?.days.length ?? 0) - 1;
    await done(
      logHarvest.run(caller, {
        writeId: randomUUID(),
        plantingId,
        onDay,
        measure: kind?.counted ? 'pieces' : 'grams',
        amount: kind?.counted ? String(Math.round(all)) : `${Math.round(all / 50) * 50} g`,
        quality: luck > 1 ? 'good' : luck > 0.7 ? 'middling' : 'poor',
        ...(hasFailed ? { notes: 'Pigeons had all of it.' } : {}),
        ...(isLast && (kind?.clearsAll || hasFailed) ? { cleared: 'yes' } : {}),
      }),
    );
  }
}
