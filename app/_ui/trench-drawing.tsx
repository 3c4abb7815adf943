import { useId } from 'react';
import { formatLength, type Units } from '@/lib/domain/quantity/length';
import { formatShortLength } from '@/lib/domain/quantity/short-length';
import type { Drawing, Measure, Part } from '@/lib/domain/trench/drawing';
import { SoilHatches, soilFill, soilName } from './soil-hatches';
import { arrowPath, numbersFit, type Room, type TrenchView, viewOf, wordFits } from './trench-view';

type Props = {
  readonly drawing: Drawing;
  /** What it shows, for whoever does not see it. */
  readonly label: string;
  readonly units: Units;
  readonly room: Room;
  /** The trench in hand: marked, and in a section shown with its neighbours alone. */
  readonly hand: number | null;
  /** All that is drawn is shown, and not the trench in hand with its neighbours alone. */
  readonly whole?: boolean;
};

/**
 * The work seen from the side or from above, to scale: one drawing for the phone and for paper. Ground is told apart by
 * hatch and word, and by colour where there is any.
 */
export function TrenchDrawing({ drawing, label, units, room, hand, whole = false }: Props) {
  const id = useId().replaceAll(':', '');
  const isSection = drawing.surfaceCm !== null;
  const grow = room.grow ?? 1.4;
  const view = viewOf(drawing, room, isSection && !whole ? hand : null);
  const { box, letterCm } = view;
  return (
    <svg
      className="trench"
      viewBox={[box.xCm, box.yCm, box.widthCm, box.heightCm].map(short).join(' ')}
      role="img"
      aria-label={label}
      style={{
        maxWidth: `${(room.width * grow) / 16}rem`,
        maxHeight: `${(room.height * grow) / 16}rem`,
        fontSize: `${short(letterCm)}px`,
      }}
    >
      <SoilHatches kinds={view.kinds} size={letterCm} prefix={id} />
      <marker id={`${id}-head`} viewBox="0 0 10 10" refX="8" refY="5" markerWidth="5" markerHeight="5" orient="auto">
        <path d="M0 0L10 5L0 10Z" className="head" />
      </marker>
      {view.kinds.map((kind) => (
        <path
          key={kind}
          className={`part ${kind}`}
          d={rectangles(view.parts.filter((part) => part.kind === kind))}
          fill={soilFill(kind, id)}
        />
      ))}
      <HeapWord view={view} />
      {isSection ? <Surface view={view} surfaceCm={drawing.surfaceCm ?? 0} hand={hand} /> : null}
      {isSection ? null : <PlanNumbers view={view} hand={hand} />}
      {view.arrows.map((arrow) => (
        <path
          key={arrow.code}
          className="arrow"
          d={arrowPath(arrow, letterCm * (isSection ? 3.4 : 1.2))}
          markerEnd={`url(#${id}-head)`}
        />
      ))}
      {view.measures.map((measure) => (
        <MeasureDrawn key={measure.code} measure={measure} letterCm={letterCm} units={units} isSection={isSection} />
      ))}
    </svg>
  );
}

// All ground of a kind is one path: a third of the markup, and of the paper's file far less.
function rectangles(parts: readonly Part[]): string {
  return parts.map(({ xCm, yCm, widthCm, heightCm }) => `M${xCm} ${yCm}h${widthCm}v${heightCm}h${-widthCm}z`).join('');
}

function HeapWord({ view }: { view: TrenchView }) {
  const heap = view.parts.find(({ kind }) => kind === 'heap');
  if (!heap || !wordFits(soilName('heap'), heap, view.letterCm)) return null;
  return (
    <text className="word" x={short(heap.xCm + heap.widthCm / 2)} y={short(heap.yCm + heap.heightCm / 2)}>
      {soilName('heap')}
    </text>
  );
}

// The trenches' numbers stand over the highest ground; the level of the ground goes right across.
function Surface({ view, surfaceCm, hand }: { view: TrenchView; surfaceCm: number; hand: number | null }) {
  const { letterCm, parts } = view;
  const columns = new Map(parts.flatMap((part) => (part.trench === null ? [] : [[part.trench, part] as const])));
  const left = Math.min(...parts.map(({ xCm }) => xCm));
  const right = Math.max(...parts.map(({ xCm, widthCm }) => xCm + widthCm));
  const top = Math.min(...parts.map(({ yCm }) => yCm));
  return (
    <>
      <path className="surface" d={`M${left} ${surfaceCm}H${right}`} />
      {[...columns].map(([number, { xCm, widthCm }]) => (
        <text
          key={number}
          className={number === hand ? 'number hand' : 'number'}
          x={short(xCm + widthCm / 2)}
          y={short(top - 0.6 * letterCm)}
        >
          {number}
        </text>
      ))}
    </>
  );
}

function PlanNumbers({ view, hand }: { view: TrenchView; hand: number | null }) {
  const all = numbersFit(view);
  return view.parts.map((part) => {
    const { trench, xCm, yCm, widthCm, heightCm } = part;
    if (trench === null) return null;
    return (
      <g key={trench}>
        {trench === hand ? <rect className="in-hand" x={xCm} y={yCm} width={widthCm} height={heightCm} /> : null}
        {all || trench === hand ? (
          <text className="word" x={short(xCm + widthCm / 2)} y={short(yCm + heightCm / 2)}>
            {trench}
          </text>
        ) : null}
      </g>
    );
  });
}

type MeasureProps = { measure: Measure; letterCm: number; units: Units; isSection: boolean };

/** A length beside its line: across below what it measures, or down at its left; a rise at the right, above. */
function MeasureDrawn({ measure, letterCm, units, isSection }: MeasureProps) {
  const { from, to, lengthCm, code } = measure;
  const text = isSection ? shortWords(lengthCm, units) : formatLength(lengthCm, units);
  const gap = letterCm * 0.55;
  if (from.yCm === to.yCm) {
    const y = from.yCm + (isSection ? gap : -gap);
    return (
      <g className="measure">
        <path d={`M${from.xCm} ${short(y)}H${to.xCm}${ticks(from.xCm, y, gap)}${ticks(to.xCm, y, gap)}`} />
        <text x={short((from.xCm + to.xCm) / 2)} y={short(y + (isSection ? letterCm : -gap))}>
          {text}
        </text>
      </g>
    );
  }
  const isRight = code === 'rise' || code === 'finish-depth';
  const x = from.xCm + (isRight ? -gap : -gap);
  return (
    <g className={isRight ? 'measure over' : 'measure'}>
      <path
        d={`M${short(x)} ${from.yCm}V${to.yCm}M${short(x - gap / 2)} ${from.yCm}h${gap}M${short(x - gap / 2)} ${to.yCm}h${gap}`}
      />
      <text className="end" x={short(x - gap * 0.9)} y={short((from.yCm + to.yCm) / 2)}>
        {text}
      </text>
    </g>
  );
}

function ticks(x: number, y: number, gap: number): string {
  return `M${x} ${short(y - gap / 2)}v${short(gap)}`;
}

// A rise is of tenths; a spit is not.
function shortWords(lengthCm: number, units: Units): string {
  if (Number.isInteger(lengthCm)) return formatShortLength(lengthCm, units);
  return units === 'metric' ? `${lengthCm} cm` : `${(lengthCm / 2.54).toFixed(1)} in`;
}

// Markup in a third of the characters: a tenth of a millimetre is finer than any line.
function short(cm: number): number {
  return Math.round(cm * 100) / 100;
}
