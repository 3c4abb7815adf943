import 'server-only';
import { createMembers } from '@/lib/data/member';
import { createPlots, numbersTaken, siteById } from '@/lib/data/plot-store';
import { beginTenancies, createHoldings } from '@/lib/data/tenancy';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { areaOfQuarterRodsCm2 } from '@/lib/domain/quantity/area';
import { importPlotsInput } from '@/lib/schemas/plots/import-plots';
import { type PlotRow, readPlotsCsv } from '@/lib/schemas/plots/plots-csv';
import { wordsForFault } from '../csv-faults';
import { mutation, type WriteContext } from '../operation';
import { NotFound, Refused } from '../refusal';

/** Take in the list of plots and their holders: all of it, or none with every bad cell named. The plan is drawn later. */
export const importPlots = mutation({
  name: 'import-plots',
  allow: canRunSociety,
  input: importPlotsInput,
  write: async (context, { siteId, table, from }) => {
    const { tx, scope, today, note } = context;
    if (!(await siteById(tx, scope, siteId))) throw new NotFound();
    const { rows, faults } = readPlotsCsv(table);
    const taken = new Set(
      (
        await numbersTaken(
          tx,
          scope,
          siteId,
          rows.map(({ number }) => number),
        )
      ).map((number) => number.toLowerCase()),
    );
    const all = [
      ...faults,
      ...rows
        .filter(({ number }) => taken.has(number.toLowerCase()))
        .map(({ line, number }) => ({ line, column: 'plot', reason: `Plot ${number} is there already.` })),
    ];
    if (all.length)
      throw new Refused([
        { code: 'csv-faults', numbers: { count: all.length } },
        ...all.slice(0, 50).map(wordsForFault),
      ]);
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
