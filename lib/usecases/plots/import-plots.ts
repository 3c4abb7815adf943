import 'server-only';
import type { Db } from '@/lib/data/db';
import { createMembers } from '@/lib/data/member';
import { createPlots, numbersTaken, siteById } from '@/lib/data/plot-store';
import type { Scope } from '@/lib/data/scope';
import { beginTenancies, createHoldings } from '@/lib/data/tenancy';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { areaOfQuarterRodsCm2 } from '@/lib/domain/quantity/area';
import { importPlotsInput, lookAtPlotsInput } from '@/lib/schemas/plots/import-plots';
import { type PlotRow, readPlotsCsv } from '@/lib/schemas/plots/plots-csv';
import { refuseFaults } from '../csv-faults';
import { mutation, query, settle, type WriteContext } from '../operation';
import { NotFound } from '../refusal';

type At = { readonly db: Db; readonly scope: Scope };

/** What a list of plots and holders would take in on a site; every bad cell named where it can't. */
async function readTable({ db, scope }: At, siteId: string, table: string): Promise<PlotRow[]> {
  if (!(await siteById(db, scope, siteId))) throw new NotFound();
  const { rows, faults } = readPlotsCsv(table);
  const numbers = rows.map(({ number }) => number);
  const taken = new Set((await numbersTaken(db, scope, siteId, numbers)).map((number) => number.toLowerCase()));
  const there = rows
    .filter(({ number }) => taken.has(number.toLowerCase()))
    .map(({ line, number }) => ({ line, column: 'plot', reason: `Plot ${number} is there already.` }));
  refuseFaults('csv-faults', [...faults, ...there]);
  return rows;
}

/** Look at a list of plots and holders without taking it in: what each line says, or every bad cell. */
export const lookAtPlots = query({
  name: 'look-at-plots',
  allow: canRunSociety,
  input: lookAtPlotsInput,
  read: (at, { siteId, table }) => settle(() => readTable(at, siteId, table)),
});

/** Take in the list of plots and their holders: all of it, or none with every bad cell named. The plan is drawn later. */
export const importPlots = mutation({
  name: 'import-plots',
  allow: canRunSociety,
  input: importPlotsInput,
  write: async (context, { siteId, table, from }) => {
    const { tx, scope, today, note } = context;
    const rows = await readTable({ db: tx, scope }, siteId, table);
    const plots = rows.map(({ number, quarterRods }) => ({
      siteId,
      number,
      quarterRods,
      fromOn: from,
      polygon: null,
      frame: null,
      areaCm2: areaOfQuarterRodsCm2(quarterRods),
    }));
    const plotIds = await createPlots(tx, scope, plots);
    const members = await letAll(context, rows, plotIds, from);
    note({ verb: 'imported', thing: 'plot', thingId: null, after: { plots: rows.length, members } });
    return { plots: rows.length, members, today };
  },
});

// A person who stands on several lines with the same name and address is one member, and plots with the same holders one holding.
async function letAll(
  { tx, scope }: WriteContext,
  rows: readonly PlotRow[],
  plotIds: readonly string[],
  from: PlotRow['fromOn'] & string,
): Promise<number> {
  const keyOf = ({ name, email }: PlotRow['holders'][number]) => `${name.toLowerCase()} ${email ?? ''}`;
  const people = [...new Map(rows.flatMap(({ holders }) => holders.map((holder) => [keyOf(holder), holder] as const)))];
  const ids = await createMembers(
    tx,
    scope,
    people.map(([, person]) => person),
    from,
  );
  const idOf = new Map(people.map(([key], at) => [key, ids[at] ?? '']));
  const households = new Map<
    string,
    { memberIds: string[]; fromOn: typeof from; lettings: { plotId: string; fromOn: typeof from }[] }
  >();
  for (const [at, { holders, fromOn }] of rows.entries()) {
    if (holders.length === 0) continue;
    const memberIds = holders.map((holder) => idOf.get(keyOf(holder)) ?? '');
    const key = memberIds.toSorted().join();
    const begun = fromOn ?? from;
    const household = households.get(key) ?? { memberIds: [...new Set(memberIds)], fromOn: begun, lettings: [] };
    household.lettings.push({ plotId: plotIds[at] ?? '', fromOn: begun });
    households.set(key, { ...household, fromOn: begun < household.fromOn ? begun : household.fromOn });
  }
  const all = [...households.values()];
  const holdingIds = await createHoldings(tx, scope, all);
  await beginTenancies(
    tx,
    scope,
    all.flatMap(({ lettings }, at) => lettings.map((letting) => ({ ...letting, holdingId: holdingIds[at] ?? '' }))),
  );
  return ids.length;
}
