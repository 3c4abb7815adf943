import 'server-only';
import { z } from 'zod';
import { cropsOf } from '@/lib/data/crop';
import { worksIn } from '@/lib/data/ground-work';
import { plantingsIn, type PlantingRecord } from '@/lib/data/planting';
import { settingsOn } from '@/lib/data/setting';
import { troublesIn } from '@/lib/data/trouble';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { type Footprint, overlap } from '@/lib/domain/ground/footprint';
import { canEnter } from '@/lib/domain/policy/standing';
import { bareKey } from '@/lib/domain/rotation/recorded-planting';
import { query } from '../operation';
import { habitsOnGround } from '../recipes/habits-on-ground';
import { feedingOf } from './feeding-of';
import { limeClashesOf, waitsOf } from './food-and-lime';
import { seasonServed } from './holding-need';
import { type LimeFor, limeDays, limeFor, limeGround, limeGroundOf, limeTold } from './lime-of';
import { openBed } from './open-bed';

const asked = z.object({
  bedId: z.uuid(),
  /** Of the form that asks for lime; what is not on its lists counts as not said. */
  texture: z.enum(limeGround).nullish().catch(null),
  purpose: z.enum(limeFor).nullish().catch(null),
  ph: z.string().max(20).nullish().catch(null),
});

/** What feeds a bed for the season that work of today serves: nutrients, nitrogen against its guidance, lime, and harvests that have to wait. */
export const readFeeding = query({
  name: 'read-feeding',
  allow: canEnter,
  input: asked,
  read: async ({ db, scope, today }, { bedId, texture, purpose, ph }) => {
    const { bed, holding } = await openBed({ db, scope, today }, bedId);
    const season = seasonServed(today);
    const year = Number(today.slice(0, 4));
    const [crops, settings, habits, works] = await Promise.all([
      cropsOf(db, scope),
      settingsOn(db, scope, today),
      habitsOnGround(db, scope, holding, today),
      worksIn(db, scope, [bed.frameId]),
    ]);
    const [plantings, troubles] = await Promise.all([
      plantingsIn(db, scope, crops, { from: year - 1, to: season + 2 }, [bed.frameId]),
      troublesIn(db, scope, settings, [bed.frameId]),
    ]);
    const onBed = <One extends { readonly footprint: Footprint }>(all: readonly One[]) =>
      all.filter(({ footprint }) => overlap(footprint, bed.footprint));
    const standing = onBed(plantings).filter(
      ({ cropKey, firstSeason, lastSeason }) => cropKey !== bareKey && firstSeason <= season && lastSeason >= season,
    );
    const soil = habits.soil.value;
    const feeding = feedingOf({
      ...{ season, today, soil, works },
      ground: bed.footprint,
      crops: standing,
      intervalYears: settings.manuringIntervalYears,
    });
    return {
      today,
      season,
      units: scope.units,
      soil: { key: soil, isAssumed: habits.soil.setBy === 'catalogue' },
      ...feeding,
      barrowLoadG: habits.barrowLitres.value * (materialOf(feeding.nitrogen.materialKey)?.densityGPerL ?? 0),
      dressingRateGPerM2: settings.manureRateGPerM2,
      crops: [...new Map(standing.map(({ cropKey, cropName }) => [cropKey, cropName]))].map(([key, name]) => ({
        key,
        name,
      })),
      waits: waitsOf(onBed(plantings), works, today),
      clashes: limeClashesOf(onBed(works), year),
      lime: {
        ...limeTold(bed.footprint, {
          texture: texture ?? limeGroundOf(soil),
          purpose:
            purpose ??
            purposeOf(
              standing,
              onBed(troubles).some(({ troubleKey }) => troubleKey === 'clubroot'),
            ),
          ph: ph ?? '',
        }),
        days: limeDays(bed.footprint, works, today),
      },
    };
  },
});

function purposeOf(standing: readonly PlantingRecord[], isClubrootFound: boolean): LimeFor {
  if (standing.some(({ cropGroup }) => cropGroup === 'potatoes')) return 'potatoes';
  return isClubrootFound ? 'clubroot' : 'vegetables';
}
