import { Group } from '@visx/group';
import { type ReactNode, useId } from 'react';
import { type Column, Table } from './table';

/** What every chart is told. */
export type Told = {
  readonly title: string;
  /** The chart in a sentence: read aloud, and printed below the drawing. */
  readonly says: string;
  readonly unit: string;
};

/** The paper of a chart, in its own units: as many as a phone has pixels, so that its words keep their size. */
export const paper = { width: 360, left: 4, right: 20, axis: 34 } as const;
export const inner = paper.width - paper.left - paper.right;

type Props = {
  told: Told;
  height: number;
  figures: { columns: readonly Column[]; rows: readonly { key: string; cells: readonly ReactNode[] }[] };
  aside?: ReactNode;
  children: ReactNode;
};

/** A drawing with its title, its sentence, and the same in figures for whoever can't see it or wants to know exactly. */
export function Chart({ told: { title, says }, height, figures, aside, children }: Props) {
  const id = useId();
  return (
    <figure className="chart" aria-labelledby={id}>
      <figcaption>
        <strong id={id}>{title}</strong>
      </figcaption>
      {aside}
      <svg viewBox={`0 0 ${paper.width} ${height}`} role="img" aria-label={says}>
        <Group left={paper.left}>{children}</Group>
      </svg>
      <p className="chart-says" aria-hidden="true">
        {says}
      </p>
      <details className="no-print">
        <summary>The same in figures</summary>
        <Table caption={`${title}, in figures`} columns={figures.columns} rows={figures.rows} />
      </details>
    </figure>
  );
}
