import type { CropGroup } from '@/lib/domain/catalogue/crop-groups';
import type { Footprint } from '@/lib/domain/ground/footprint';
import { hatchOf } from './hatches';
import { labelOf, markFits, type Placed } from './plan-geometry';

type Bed = Placed['beds'][number];

/**
 * The beds of one plot and what stands on them. A large site has thousands: what looks alike is one path, and how it looks
 * is the style sheet's.
 */
export function PlotBeds({ plot, unit }: { plot: Placed; unit: number }) {
  const { beds, transform, number, turnDeg } = plot;
  if (beds.length === 0) return null;
  const plantings = beds.flatMap((bed) => bed.plantings);
  const groups = [...new Set(plantings.map(({ cropGroup }) => cropGroup))];
  const ground = (group: CropGroup | null) => plantings.filter(({ cropGroup }) => cropGroup === group);
  const marked = (mark: string) => beds.filter((bed) => bed.mark === mark);
  const marks = [...new Set(beds.flatMap(({ mark }) => mark ?? []))];
  return (
    <g transform={transform}>
      <path className="bed" d={pathOf(beds)} />
      {groups.map((group) => (
        <path key={group} className="stand" d={pathOf(ground(group))} fill={hatchOf(group)} />
      ))}
      {beds.flatMap(namedGrounds).map((ground) => (
        <CropName key={ground.id} ground={ground} unit={unit} isOver={Math.abs(turnDeg) > 90} />
      ))}
      {marks.map((mark) => (
        <path key={mark} className={mark === 'turn due' ? 'mark due' : 'mark'} d={pathOf(marked(mark))} />
      ))}
      {beds.map((bed) =>
        bed.mark && markFits(bed, bed.mark, unit) ? (
          <text
            key={bed.id}
            className="mark-word"
            x={bed.footprint.xCm + unit * 0.3}
            y={bed.footprint.yCm + unit * 0.9}
          >
            {bed.mark}
          </text>
        ) : null,
      )}
      {beds.map((bed) =>
        bed.href ? (
          <a key={bed.id} href={bed.href} aria-label={wordsOf(number, bed)}>
            <path d={pathOf([bed])} />
          </a>
        ) : null,
      )}
    </g>
  );
}

function wordsOf(plotNumber: string, { name, plantings, mark }: Bed): string {
  const crops = plantings.flatMap(({ cropName }) => cropName || []).join(', ') || 'nothing recorded';
  return `Plot ${plotNumber}, bed ${name}: ${crops}${mark ? `, ${mark}` : ''}`;
}

function pathOf(grounds: readonly { readonly footprint: Footprint }[]): string {
  return grounds
    .map(({ footprint: { xCm, yCm, widthCm, lengthCm } }) => `M${xCm} ${yCm}h${widthCm}v${lengthCm}h${-widthCm}z`)
    .join('');
}

type Named = { readonly id: string; readonly footprint: Footprint; readonly cropName: string };

// Crops that share their ground share one label; where ground is doubly cropped in part, the later name stands.
function namedGrounds({ plantings }: Bed): Named[] {
  return plantings.flatMap((one, at) => {
    const later = plantings.slice(at + 1);
    if (later.some(({ footprint }) => middleLiesIn(one.footprint, footprint))) return [];
    const same = plantings.filter(({ footprint }) => isSame(footprint, one.footprint));
    const names = same.length > 1 ? same.map(({ cropName }) => cropName.split(',')[0]) : [one.cropName];
    return [{ id: one.id, footprint: one.footprint, cropName: names.filter(Boolean).join(' + ') }];
  });
}

function middleLiesIn(ground: Footprint, other: Footprint): boolean {
  const [x, y] = middleOf(ground);
  const { xCm, yCm, widthCm, lengthCm } = other;
  return x >= xCm && x <= xCm + widthCm && y >= yCm && y <= yCm + lengthCm;
}

function isSame(a: Footprint, b: Footprint): boolean {
  return a.xCm === b.xCm && a.yCm === b.yCm && a.widthCm === b.widthCm && a.lengthCm === b.lengthCm;
}

function middleOf({ xCm, yCm, widthCm, lengthCm }: Footprint): [number, number] {
  return [xCm + widthCm / 2, yCm + lengthCm / 2];
}

type CropNameProps = { ground: Named; unit: number; isOver: boolean };

function CropName({ ground: { footprint, cropName }, unit, isOver }: CropNameProps) {
  const label = cropName ? labelOf(cropName, footprint, unit * 0.95) : null;
  if (!label) return null;
  const [x, y] = middleOf(footprint);
  const turn = label.down ? 90 : isOver ? 180 : 0;
  return (
    <text
      className={sizes[Math.round((label.letterCm / unit / 0.95) * 100)] ?? 'crop'}
      x={x}
      y={y}
      {...(turn ? { transform: `rotate(${turn} ${x} ${y})` } : {})}
    >
      {label.word}
    </text>
  );
}

// The steps in which `labelOf` makes letters smaller, in percent.
const sizes: Readonly<Record<number, string>> = { 100: 'crop', 80: 'crop small', 62: 'crop tiny' };
