import type { Season } from '../calendar/season-of';
import { type CropGroup, cropGroups } from '../catalogue/crop-groups';
import { areaCm2, type Footprint, overlap, subtract } from '../ground/footprint';
import { type Judgement, judge, type RotationSettings, type TroubleOnGround, type Verdict } from './judge';
import { bareKey, type RecordedPlanting } from './recorded-planting';
import type { SeasonIndex } from './season-index';

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
  readonly frameId: string;
  readonly footprint: Footprint;
};

export type Compliance = {
  readonly total: ComplianceAreas;
  readonly byGroup: readonly { readonly cropGroup: CropGroup; readonly areas: ComplianceAreas }[];
  /** By plot, in the order in which the beds and the undivided ground were given. */
  readonly byPlot: readonly { readonly plotId: string; readonly areas: ComplianceAreas }[];
  /** Ground that falls short because of a trouble found there, most first; some of it may be short for another reason too. */
  readonly byTrouble: readonly { readonly troubleKey: string; readonly shortCm2: number }[];
  /** Beds with ground that falls short, most first. */
  readonly short: readonly {
    readonly bedId: string;
    readonly planting: RecordedPlanting;
    readonly judgement: Judgement;
  }[];
};

type Judged = { planting: RecordedPlanting; judgement: Judgement };
type Covered = { footprint: Footprint; verdict: Verdict | 'bare'; cropGroup: CropGroup | null };

const nothing: ComplianceAreas = { keptCm2: 0, shortCm2: 0, notKnownCm2: 0, outsideCm2: 0, bareCm2: 0 };
const worstFirst: readonly Verdict[] = ['short', 'not-known', 'kept', 'outside'];

/**
 * How much of the cultivable ground keeps its rotation in a season, by crop group.
 *
 * Method: each planting of the season is judged on its own; each bed is then covered by the judged pieces, worst first,
 * so that ground with two crops counts once: short before not known before kept before outside the rotation. What is left
 * of a bed is bare where the season is on record there, and not known where nothing is.
 *
 * @param beds             the beds of the season; those of one frame do not overlap
 * @param undivided        cultivable ground of plots with no beds drawn [cm²]: not known
 * @param plantings        by frame and season, of all seasons that the breaks reach back to
 * @returns                five areas summing exactly to the beds' areas and the undivided ground
 * @throws RangeError      as `judge`
 * @example                one bed, half onions with three clear years on record, half nothing → half kept, half bare
 */
export function complianceOfSeason(given: {
  readonly season: Season;
  readonly beds: readonly CultivatedBed[];
  readonly undivided: readonly { readonly plotId: string; readonly areaCm2: number }[];
  readonly plantings: SeasonIndex;
  readonly settings: RotationSettings;
  /** By frame. */
  readonly troubles?: ReadonlyMap<string, readonly TroubleOnGround[]>;
}): Compliance {
  const byGroup = new Map<CropGroup, ComplianceAreas>();
  const byPlot = new Map<string, ComplianceAreas>();
  const byTrouble = new Map<string, number>();
  const count = (plotId: string, name: keyof ComplianceAreas, cm2: number) => {
    total = add(total, name, cm2);
    byPlot.set(plotId, add(byPlot.get(plotId) ?? nothing, name, cm2));
  };
  let total = nothing;
  for (const { plotId, areaCm2: cm2 } of given.undivided) count(plotId, 'notKnownCm2', cm2);
  const short: { bedId: string; planting: RecordedPlanting; judgement: Judgement }[] = [];
  const judgedByFrame = new Map(
    [...new Set(given.beds.map(({ frameId }) => frameId))].map((frameId) => [frameId, judgeFrame(frameId, given)]),
  );
  for (const bed of given.beds) {
    const judged = (judgedByFrame.get(bed.frameId) ?? []).filter(({ planting }) =>
      overlap(planting.footprint, bed.footprint),
    );
    for (const patch of cover(bed.footprint, judged)) {
      const name = areaNames[patch.verdict];
      count(bed.plotId, name, areaCm2(patch.footprint));
      if (patch.cropGroup)
        byGroup.set(patch.cropGroup, add(byGroup.get(patch.cropGroup) ?? nothing, name, areaCm2(patch.footprint)));
    }
    const falling = judged.filter(({ judgement }) => judgement.verdict === 'short');
    short.push(...falling.map((one) => ({ bedId: bed.id, ...one })));
  }
  for (const { judgement } of [...judgedByFrame.values()].flat())
    for (const finding of judgement.findings)
      if (finding.code === 'short' && finding.trouble)
        byTrouble.set(finding.trouble.key, (byTrouble.get(finding.trouble.key) ?? 0) + finding.areaCm2);
  return {
    total,
    byGroup: [...byGroup].map(([cropGroup, areas]) => ({ cropGroup, areas })).sort((a, b) => place(a) - place(b)),
    byPlot: [...byPlot].map(([plotId, areas]) => ({ plotId, areas })),
    byTrouble: [...byTrouble]
      .map(([troubleKey, shortCm2]) => ({ troubleKey, shortCm2 }))
      .sort((a, b) => b.shortCm2 - a.shortCm2 || compare(a.troubleKey, b.troubleKey)),
    short: short.sort(
      (a, b) =>
        b.judgement.areas.shortCm2 - a.judgement.areas.shortCm2 ||
        compare(a.bedId, b.bedId) ||
        compare(a.planting.id, b.planting.id),
    ),
  };
}

const areaNames = {
  kept: 'keptCm2',
  short: 'shortCm2',
  'not-known': 'notKnownCm2',
  outside: 'outsideCm2',
  bare: 'bareCm2',
} as const;

function judgeFrame(frameId: string, given: Parameters<typeof complianceOfSeason>[0]): Judged[] {
  const { season, settings } = given;
  const troubles = given.troubles?.get(frameId) ?? [];
  const reach = Math.max(
    0,
    ...Object.values(settings.breakYears),
    ...troubles.map(({ breakYears }) => breakYears ?? 0),
  );
  const standing = given.plantings.between(frameId, season, season);
  const lately = given.plantings.between(frameId, season - reach, season);
  return standing.map((planting) => {
    // What has stood there since an earlier season is the same planting, not its own forerunner.
    const since = Math.min(season, planting.firstSeason);
    const hostGroups = planting.cropGroup === 'standing' ? [] : planting.hostGroups;
    const proposal = { footprint: planting.footprint, hostGroups, season: since };
    // The judge passes over the planting itself, which did not begin before it began.
    const history = since === season ? lately : given.plantings.between(frameId, since - reach, since);
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

function add(areas: ComplianceAreas, name: keyof ComplianceAreas, cm2: number): ComplianceAreas {
  return { ...areas, [name]: areas[name] + cm2 };
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function place({ cropGroup }: { readonly cropGroup: CropGroup }): number {
  return cropGroups.findIndex(({ key }) => key === cropGroup);
}
