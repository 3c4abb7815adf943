import { cropGroupName, cropGroups } from '@/lib/domain/catalogue/crop-groups';
import type { CropGroup } from '@/lib/domain/catalogue/crop-groups';
import { formatArea, percent } from '@/lib/domain/quantity/area';
import type { Units } from '@/lib/domain/quantity/length';
import { Mark, type MarkKind } from './mark';
import { Table } from './table';

export type Areas = {
  readonly keptCm2: number;
  readonly shortCm2: number;
  readonly notKnownCm2: number;
  readonly outsideCm2: number;
  readonly bareCm2: number;
};

const parts: readonly { key: keyof Areas; kind: MarkKind; look: string }[] = [
  { key: 'keptCm2', kind: 'kept', look: 'bar-kept' },
  { key: 'shortCm2', kind: 'short', look: 'bar-short' },
  { key: 'notKnownCm2', kind: 'not-known', look: 'bar-unknown' },
  { key: 'outsideCm2', kind: 'outside', look: 'bar-outside' },
  { key: 'bareCm2', kind: 'bare', look: 'bar-bare' },
];

function whole(areas: Areas): number {
  return parts.reduce((sum, { key }) => sum + areas[key], 0);
}

/** The five areas as one bar; the table beside it says the same in figures. */
export function ComplianceBar({ areas }: { areas: Areas }) {
  const total = whole(areas) || 1;
  return (
    <div className="bar" aria-hidden="true">
      {parts.map(({ key, look }) =>
        areas[key] ? <span key={key} className={look} style={{ width: `${(areas[key] / total) * 100}%` }} /> : null,
      )}
    </div>
  );
}

/** The five areas in figures; they add up to the cultivable area. */
export function ComplianceTable({ areas, units }: { areas: Areas; units: Units }) {
  const total = whole(areas);
  return (
    <Table
      caption="Kept, short, not known, outside the rotation, bare"
      columns={[{ head: '' }, { head: 'area', number: true }, { head: 'of all', number: true }]}
      rows={parts.map(({ key, kind }) => ({
        key,
        cells: [<Mark key="mark" kind={kind} />, formatArea(areas[key], units), percent(areas[key], total)],
      }))}
      foot={['cultivable', formatArea(total, units), '']}
    />
  );
}

/** By crop group: what of its ground is kept, short and not known. */
export function ComplianceByGroup({
  groups,
  units,
}: {
  groups: readonly { cropGroup: CropGroup; areas: Areas }[];
  units: Units;
}) {
  const order = cropGroups.map(({ key }) => key);
  const rows = groups
    .filter(({ cropGroup }) => cropGroup !== 'standing')
    .toSorted((a, b) => order.indexOf(a.cropGroup) - order.indexOf(b.cropGroup));
  return (
    <Table
      caption="Compliance by crop group"
      columns={[
        { head: 'group' },
        { head: 'kept', number: true },
        { head: 'short', number: true },
        { head: 'not known', number: true },
        { head: 'ground', number: true },
      ]}
      rows={rows.map(({ cropGroup, areas }) => ({
        key: cropGroup,
        cells: [
          <div key="name" style={{ minWidth: '9rem' }}>
            {cropGroupName(cropGroup)}
            <ComplianceBar areas={areas} />
          </div>,
          percent(areas.keptCm2, whole(areas)),
          percent(areas.shortCm2, whole(areas)),
          percent(areas.notKnownCm2, whole(areas)),
          formatArea(whole(areas), units),
        ],
      }))}
    />
  );
}

/** The whole site, season by season. */
export function Trend({ seasons, thisYear }: { seasons: readonly { year: number; total: Areas }[]; thisYear: number }) {
  return (
    <Table
      caption="Season by season"
      columns={[
        { head: 'season' },
        { head: '' },
        { head: 'kept', number: true },
        { head: 'short', number: true },
        { head: 'not known', number: true },
      ]}
      rows={seasons.map(({ year, total }) => ({
        key: String(year),
        cells: [
          `${year}${year > thisYear ? ', planned' : ''}`,
          <div key="bar" style={{ minWidth: '7rem' }}>
            <ComplianceBar areas={total} />
          </div>,
          percent(total.keptCm2, whole(total)),
          percent(total.shortCm2, whole(total)),
          percent(total.notKnownCm2, whole(total)),
        ],
      }))}
    />
  );
}

/** By plot, as plots are counted: the five areas of each. */
export function ComplianceByPlot({
  plots,
  units,
}: {
  plots: readonly { id: string; number: string; areas: Areas }[];
  units: Units;
}) {
  return (
    <Table
      caption="Compliance by plot"
      columns={[
        { head: 'plot' },
        { head: 'kept', number: true },
        { head: 'short', number: true },
        { head: 'not known', number: true },
        { head: 'outside', number: true },
        { head: 'bare', number: true },
      ]}
      rows={plots.map(({ id, number, areas }) => ({
        key: id,
        cells: [number, ...parts.map(({ key }) => (areas[key] ? formatArea(areas[key], units) : '–'))],
      }))}
    />
  );
}
