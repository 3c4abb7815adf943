/** A part of the report. */
export type Section = {
  readonly title: string;
  readonly notes?: readonly string[];
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
};

/** A section in Markdown: its title, its table, and what wants saying about it. */
export function section({ title, notes = [], heads, rows }: Section): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  const table = [line(heads), `|${heads.map(() => '---').join('|')}|`, ...rows.map(line)];
  return [`## ${title}`, '', ...table, '', ...notes.flatMap((note) => [note, ''])].join('\n');
}

/** A number with so many decimals, its thousands told apart. */
export function figure(value: number, decimals = 0): string {
  return value.toLocaleString('en-GB', { minimumFractionDigits: decimals, maximumFractionDigits: decimals });
}

/** How many times one is the other. */
export function times(one: number, other: number): string {
  return other > 0 ? `${figure(one / other, 2)} ×` : 'n/a';
}
