import Link from 'next/link';
import { SelectField, TextField } from '@/app/_ui/field';
import { AskForm } from '@/app/_ui/form';
import { sourceWords } from '@/app/_ui/setting-words';
import { Caution, Sheet } from '@/app/_ui/sheet';
import { materialOf, materials } from '@/lib/domain/catalogue/materials';
import { citation } from '@/lib/domain/catalogue/sources';
import type { Heap } from '@/lib/domain/quantity/heap-volume';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import { type HeapAnswer, type HeapShape, heapShapes } from '@/lib/usecases/measures/ask-heap';
import { Answer } from './answer';
import { number, range } from './numbers';
import type { Tool } from './tool';

type Shape = { readonly name: string; readonly fields: readonly (readonly [name: string, label: string])[] };

const tops = [
  ['topLengthCm', 'Length of the top'],
  ['topWidthCm', 'Width of the top'],
] as const;

const shapes: Readonly<Record<HeapShape, Shape>> = {
  cone: {
    name: 'Pointed',
    fields: [
      ['acrossCm', 'Across at the foot'],
      ['roundCm', 'or all the way round it'],
      ['heightCm', 'Height'],
    ],
  },
  dome: {
    name: 'Rounded',
    fields: [
      ['lengthCm', 'Length'],
      ['widthCm', 'Width'],
      ['heightCm', 'Height'],
    ],
  },
  ridge: {
    name: 'Ridge',
    fields: [
      ['lengthCm', 'Length'],
      ['widthCm', 'Width'],
      ['heightCm', 'Height'],
    ],
  },
  'flat-topped': {
    name: 'Flat-topped',
    fields: [['lengthCm', 'Length of the foot'], ['widthCm', 'Width of the foot'], ...tops, ['heightCm', 'Height']],
  },
  box: {
    name: 'Bay or level trailer',
    fields: [
      ['lengthCm', 'Length inside'],
      ['widthCm', 'Width inside'],
      ['heightCm', 'Depth'],
    ],
  },
  trailer: {
    name: 'Heaped trailer',
    fields: [
      ['lengthCm', 'Length inside'],
      ['widthCm', 'Width inside'],
      ['sidesCm', 'Height of the sides'],
      ...tops,
      ['heightCm', 'How high it stands over the sides'],
    ],
  },
};

/** A heap of a given shape in litres and barrow-loads. */
export function HeapMeasure({ read, answer, typed, errors, shape }: Tool<'heap'> & { shape: HeapShape }) {
  const { units, barrows } = read;
  return (
    <>
      <div className="stack">
        <Sheet title="A heap in barrow-loads">
          <nav className="seasons" aria-label="Shape of the heap">
            {heapShapes.map((one) => (
              <Link key={one} href={`?what=heap&shape=${one}`} aria-current={one === shape ? 'page' : undefined}>
                {shapes[one].name}
              </Link>
            ))}
          </nav>
          <AskForm
            values={typed}
            errors={errors}
            submit="How much is it?"
            labels={Object.fromEntries(shapes[shape].fields)}
          >
            <input type="hidden" name="what" value="heap" />
            <input type="hidden" name="shape" value={shape} />
            <input type="hidden" name="ask" value="yes" />
            <div className="fills">
              {shapes[shape].fields.map(([name, label]) => (
                <TextField
                  key={name}
                  name={name}
                  label={label}
                  {...(name === 'roundCm' ? { hint: 'by a tape' } : {})}
                  {...(name === 'topWidthCm' ? { hint: '0 for an edge' } : {})}
                />
              ))}
            </div>
            <SelectField
              name="material"
              label="What it is"
              empty="not said"
              hint="Say it for a weight."
              choices={materials.map(({ key, name }) => ({ value: key, label: name }))}
            />
            <p className="small soft">
              Lengths {units === 'metric' ? 'such as 3.6 m or 360 cm' : 'such as 12 ft 6 in'}. The society’s barrow-load
              is {barrows.society} L.
            </p>
          </AskForm>
        </Sheet>
      </div>
      {answer?.ok ? <Found found={answer.value} read={read} /> : null}
    </>
  );
}

function Found({ found, read: { barrows, units } }: { found: HeapAnswer; read: Tool<'heap'>['read'] }) {
  const { litres, loads, ownLoads, material, heap, roundCm } = found;
  const mass = (densityGPerL: number) => formatMassIn(litres * densityGPerL, units);
  const heavy = materialOf('mixed-manure');
  return (
    <Answer
      title={`About ${loads.toLocaleString('en-GB')} barrow-${loads === 1 ? 'load' : 'loads'}`}
      why={
        <>
          {roundCm === null ? null : (
            <p>
              {number(roundCm)} cm round ÷ π = {number(heap.kind === 'cone' ? heap.acrossCm : 0)} cm across. (
              {citation('alberta-manure')})
            </p>
          )}
          <p>
            {arithmetic(heap)} ÷ 1,000 = {number(litres)} litres.
          </p>
          <p>
            {number(litres)} ÷ {barrows.society} L a barrow-load = {number(litres / barrows.society, 1)}, rounded down:
            a load that is not there cannot be promised.
          </p>
          <p className="small">Solid geometry, in centimetres. No heap is so even, so it is an estimate.</p>
          {material ? (
            <p className="small">
              {material.name}: {material.densityGPerL} g/L, published from {material.leastGPerL} to {material.mostGPerL}
              . Source: {sourceWords(material.source)}. A bucket test says what yours weighs.
            </p>
          ) : null}
        </>
      }
    >
      <p>
        <strong>{number(litres)} litres</strong>, {number(litres / 1000, 2)} m³.
        {ownLoads === null ? '' : ` Of your own barrow of ${barrows.own} L: ${number(ownLoads)}.`}
      </p>
      {material ? (
        <p>
          About {mass(material.densityGPerL)} of {material.name.toLowerCase()}:{' '}
          {range(mass(material.leastGPerL), mass(material.mostGPerL))} as sources go.
        </p>
      ) : null}
      <Caution>
        A barrow-load of manure weighs from {formatMassIn(barrows.society * (heavy?.leastGPerL ?? 0), units)} to{' '}
        {formatMassIn(barrows.society * (heavy?.mostGPerL ?? 0), units)}. Take half-loads where a full one strains you,
        and wear gloves.
      </Caution>
    </Answer>
  );
}

function arithmetic(heap: Heap): string {
  const cm = (value: number) => number(value, 1);
  if (heap.kind === 'cone') return `π ÷ 12 × ${cm(heap.acrossCm)} × ${cm(heap.acrossCm)} × ${cm(heap.heightCm)}`;
  const [l, w, h] = [heap.lengthCm, heap.widthCm, heap.heightCm].map(cm);
  if (heap.kind === 'dome') return `π ÷ 6 × ${l} × ${w} × ${h}`;
  if (heap.kind === 'box') return `${l} × ${w} × ${h}`;
  if (heap.kind === 'ridge') return `((${l} − ${w}) × ${w} × ${h} ÷ 2 + π ÷ 12 × ${w} × ${w} × ${h})`;
  const [tl, tw] = [heap.topLengthCm, heap.topWidthCm].map(cm);
  const over = `${h} ÷ 6 × (${l} × ${w} + ${tl} × ${tw} + (${l} + ${tl}) × (${w} + ${tw}))`;
  return heap.kind === 'trailer' ? `(${l} × ${w} × ${cm(heap.sidesCm)} + ${over})` : over;
}
