import 'server-only';
import { bedsStanding } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import { worksIn } from '@/lib/data/ground-work';
import { plantingsIn } from '@/lib/data/planting';
import { settingsOn } from '@/lib/data/setting';
import { troublesIn } from '@/lib/data/trouble';
import type { Crop } from '@/lib/domain/catalogue/crops';
import { byFrame } from '@/lib/domain/ground/by-frame';
import { areaCm2, type Footprint, overlap } from '@/lib/domain/ground/footprint';
import { canEnter } from '@/lib/domain/policy/standing';
import { advise } from '@/lib/domain/rotation/advise';
import type { Advice } from '@/lib/domain/rotation/rules/rule';
import { type Judgement, judge } from '@/lib/domain/rotation/judge';
import { judgeInput } from '@/lib/schemas/ground/planting';
import { query } from '../operation';
import { NotFound, Refused, type Refusal } from '../refusal';
import { type ToldWait, waitsOf } from './food-and-lime';
import { openBed } from './open-bed';
import { partOf } from './place-planting';
import { judgedGroups, longestBreak, type NamedFinding, nameFindings, rotationSettings } from './rotation-settings';

export type JudgedPlanting = {
  readonly cropName: string;
  readonly season: number;
  readonly footprint: Footprint;
  readonly areaCm2: number;
  readonly verdict: Judgement['verdict'];
  readonly areas: Judgement['areas'];
  readonly findings: readonly NamedFinding[];
  /** What the general rules say against it; it makes nothing fall short. */
  readonly advice: readonly Advice[];
  /** Where on the same bed the break is kept, from its top end [cm]; null where nowhere. */
  readonly moveToCm: number | null;
  /** Other beds of the holding whose break is kept. */
  readonly otherBeds: readonly { readonly id: string; readonly name: string }[];
  /** How long its harvest would have to wait for the manure of its ground; null where it need not. */
  readonly wait: ToldWait | null;
};

/** Judge a crop on a bed, or part of it, for a season; and where it falls short, say where it would not. */
export const judgePlanting = query({
  name: 'judge-planting',
  allow: canEnter,
  input: judgeInput,
  read: async ({ db, scope, today }, input): Promise<JudgedPlanting | { refusals: readonly Refusal[] }> => {
    const open = await openBed({ db, scope, today }, input.bedId);
    const [crops, settings] = await Promise.all([cropsOf(db, scope), settingsOn(db, scope, today)]);
    const crop = crops.get(input.cropKey);
    if (!crop) throw new NotFound();
    const footprint = refusable(() => partOf(open.bed.footprint, input, scope.units));
    if ('refusals' in footprint) return footprint;
    const plotIds = open.holding?.plots.map(({ id }) => id) ?? [open.plot.id];
    const beds = (await bedsStanding(db, scope, today, today, plotIds)).filter(({ id }) => id !== open.bed.id);
    const frameIds = [...new Set([open.bed.frameId, ...beds.map(({ frameId }) => frameId)])];
    const troubles = await troublesIn(db, scope, settings, frameIds);
    const seasons = { from: input.season - longestBreak(settings, troubles), to: input.season };
    const history = await plantingsIn(db, scope, crops, seasons, frameIds);
    const [stood, found] = [byFrame(history), byFrame(troubles)];
    const at = (frameId: string, footprint: Footprint) =>
      judge({
        proposal: { footprint, hostGroups: judgedGroups(crop), season: input.season },
        history: stood.get(frameId) ?? [],
        troubles: found.get(frameId) ?? [],
        settings: rotationSettings(settings),
      });
    const judgement = at(open.bed.frameId, footprint);
    const works = await worksIn(db, scope, [open.bed.frameId]);
    const succession = { crop, footprint, season: input.season, history: stood.get(open.bed.frameId) ?? [], works };
    const isShort = judgement.verdict === 'short';
    const keeps = (frameId: string, ground: Footprint) => at(frameId, ground).verdict === 'kept';
    return {
      cropName: crop.name,
      season: input.season,
      footprint,
      areaCm2: areaCm2(footprint),
      verdict: judgement.verdict,
      areas: judgement.areas,
      advice: advise(succession, settings.shownRules),
      findings: nameFindings(judgement.findings, (key) => crops.get(key)?.name ?? key),
      moveToCm: isShort
        ? moveAlong(open.bed.footprint, footprint, [...history, ...troubles], (ground) =>
            keeps(open.bed.frameId, ground),
          )
        : null,
      otherBeds: isShort
        ? beds.filter((bed) => keeps(bed.frameId, bed.footprint)).map(({ id, name }) => ({ id, name }))
        : [],
      wait: waitsOf([proposed(crop, footprint, input.season)], works, today)[0] ?? null,
    };
  },
});

// As it would stand on record, not yet begun.
function proposed({ key, name }: Crop, footprint: Footprint, season: number) {
  return {
    ...{
      id: 'proposed',
      cropKey: key,
      cropName: name,
      footprint,
      firstSeason: season,
      lastSeason: season,
      planned: true,
    },
    ...{ sownOn: null, plantedOn: null, clearedOn: null },
  };
}

// The places worth trying: where something that stood or was found there ends or begins.
function moveAlong(
  bed: Footprint,
  part: Footprint,
  marks: readonly { readonly footprint: Footprint }[],
  keeps: (ground: Footprint) => boolean,
): number | null {
  const last = bed.yCm + bed.lengthCm - part.lengthCm;
  const edges = marks
    .filter(({ footprint }) => overlap(footprint, bed))
    .flatMap(({ footprint: { yCm, lengthCm } }) => [yCm + lengthCm, yCm - part.lengthCm]);
  const places = [...new Set([bed.yCm, last, ...edges])].filter(
    (yCm) => yCm >= bed.yCm && yCm <= last && yCm !== part.yCm,
  );
  const kept = places
    .sort((a, b) => Math.abs(a - part.yCm) - Math.abs(b - part.yCm))
    .find((yCm) => keeps({ ...part, yCm }));
  return kept === undefined ? null : kept - bed.yCm;
}

function refusable<T extends object>(work: () => T): T | { refusals: readonly Refusal[] } {
  try {
    return work();
  } catch (error) {
    if (error instanceof Refused) return { refusals: error.refusals };
    throw error;
  }
}
