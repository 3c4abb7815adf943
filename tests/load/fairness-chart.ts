/** Credits after each delivery, in loads. */
export type CreditRun = {
  readonly title: string;
  readonly lines: readonly { readonly name: string; readonly loads: readonly number[] }[];
  /** A bound that is drawn where it lies on the sheet, and written above it where it lies beyond. */
  readonly bound: { readonly words: string; readonly loads: number };
};

const panel = { left: 64, width: 640, height: 190, gap: 76 };
const top = 34;
/** Told apart without colour. */
const dashes = ['', '7 4', '2 4'];

/**
 * Runs beneath each other on one scale: deliveries to the right, loads upwards; black on white, each line named at its end.
 */
export function fairnessChart(runs: readonly CreditRun[]): string {
  const all = runs.flatMap(({ lines }) => lines.flatMap(({ loads }) => loads));
  // A little air above the highest line and above a bound of one load.
  const most = 1.12 * Math.max(1, ...all);
  const height = top + runs.length * (panel.height + panel.gap);
  const panels = runs.map((run, at) => panelOf(run, top + at * (panel.height + panel.gap), most));
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 860 ${height}" width="860" height="${height}" role="img" aria-labelledby="title" font-family="sans-serif" font-size="12">`,
    `<title id="title">${escaped(`Credits after each delivery, in loads: ${runs.map(({ title }) => title).join('; ')}`)}</title>`,
    `<rect width="860" height="${height}" fill="#fff"/>`,
    ...panels,
    '</svg>\n',
  ].join('\n');
}

function panelOf({ title, lines, bound }: CreditRun, y: number, most: number): string {
  const count = Math.max(...lines.map(({ loads }) => loads.length));
  const x = (delivery: number) => tenth(panel.left + ((delivery - 1) / Math.max(1, count - 1)) * panel.width);
  const up = (loads: number) => tenth(y + panel.height * (1 - loads / most));
  const [right, foot] = [panel.left + panel.width, y + panel.height];
  return [
    `<text x="${panel.left}" y="${y - 12}" font-size="14" font-weight="bold">${escaped(title)}</text>`,
    ...ticks(most, 0.5).map((loads) => levelOf(loads, up(loads), right)),
    ...ticks(count, 20).map((at) => text(x(Math.max(1, at)), foot + 17, String(Math.max(1, at)), 'middle')),
    text(panel.left + panel.width / 2, foot + 34, 'delivery', 'middle'),
    `<text transform="translate(18 ${y + panel.height / 2}) rotate(-90)" text-anchor="middle">credit owed or owing, loads</text>`,
    `<path d="M${panel.left} ${y}V${foot}H${right}" fill="none" stroke="#000"/>`,
    boundOf(bound, most, up, y, right),
    ...lines.map(({ loads }, at) => lineOf(loads, at, x, up)),
    ...namesOf(lines, up, right),
  ].join('\n');
}

function levelOf(loads: number, y: number, right: number): string {
  const rule = `<path d="M${panel.left} ${y}H${right}" stroke="#bbb" stroke-width="0.5"/>`;
  return `${rule}${text(panel.left - 8, y + 4, loads.toFixed(1), 'end')}`;
}

function boundOf(
  { words, loads }: CreditRun['bound'],
  most: number,
  up: (loads: number) => number,
  y: number,
  right: number,
) {
  if (loads > most) return text(right - 6, y - 12, `↑ ${words}`, 'end');
  return `<path d="M${panel.left} ${up(loads)}H${right}" stroke="#000" stroke-width="2.5"/>${text(right - 6, up(loads) - 6, words, 'end')}`;
}

function lineOf(
  loads: readonly number[],
  at: number,
  x: (delivery: number) => number,
  up: (loads: number) => number,
): string {
  const points = loads.map((value, delivery) => `${x(delivery + 1)},${up(value)}`).join(' ');
  const dash = dashes[at] ? ` stroke-dasharray="${dashes[at]}"` : '';
  return `<polyline points="${points}" fill="none" stroke="#000" stroke-width="1.4"${dash}/>`;
}

// At the end of each line, a line of letters apart.
function namesOf(lines: CreditRun['lines'], up: (loads: number) => number, right: number): string[] {
  let lowest = Number.NEGATIVE_INFINITY;
  return lines
    .map(({ name, loads }) => ({ name, y: up(loads.at(-1) ?? 0) + 4 }))
    .sort((one, other) => one.y - other.y)
    .map(({ name, y }) => {
      lowest = Math.max(y, lowest + 15);
      return text(right + 8, tenth(lowest), name, 'start');
    });
}

function ticks(most: number, step: number): number[] {
  return Array.from({ length: Math.floor(most / step) + 1 }, (_, at) => at * step);
}

function text(x: number, y: number, words: string, anchor: 'start' | 'middle' | 'end'): string {
  return `<text x="${x}" y="${y}" text-anchor="${anchor}">${escaped(words)}</text>`;
}

function escaped(words: string): string {
  return words.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}
