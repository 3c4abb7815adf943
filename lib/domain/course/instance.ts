/** What may stand on a bed in one season: a crop, a crop group whose crop is settled later, or nothing planned. */
export type CourseOption = {
  readonly key: string;
  /** Host groups; none: it fits anywhere. */
  readonly hosts: readonly string[];
  readonly takesManure: boolean;
};

/** The key of ground that is left open: nothing is planned there. */
export const openKey = 'open';

/**
 * A break that is wanted on some ground of a bed: a host group's own on all of it, or a trouble's where it was found.
 * An option is under it when it shares a host group with it.
 */
export type CourseBreak = {
  readonly key: string;
  readonly hosts: readonly string[];
  /** Clear years; null: no break clears it. */
  readonly breakYears: number | null;
  /** How heavily each square centimetre that falls short weighs; integer ≥ 1. */
  readonly weight: number;
  /** The ground it holds for [cm²]. */
  readonly areaCm2: number;
  /** By year: what would fall short for what stood there before the plan [cm²], ≤ areaCm2. */
  readonly historyCm2: readonly number[];
};

/** Something that speaks against an option on a bed in a year, whatever else is planned: fresh manure under roots. */
export type CourseAdvice = {
  readonly rule: string;
  readonly year: number;
  readonly option: string;
  readonly areaCm2: number;
};

export type CourseBed = {
  readonly id: string;
  readonly areaCm2: number;
  readonly breaks: readonly CourseBreak[];
  readonly advice: readonly CourseAdvice[];
  /** What stood on most of it in the season before the plan; null where that is not known or none of the options. */
  readonly before: string | null;
  /** Years before the plan’s first season that it was last manured for; 0: for the first itself; null: none on record. */
  readonly manuredYearsAgo: number | null;
  /** By year: what must stand there; null: free. */
  readonly fixed: readonly (string | null)[];
  /** By year: what would rather stand there. */
  readonly rather: readonly (string | null)[];
  /** By year: what is on the board already. */
  readonly board: readonly (string | null)[];
};

/** A holding's question: what stands on each of its beds in each of the coming years? */
export type CourseInstance = {
  readonly years: number;
  /** With the open one among them. */
  readonly options: readonly CourseOption[];
  readonly beds: readonly CourseBed[];
  /** Wanted of an option in each year [cm²]. */
  readonly wanted: readonly { readonly option: string; readonly areaCm2: number }[];
  /** The order in which options should follow each other on a bed, the last by the first again. */
  readonly order: readonly string[];
  /** An option that should follow one of some others, such as brassicas after legumes. */
  readonly follows: readonly { readonly rule: string; readonly option: string; readonly after: readonly string[] }[];
  readonly manuringIntervalYears: number;
  /** Whether the turns are to be evened out over the years. */
  readonly evenTurns: boolean;
};

/** By bed, in the order of the instance, the option of each year. */
export type CoursePlan = readonly (readonly string[])[];

/** How heavily a rule that only advises weighs on each square centimetre. */
export const adviceWeight = 1;

/** Whether an option is under a break. */
export function isUnder(option: CourseOption, { hosts }: CourseBreak): boolean {
  return option.hosts.some((host) => hosts.includes(host));
}

/** Whether two years of a plan lie within a break: 0 and 3 with a break of 3 do, 0 and 4 don't. */
export function isWithin({ breakYears }: CourseBreak, earlier: number, later: number): boolean {
  return breakYears === null || later - earlier - 1 < breakYears;
}

/**
 * Refuse an instance that makes no sense.
 *
 * @throws RangeError on years outside 1 to 6, a repeated or unknown option, a row of another length, or a negative area
 */
export function checkInstance(instance: CourseInstance): void {
  const { years, options, beds, wanted, order, follows } = instance;
  const fail = (why: string): never => {
    throw new RangeError(why);
  };
  if (!Number.isSafeInteger(years) || years < 1 || years > 6) fail(`a course runs over 1 to 6 years: ${years}`);
  const keys = new Set(options.map(({ key }) => key));
  if (keys.size !== options.length) fail('an option is given twice');
  if (!keys.has(openKey)) fail('ground may always be left open');
  const known = (key: string | null) => key === null || keys.has(key) || fail(`no such option: ${key}`);
  for (const bed of beds) {
    for (const row of [bed.fixed, bed.rather, bed.board]) {
      if (row.length !== years) fail('a row of a bed has one entry a year');
      row.forEach(known);
    }
    known(bed.before);
    for (const one of bed.breaks)
      if (one.historyCm2.length !== years || one.historyCm2.some((cm2) => cm2 < 0 || cm2 > one.areaCm2))
        fail('history falls short on no more than its ground');
  }
  for (const key of [...order, ...wanted.map(({ option }) => option), ...follows.map(({ option }) => option)])
    known(key);
}
