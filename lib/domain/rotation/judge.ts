import type { Season } from '../calendar/season-of';
import { cellsOf, liesIn, openCells } from '../ground/cells';
import { areaCm2, type Footprint, overlap } from '../ground/footprint';
import type { RecordedPlanting } from './recorded-planting';

/** Clear years wanted between two plantings of each host group, and what counts as a mere edge. */
export type RotationSettings = {
  readonly breakYears: Readonly<Record<string, number>>;
  /** Marked ground narrower than this [cm] is an edge. */
  readonly edgeWidthCm: number;
  /** So is marked ground of less than this share of the planting [percent]. */
  readonly edgeSharePercent: number;
};

/** A trouble found on some ground: none of its hosts is to stand there for its longer break. */
export type TroubleOnGround = {
  readonly id: string;
  readonly troubleKey: string;
  readonly hosts: readonly string[];
  readonly footprint: Footprint;
  readonly foundSeason: Season;
  /** Clear years; null: no break clears it. */
  readonly breakYears: number | null;
};

export type Proposal = {
  readonly footprint: Footprint;
  readonly hostGroups: readonly string[];
  readonly season: Season;
};

export type Verdict = 'kept' | 'short' | 'not-known' | 'outside';

export type Finding =
  | {
      readonly code: 'short' | 'edge-only';
      readonly hostGroup: string;
      /** The last host that stood there; null where the trouble itself is the last that is known. */
      readonly cause: { readonly plantingId: string; readonly cropKey: string; readonly season: Season } | null;
      readonly trouble: { readonly id: string; readonly key: string; readonly foundSeason: Season } | null;
      readonly clearYears: number;
      /** Null: no break clears it. */
      readonly breakYears: number | null;
      readonly yearsShort: number | null;
      readonly areaCm2: number;
    }
  | { readonly code: 'not-known'; readonly missing: readonly Season[]; readonly areaCm2: number };

export type Judgement = {
  readonly verdict: Verdict;
  readonly areas: {
    readonly keptCm2: number;
    readonly shortCm2: number;
    readonly notKnownCm2: number;
    readonly outsideCm2: number;
  };
  readonly findings: readonly Finding[];
  /** The planting's ground, piece by piece, each with its verdict. */
  readonly pieces: readonly { readonly footprint: Footprint; readonly verdict: Verdict }[];
};

/** A break that is wanted on a cell: a host group's own, or a trouble's, which may cross families. */
type Wanted = {
  readonly hostGroup: string;
  readonly hosts: readonly string[];
  readonly breakYears: number | null;
  readonly trouble: TroubleOnGround | null;
};
type Cause = Wanted & { readonly planting: RecordedPlanting | null; readonly season: Season };
type JudgedCell = { cell: Footprint; cause: Cause | null; missing: readonly Season[] };

/**
 * Judge a planting by the ground it would stand on: is the break kept, short, or not known?
 *
 * Method: the footprint is cut along the edges of everything that stood there. On each cell the latest planting of each
 * host group is compared with the break; a break of 3 allows 2022 then 2026. Ground is kept only when every season of
 * the break is on record there. Where a trouble was found earlier, none of its hosts may stand for its longer break, counted
 * from the last host or from the season in which it was found. Short beats not known. Marked ground that is a mere edge does not fall short. Judged against
 * earlier seasons only: two crops of one group in one season are one occupation, common practice.
 *
 * @param proposal   footprint in its frame [cm]; no host groups: outside the rotation
 * @param history    what stood in the same frame, in any order; the proposal itself left out
 * @returns          areas [cm²] summing exactly to the footprint's; findings largest first
 * @param troubles   found in the same frame; those found in or after the season judged change nothing
 * @throws RangeError on a break that is not a whole number ≥ 0
 * @source           clear years for an N-year rotation: American Crystal Sugar, Ag Note 334, table
 * @example          onions for 2027 across a bed whose north 30 % carried leeks in 2026 → short on 30 %, by 3 years
 */
export function judge(given: {
  readonly proposal: Proposal;
  readonly history: readonly RecordedPlanting[];
  readonly settings: RotationSettings;
  readonly troubles?: readonly TroubleOnGround[];
}): Judgement {
  const { proposal, settings } = given;
  const { footprint, hostGroups, season } = proposal;
  if (hostGroups.length === 0) return outsideTheRotation(footprint);
  const troubles = (given.troubles ?? []).filter(
    (one) => one.foundSeason < season && one.hosts.some((host) => hostGroups.includes(host)),
  );
  const longest = Math.max(
    ...hostGroups.map((group) => routineBreak(settings, group)),
    ...troubles.map(({ breakYears }) => checked(breakYears ?? 0)),
  );
  const earlier = given.history.filter(
    ({ firstSeason, lastSeason, footprint: ground }) =>
      firstSeason < season && lastSeason >= season - longest && overlap(ground, footprint) !== null,
  );
  const grid = cellsOf(
    footprint,
    [...earlier, ...troubles].map((record) => record.footprint),
  );
  const judged = grid.cells.map((cell) => judgeCell(cell, proposal, earlier, settings, troubles));
  const wide = openCells(
    grid,
    judged.map(({ cause }) => cause !== null),
    Math.min(settings.edgeWidthCm, footprint.widthCm),
    Math.min(settings.edgeWidthCm, footprint.lengthCm),
  );
  const wideArea = judged.reduce((sum, { cell }, at) => sum + (wide[at] ? areaCm2(cell) : 0), 0);
  const isShort = wideArea * 100 >= settings.edgeSharePercent * areaCm2(footprint) && wideArea > 0;
  const pieces = judged.map((one, at) => ({ ...one, verdict: verdictOf(one, isShort && wide[at] === true) }));
  return summary(pieces, season);
}

function judgeCell(
  cell: Footprint,
  { hostGroups, season }: Proposal,
  earlier: readonly RecordedPlanting[],
  settings: RotationSettings,
  troubles: readonly TroubleOnGround[],
): JudgedCell {
  const here = earlier.filter(({ footprint }) => liesIn(cell, footprint));
  const routine = hostGroups.map(
    (hostGroup): Wanted => ({
      hostGroup,
      hosts: [hostGroup],
      breakYears: routineBreak(settings, hostGroup),
      trouble: null,
    }),
  );
  const longer = troubles
    .filter(({ footprint }) => liesIn(cell, footprint))
    .map((trouble): Wanted => {
      const { hosts, breakYears } = trouble;
      return { hostGroup: hosts.find((host) => hostGroups.includes(host)) ?? '', hosts, breakYears, trouble };
    });
  const wanted = [...routine, ...longer];
  const causes = wanted.flatMap((one) => causeOf(one, here, season)).sort(latestFreeFirst);
  const unknown = new Set(wanted.flatMap((one) => seasonsOfBreak(one, season)));
  const missing = [...unknown]
    .filter((year) => !here.some(({ firstSeason, lastSeason }) => firstSeason <= year && lastSeason >= year))
    .sort((a, b) => a - b);
  return { cell, cause: causes[0] ?? null, missing };
}

// The last host within the break, or the trouble itself: where it was seen, a host must have stood.
function causeOf(wanted: Wanted, here: readonly RecordedPlanting[], season: Season): Cause[] {
  const { hosts, breakYears, trouble } = wanted;
  const [last] = here
    .filter(({ hostGroups }) => hostGroups.some((group) => hosts.includes(group)))
    .map((planting) => ({ planting, season: Math.min(planting.lastSeason, season - 1) }))
    .sort((a, b) => b.season - a.season || (a.planting.id < b.planting.id ? -1 : 1));
  const found = trouble && trouble.foundSeason > (last?.season ?? Number.NEGATIVE_INFINITY);
  const latest = found ? { planting: null, season: trouble.foundSeason } : last;
  if (!latest) return [];
  return breakYears === null || season - latest.season - 1 < breakYears ? [{ ...wanted, ...latest }] : [];
}

function latestFreeFirst(a: Cause, b: Cause): number {
  const free = ({ season, breakYears }: Cause) => season + (breakYears ?? Number.MAX_SAFE_INTEGER / 2);
  const name = ({ planting, trouble }: Cause) => `${trouble?.id ?? ''} ${planting?.id ?? ''}`;
  return free(b) - free(a) || (name(a) < name(b) ? -1 : 1);
}

// Of a trouble, only what came after it was found.
function seasonsOfBreak({ breakYears, trouble }: Wanted, season: Season): Season[] {
  if (breakYears === null) return [];
  const first = Math.max(season - breakYears, (trouble?.foundSeason ?? Number.NEGATIVE_INFINITY) + 1);
  return Array.from({ length: Math.max(0, season - first) }, (_, at) => first + at);
}

// An edge is no reason to fall short, since beds wander when they are dug; but unknown seasons stay unknown under it.
function verdictOf({ cause, missing }: JudgedCell, isShort: boolean): Verdict {
  if (cause && isShort) return 'short';
  return missing.length ? 'not-known' : 'kept';
}

function summary(pieces: readonly (JudgedCell & { verdict: Verdict })[], season: Season): Judgement {
  const sum = (verdict: Verdict) =>
    pieces.reduce((area, piece) => area + (piece.verdict === verdict ? areaCm2(piece.cell) : 0), 0);
  const areas = { keptCm2: sum('kept'), shortCm2: sum('short'), notKnownCm2: sum('not-known'), outsideCm2: 0 };
  const verdict = areas.shortCm2 > 0 ? 'short' : areas.notKnownCm2 > 0 ? 'not-known' : 'kept';
  return {
    verdict,
    areas,
    findings: findingsOf(pieces, season),
    pieces: pieces.map((piece) => ({ footprint: piece.cell, verdict: piece.verdict })),
  };
}

function findingsOf(pieces: readonly (JudgedCell & { verdict: Verdict })[], season: Season): Finding[] {
  const found = new Map<string, Finding>();
  const add = (key: string, finding: Finding, cell: Footprint) =>
    found.set(key, { ...finding, areaCm2: (found.get(key)?.areaCm2 ?? 0) + areaCm2(cell) });
  for (const { cell, cause, missing, verdict } of pieces) {
    if (cause) {
      const finding = hostFinding(cause, verdict, season);
      add(`${finding.code} ${cause.hostGroup} ${cause.trouble?.id} ${cause.planting?.id}`, finding, cell);
    }
    if (verdict === 'not-known')
      add(`not-known ${missing.join(' ')}`, { code: 'not-known', missing, areaCm2: 0 }, cell);
  }
  return [...found.entries()]
    .sort(([a, x], [b, y]) => y.areaCm2 - x.areaCm2 || (a < b ? -1 : 1))
    .map(([, finding]) => finding);
}

function hostFinding(cause: Cause, verdict: Verdict, season: Season): Finding {
  const { planting, trouble, hostGroup, season: last, breakYears } = cause;
  const clearYears = season - last - 1;
  return {
    code: verdict === 'short' ? 'short' : 'edge-only',
    hostGroup,
    cause: planting && { plantingId: planting.id, cropKey: planting.cropKey, season: last },
    trouble: trouble && { id: trouble.id, key: trouble.troubleKey, foundSeason: trouble.foundSeason },
    clearYears,
    breakYears,
    yearsShort: breakYears === null ? null : breakYears - clearYears,
    areaCm2: 0,
  };
}

function outsideTheRotation(footprint: Footprint): Judgement {
  const areas = { keptCm2: 0, shortCm2: 0, notKnownCm2: 0, outsideCm2: areaCm2(footprint) };
  return { verdict: 'outside', areas, findings: [], pieces: [{ footprint, verdict: 'outside' }] };
}

function routineBreak({ breakYears }: RotationSettings, hostGroup: string): number {
  return checked(breakYears[hostGroup] ?? 0);
}

function checked(years: number): number {
  if (!Number.isSafeInteger(years) || years < 0)
    throw new RangeError(`a break is a whole number of clear years: ${years}`);
  return years;
}
