import type { Season } from '../calendar/season-of';
import type { CropGroup } from '../catalogue/crop-groups';
import { areaCm2, type Footprint, overlap, subtract } from '../ground/footprint';
import {
  type Finding,
  type Judgement,
  judge,
  type RotationSettings,
  type TroubleOnGround,
  type Verdict,
} from './judge';
import { bareKey, type RecordedPlanting } from './recorded-planting';
import type { SeasonIndex } from './season-index';

/** Raised whenever the judge or the tally would answer otherwise than before: tallies that were kept are then made anew. */
export const tallyMethod = 'ground judged by its footprints, 1';

/** The five areas of a season [cm²]; together they are the cultivable area. */
export type ComplianceAreas = {
  readonly keptCm2: number;
  readonly shortCm2: number;
  readonly notKnownCm2: number;
  readonly outsideCm2: number;
  readonly bareCm2: number;
};

export type CultivatedBed = {
  readonly id: string;
  readonly plotId: string;
  readonly name: string;
  readonly footprint: Footprint;
};

/** A bed with ground that falls short, and the planting that does. */
export type ShortGround = {
  readonly bedId: string;
  readonly bedName: string;
  readonly plotId: string;
  readonly plantingId: string;
  readonly cropKey: string;
  readonly areaCm2: number;
  readonly shortCm2: number;
  /** What falls short, and nothing else. */
  readonly findings: readonly Finding[];
};

/** What the ground of one frame comes to in a season: plain data, to be kept and added up with others. */
export type FrameTally = {
  readonly byPlot: readonly { readonly plotId: string; readonly areas: ComplianceAreas }[];
  readonly byGroup: readonly { readonly cropGroup: CropGroup; readonly areas: ComplianceAreas }[];
  /** Ground that falls short because of a trouble found there; some of it may be short for another reason too. */
  readonly byTrouble: readonly { readonly troubleKey: string; readonly shortCm2: number }[];
  readonly short: readonly ShortGround[];
};

type Judged = { planting: RecordedPlanting; judgement: Judgement };
type Covered = { footprint: Footprint; verdict: Verdict | 'bare'; cropGroup: CropGroup | null };

/** The ground of one frame in one season, and all that its rotation is judged by. */
export type FrameGround = {
  readonly season: Season;
  readonly frameId: string;
  readonly beds: readonly CultivatedBed[];
  readonly undivided: readonly { readonly plotId: string; readonly areaCm2: number }[];
  readonly plantings: SeasonIndex;
  readonly settings: RotationSettings;
  readonly troubles: readonly TroubleOnGround[];
};

const worstFirst: readonly Verdict[] = ['short', 'not-known', 'kept', 'outside'];

/**
 * How much of a frame's cultivable ground keeps its rotation in a season, by plot and crop group.
 *
 * Method: each planting of the season is judged on its own; each bed is then covered by the judged pieces, worst first,
 * so that ground with two crops counts once: short before not known before kept before outside the rotation. What is left
 * of a bed is bare where the season is on record there, and not known where nothing is.
 *
 * @param beds             the frame's beds of the season; they do not overlap
 * @param undivided        cultivable ground of plots with no beds drawn [cm²]: not known
 * @param plantings        by frame and season, of all seasons that the breaks reach back to
 * @returns                five areas for each plot, summing exactly to its beds' areas and its undivided ground
 * @throws RangeError      as `judge`
 * @example                one bed, half onions with three clear years on record, half nothing → half kept, half bare
 */
export function tallyFrame(given: FrameGround): FrameTally {
  const byPlot = new Map<string, ComplianceAreas>();
  const byGroup = new Map<CropGroup, ComplianceAreas>();
  for (const { plotId, areaCm2: cm2 } of given.undivided) count(byPlot, plotId, 'notKnownCm2', cm2);
  const judged = judgeFrame(given);
  const short: ShortGround[] = [];
  for (const bed of given.beds) {
    const here = judged.filter(({ planting }) => overlap(planting.footprint, bed.footprint));
    for (const { footprint, verdict, cropGroup } of cover(bed.footprint, here)) {
      count(byPlot, bed.plotId, areaNames[verdict], areaCm2(footprint));
      if (cropGroup) count(byGroup, cropGroup, areaNames[verdict], areaCm2(footprint));
    }
    short.push(...here.filter(({ judgement }) => judgement.verdict === 'short').map((one) => shortGround(bed, one)));
  }
  return {
    byPlot: [...byPlot].map(([plotId, areas]) => ({ plotId, areas })),
    byGroup: [...byGroup].map(([cropGroup, areas]) => ({ cropGroup, areas })),
    byTrouble: byTrouble(judged),
    short,
  };
}

const areaNames = {
  kept: 'keptCm2',
  short: 'shortCm2',
  'not-known': 'notKnownCm2',
  outside: 'outsideCm2',
  bare: 'bareCm2',
} as const;

/** No ground at all. */
export const noAreas: ComplianceAreas = { keptCm2: 0, shortCm2: 0, notKnownCm2: 0, outsideCm2: 0, bareCm2: 0 };

function count<Key>(areas: Map<Key, ComplianceAreas>, key: Key, name: keyof ComplianceAreas, cm2: number): void {
  const before = areas.get(key) ?? noAreas;
  areas.set(key, { ...before, [name]: before[name] + cm2 });
}

function byTrouble(judged: readonly Judged[]): FrameTally['byTrouble'] {
  const found = new Map<string, number>();
  for (const { judgement } of judged)
    for (const finding of judgement.findings)
      if (finding.code === 'short' && finding.trouble)
        found.set(finding.trouble.key, (found.get(finding.trouble.key) ?? 0) + finding.areaCm2);
  return [...found].map(([troubleKey, shortCm2]) => ({ troubleKey, shortCm2 }));
}

function shortGround(bed: CultivatedBed, { planting, judgement }: Judged): ShortGround {
  return {
    bedId: bed.id,
    bedName: bed.name,
    plotId: bed.plotId,
    plantingId: planting.id,
    cropKey: planting.cropKey,
    areaCm2: areaCm2(planting.footprint),
    shortCm2: judgement.areas.shortCm2,
    findings: judgement.findings.filter(({ code }) => code === 'short'),
  };
}

function judgeFrame({ frameId, season, settings, troubles, plantings }: FrameGround): Judged[] {
  const reach = Math.max(
    0,
    ...Object.values(settings.breakYears),
    ...troubles.map(({ breakYears }) => breakYears ?? 0),
  );
  const standing = plantings.between(frameId, season, season);
  const lately = plantings.between(frameId, season - reach, season);
  return standing.map((planting) => {
    // What has stood there since an earlier season is the same planting, not its own forerunner.
    const since = Math.min(season, planting.firstSeason);
    const hostGroups = planting.cropGroup === 'standing' ? [] : planting.hostGroups;
    const proposal = { footprint: planting.footprint, hostGroups, season: since };
    // The judge passes over the planting itself, which did not begin before it began.
    const history = since === season ? lately : plantings.between(frameId, since - reach, since);
    return { planting, judgement: judge({ proposal, history, settings, troubles }) };
  });
}

function cover(bed: Footprint, judged: readonly Judged[]): Covered[] {
  const patches = judged
    .filter(({ planting }) => planting.cropKey !== bareKey)
    .flatMap(({ planting, judgement }) =>
      judgement.pieces.map((piece) => ({ ...piece, plantingId: planting.id, cropGroup: planting.cropGroup })),
    )
    // Two crops of equal verdict: by id, so that the order of the records decides nothing.
    .sort(
      (a, b) => worstFirst.indexOf(a.verdict) - worstFirst.indexOf(b.verdict) || compare(a.plantingId, b.plantingId),
    );
  const covered: Covered[] = [];
  let left: Footprint[] = [bed];
  for (const patch of patches) {
    const shared = left.map((piece) => overlap(piece, patch.footprint)).filter((piece) => piece !== null);
    const { verdict, cropGroup } = patch;
    covered.push(...shared.map((footprint) => ({ footprint, verdict, cropGroup })));
    left = left.flatMap((piece) => subtract(piece, [patch.footprint]));
  }
  const rest = judged.length ? ('bare' as const) : ('not-known' as const);
  return [...covered, ...left.map((footprint) => ({ footprint, verdict: rest, cropGroup: null }))];
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
