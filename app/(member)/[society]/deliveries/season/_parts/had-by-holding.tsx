import { creditWords } from '@/app/_ui/delivery-words';
import { Table } from '@/app/_ui/table';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import type { SeasonPart } from '@/lib/usecases/season/season-paper';

type Credit = { readonly startMillionths: number; readonly endMillionths: number };

/** What each holding asked, was given and took, what it was charged, and its credit as the season began and ended. */
export function HadByHolding({ part, withNames }: { part: SeasonPart; withNames: boolean }) {
  const { holdings, materials, total } = part;
  const number = true;
  const creditCells = (credits: readonly Credit[]) =>
    credits.flatMap(({ startMillionths, endMillionths }) => [creditWords(startMillionths), creditWords(endMillionths)]);
  const cellsOf = (one: SeasonPart['total'] | SeasonPart['holdings'][number]) => [
    ...[one.asked, one.need, one.share, one.collected, one.givenUp],
    ...[one.chargedMinor, one.paidMinor, one.outstandingMinor].map(formatPounds),
  ];
  const lapsed = materials.map((material) => material.lapsed);
  const hasLapsed = lapsed.some(({ startMillionths, endMillionths }) => startMillionths !== 0 || endMillionths !== 0);
  const blanks = Array.from({ length: 8 }, () => '');
  return (
    <Table
      caption={`${part.unit === 'bale' ? 'Bales' : 'Loads'}, money and credits by holding`}
      columns={[
        { head: withNames ? 'plots and holders' : 'plots' },
        { head: 'asked', number },
        { head: 'need', number },
        { head: 'share', number },
        { head: 'collected', number },
        { head: 'given up', number },
        { head: 'charged', number },
        { head: 'paid', number },
        { head: 'outstanding', number },
        ...materials.flatMap(({ name }) => [
          { head: `${name}: credit at start`, number },
          { head: 'at end', number },
        ]),
      ]}
      rows={[
        ...holdings.map((one) => ({
          key: one.id,
          cells: [nameOf(one), ...cellsOf(one), ...creditCells(one.credits)],
        })),
        ...(hasLapsed ? [{ key: 'lapsed', cells: ['lapsed', ...blanks, ...creditCells(lapsed)] }] : []),
      ]}
      foot={['in all', ...cellsOf(total), ...materials.flatMap((_, at) => creditCells([sumOf(part, at)]))]}
    />
  );
}

function nameOf({ plots, names }: SeasonPart['holdings'][number]): string {
  const ground = plots.join(', ') || 'no plot in this season';
  return names?.length ? `${ground}: ${names.join(', ')}` : ground;
}

function sumOf({ holdings, materials }: SeasonPart, at: number): Credit {
  const all = [...holdings.map(({ credits }) => credits[at]), materials[at]?.lapsed];
  const sum = (key: keyof Credit) => all.reduce((total, credit) => total + (credit?.[key] ?? 0), 0);
  return { startMillionths: sum('startMillionths'), endMillionths: sum('endMillionths') };
}
