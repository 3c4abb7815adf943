import 'server-only';
import { type BedRecord, bedsStanding } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import type { Db } from '@/lib/data/db';
import { worksIn } from '@/lib/data/ground-work';
import { byNumber, type HoldingOnDay } from '@/lib/data/holding';
import { type PlantingRecord, plantingsIn } from '@/lib/data/planting';
import type { Scope } from '@/lib/data/scope';
import { settingsOn } from '@/lib/data/setting';
import { troublesIn } from '@/lib/data/trouble';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Crop } from '@/lib/domain/catalogue/crops';
import type { SettingValues } from '@/lib/domain/catalogue/settings';
import { type Severity, troubleOf } from '@/lib/domain/catalogue/troubles';
import { type CourseBed, type CourseBreak, type CourseInstance, openKey } from '@/lib/domain/course/instance';
import { byFrame } from '@/lib/domain/ground/by-frame';
import { areaCm2, type Footprint, overlap } from '@/lib/domain/ground/footprint';
import { advise } from '@/lib/domain/rotation/advise';
import { judge, type TroubleOnGround } from '@/lib/domain/rotation/judge';
import { coveredCm2, type GroundWorkRecord } from '@/lib/domain/rotation/rules/rule';
import { judgedGroups, rotationSettings } from '../ground/rotation-settings';
import type { Wishes } from './wishes';

/** How heavily a routine break weighs beside a trouble's, on each square centimetre: common practice. */
const routineWeight = 4;
const troubleWeights: Record<Severity, number> = { light: 2, serious: 6, grave: 10 };

export type PlannedBed = { readonly bed: BedRecord; readonly plotNumber: string };

/** A question to the planner, and what its numbers stand for. */
export type CourseQuestion = {
  readonly instance: CourseInstance;
  readonly beds: readonly PlannedBed[];
  /** Beds of the holding that a standing crop keeps. */
  readonly kept: readonly PlannedBed[];
  readonly crops: ReadonlyMap<string, Crop>;
  readonly settings: SettingValues;
  readonly plantings: readonly PlantingRecord[];
};

type At = { readonly db: Db; readonly scope: Scope; readonly today: CalendarDate };
type Asked = { readonly firstSeason: number; readonly years: number; readonly wishes: Wishes };

/** Read a holding's ground, and put its question: what has stood there is judged once, so that the planner only adds up. */
export async function courseQuestion(
  { db, scope, today }: At,
  holding: HoldingOnDay,
  { firstSeason, years, wishes }: Asked,
): Promise<CourseQuestion> {
  const plotIds = holding.plots.map(({ id }) => id);
  const [crops, settings, standing] = await Promise.all([
    cropsOf(db, scope),
    settingsOn(db, scope, today),
    bedsStanding(db, scope, today, today, plotIds),
  ]);
  const frameIds = [...new Set(standing.map(({ frameId }) => frameId))];
  const [plantings, works, troubles] = await Promise.all([
    plantingsIn(db, scope, crops, { from: 1900, to: firstSeason + years }, frameIds),
    worksIn(db, scope, frameIds),
    troublesIn(db, scope, settings, frameIds),
  ]);
  const [stood, done, found] = [byFrame(plantings), byFrame(works), byFrame(troubles)];
  const numbers = new Map(holding.plots.map(({ id, number }) => [id, number]));
  const named = (bed: BedRecord): PlannedBed => ({ bed, plotNumber: numbers.get(bed.plotId) ?? '' });
  const isKept = ({ frameId, footprint }: BedRecord) => {
    const keeping = (stood.get(frameId) ?? []).filter(
      (one) =>
        one.cropGroup === 'standing' && one.lastSeason >= firstSeason + years - 1 && one.firstSeason < firstSeason,
    );
    return coveredCm2(footprint, keeping) * 2 > areaCm2(footprint);
  };
  const place = ({ plotId }: BedRecord) => holding.plots.findIndex(({ id }) => id === plotId);
  const wanted = standing
    .filter(({ id }) => wishes.bedIds.includes(id))
    .sort((a, b) => place(a) - place(b) || byNumber(a.name, b.name));
  const beds = wanted.filter((bed) => !isKept(bed));
  const options = optionsOf(wishes, crops, beds, stood, { firstSeason, years });
  const toOption = optionFor(options);
  const ground = { firstSeason, years, settings, options, toOption, wishes };
  return {
    crops,
    settings,
    plantings,
    beds: beds.map(named),
    kept: wanted.filter(isKept).map(named),
    instance: {
      years,
      options: [
        ...options.map((crop) => ({ key: crop.key, hosts: judgedGroups(crop), takesManure: crop.takesManure })),
        { key: openKey, hosts: [], takesManure: false },
      ],
      beds: beds.map((bed) =>
        courseBed(bed, ground, {
          plantings: stood.get(bed.frameId) ?? [],
          works: done.get(bed.frameId) ?? [],
          troubles: found.get(bed.frameId) ?? [],
        }),
      ),
      wanted: wishes.options.map(({ key, areaCm2: cm2 }) => ({ option: key, areaCm2: cm2 })),
      order: wishes.keepOrder ? wishes.options.map(({ key }) => key) : [],
      follows: followsOf(options, settings),
      manuringIntervalYears: settings.manuringIntervalYears,
      evenTurns: wishes.evenTurns,
    },
  };
}

type Ground = {
  readonly firstSeason: number;
  readonly years: number;
  readonly settings: SettingValues;
  readonly options: readonly Crop[];
  readonly toOption: (planting: PlantingRecord) => string | null;
  readonly wishes: Wishes;
};
type Records = {
  readonly plantings: readonly PlantingRecord[];
  readonly works: readonly GroundWorkRecord[];
  readonly troubles: readonly TroubleOnGround[];
};

// What is wished for, what must or would rather stand somewhere, and what is on the board already.
function optionsOf(
  wishes: Wishes,
  crops: ReadonlyMap<string, Crop>,
  beds: readonly BedRecord[],
  stood: ReadonlyMap<string, readonly PlantingRecord[]>,
  { firstSeason, years }: { firstSeason: number; years: number },
): Crop[] {
  const wished = [...wishes.options.map(({ key }) => key), ...wishes.cells.map(({ key }) => key)];
  const groups = new Set(wished.map((key) => crops.get(key)?.cropGroup));
  const board = beds.flatMap((bed) =>
    (stood.get(bed.frameId) ?? [])
      .filter((one) => one.planned && one.firstSeason >= firstSeason && one.firstSeason < firstSeason + years)
      .filter((one) => overlap(one.footprint, bed.footprint) && !groups.has(one.cropGroup ?? undefined))
      .map(({ cropKey }) => cropKey),
  );
  return [...new Set([...wished, ...board])].filter((key) => key !== openKey).flatMap((key) => crops.get(key) ?? []);
}

// A crop that stood there as the planner knows it: by itself, or as one of its group.
function optionFor(options: readonly Crop[]): Ground['toOption'] {
  return ({ cropKey, cropGroup }) =>
    options.find(({ key }) => key === cropKey)?.key ??
    options.find((option) => option.key === cropGroup)?.key ??
    options.find((option) => option.cropGroup === cropGroup && cropGroup !== 'standing')?.key ??
    null;
}

function courseBed(bed: BedRecord, ground: Ground, records: Records): CourseBed {
  const { firstSeason, years, wishes } = ground;
  const seasons = Array.from({ length: years }, (_, year) => firstSeason + year);
  const earlier = records.plantings.filter((one) => one.firstSeason < firstSeason);
  const cell = (kind: 'must' | 'rather') => (season: number) =>
    wishes.cells.find((one) => one.bedId === bed.id && one.season === season && one.kind === kind)?.key ?? null;
  const most = (season: number, among: readonly PlantingRecord[]) =>
    mostOf(bed.footprint, season, among, ground.toOption);
  return {
    id: bed.id,
    areaCm2: areaCm2(bed.footprint),
    breaks: [
      ...routineBreaks(bed.footprint, ground, earlier),
      ...troubleBreaks(bed.footprint, ground, earlier, records.troubles),
    ],
    advice: adviceOn(bed.footprint, ground, earlier, records.works),
    before: most(firstSeason - 1, earlier),
    manuredYearsAgo: manuredYearsAgo(bed.footprint, firstSeason, records.works),
    fixed: seasons.map(cell('must')),
    rather: seasons.map(cell('rather')),
    board: seasons.map((season) =>
      most(
        season,
        records.plantings.filter(({ planned }) => planned),
      ),
    ),
  };
}

function routineBreaks(
  footprint: Footprint,
  { firstSeason, years, options, settings }: Ground,
  history: readonly PlantingRecord[],
): CourseBreak[] {
  const rules = rotationSettings(settings);
  const groups = [...new Set(options.flatMap(judgedGroups))];
  return groups.map((hostGroup) => ({
    key: hostGroup,
    hosts: [hostGroup],
    breakYears: settings.breakYears[hostGroup] ?? 0,
    weight: routineWeight,
    areaCm2: areaCm2(footprint),
    historyCm2: Array.from({ length: years }, (_, year) => {
      const proposal = { footprint, hostGroups: [hostGroup], season: firstSeason + year };
      return judge({ proposal, history, settings: rules }).areas.shortCm2;
    }),
  }));
}

function troubleBreaks(
  footprint: Footprint,
  { firstSeason, years, options, settings }: Ground,
  history: readonly PlantingRecord[],
  troubles: readonly TroubleOnGround[],
): CourseBreak[] {
  const hosts = new Set(options.flatMap(judgedGroups));
  // By itself: no routine break, and no edge, since the ground is the trouble's own.
  const alone = { ...rotationSettings(settings), breakYears: {}, edgeWidthCm: 0, edgeSharePercent: 0 };
  return troubles.flatMap((trouble): CourseBreak[] => {
    const ground = overlap(footprint, trouble.footprint);
    if (!ground || !trouble.hosts.some((host) => hosts.has(host))) return [];
    return [
      {
        key: `trouble ${trouble.troubleKey}`,
        hosts: trouble.hosts,
        breakYears: trouble.breakYears,
        weight: troubleWeights[troubleOf(trouble.troubleKey)?.severity ?? 'serious'],
        areaCm2: areaCm2(ground),
        historyCm2: Array.from({ length: years }, (_, year) => {
          const proposal = { footprint: ground, hostGroups: trouble.hosts, season: firstSeason + year };
          return judge({ proposal, history, settings: alone, troubles: [trouble] }).areas.shortCm2;
        }),
      },
    ];
  });
}

// What the records speak against. What may follow what within the plan is the planner's own to weigh.
function adviceOn(
  footprint: Footprint,
  { firstSeason, years, options, settings }: Ground,
  history: readonly PlantingRecord[],
  works: readonly GroundWorkRecord[],
): CourseBed['advice'] {
  const shown = settings.shownRules.filter((key) => key !== 'brassicas-after-legumes');
  return Array.from({ length: years }, (_, year) =>
    options.flatMap((crop) =>
      advise({ crop, footprint, season: firstSeason + year, history, works }, shown).map((one) => ({
        rule: one.rule,
        year,
        option: crop.key,
        areaCm2: one.areaCm2,
      })),
    ),
  ).flat();
}

function followsOf(options: readonly Crop[], { shownRules }: SettingValues): CourseInstance['follows'] {
  const legumes = options.filter(({ cropGroup }) => cropGroup === 'legumes').map(({ key }) => key);
  if (!shownRules.includes('brassicas-after-legumes') || legumes.length === 0) return [];
  return options
    .filter(({ cropGroup }) => cropGroup === 'brassicas')
    .map(({ key }) => ({ rule: 'brassicas-after-legumes', option: key, after: legumes }));
}

function mostOf(
  footprint: Footprint,
  season: number,
  plantings: readonly PlantingRecord[],
  toOption: Ground['toOption'],
): string | null {
  const areas = new Map<string, number>();
  for (const one of plantings) {
    const shared = overlap(one.footprint, footprint);
    const key = shared && one.firstSeason <= season && one.lastSeason >= season ? toOption(one) : null;
    if (shared && key) areas.set(key, (areas.get(key) ?? 0) + areaCm2(shared));
  }
  const [best] = [...areas].sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1));
  return best && best[1] * 2 > areaCm2(footprint) ? best[0] : null;
}

function manuredYearsAgo(footprint: Footprint, firstSeason: number, works: readonly GroundWorkRecord[]): number | null {
  const seasons = [...new Set(works.filter(({ kind }) => kind === 'manured').map(({ season }) => season))]
    .filter((season) => season <= firstSeason)
    .sort((a, b) => b - a);
  const last = seasons.find(
    (season) =>
      coveredCm2(
        footprint,
        works.filter((work) => work.kind === 'manured' && work.season === season),
      ) *
        2 >
      areaCm2(footprint),
  );
  return last === undefined ? null : firstSeason - last;
}
