import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { besideFields } from '@/app/_server/form-action';
import { PageHead } from '@/app/_ui/sheet';
import { heapShapes } from '@/lib/usecases/measures/ask-heap';
import { type Measure, measures, readMeasures } from '@/lib/usecases/measures/read-measures';
import { BalesMeasure } from './_parts/bales';
import { BarrowMeasure } from './_parts/barrow';
import { BucketMeasure } from './_parts/bucket';
import { HeapMeasure } from './_parts/heap';
import { JarMeasure } from './_parts/jar';
import { UnitsMeasure } from './_parts/units';

export const metadata: Metadata = { title: 'Measures' };

const names: Readonly<Record<Measure, string>> = {
  heap: 'A heap',
  bales: 'Bales',
  bucket: 'Weighing by the bucket',
  barrow: 'A barrow',
  jar: 'A jar of meal',
  units: 'Feet, rods, pounds',
};

type Search = Readonly<Record<string, string | string[] | undefined>>;
type Props = { params: Promise<{ society: string }>; searchParams: Promise<Search> };

export default async function MeasuresPage({ params, searchParams }: Props) {
  const { society } = await params;
  const search = firstOfEach(await searchParams);
  const what = measures.find((one) => one === search.what) ?? 'heap';
  const typed = search.ask ? search : null;
  const read = await ask(readMeasures, society, { what, typed });
  const { asked } = read;
  const errors = asked.answer?.ok === false ? besideFields(asked.answer.refusals) : {};
  const common = { society, read, typed, errors };
  return (
    <>
      <PageHead title="Measures" lead="Heaps, bales, barrows and jars, reckoned from what you can see and weigh.">
        <nav className="seasons" aria-label="Measures">
          {measures.map((one) => (
            <Link key={one} href={`?what=${one}`} aria-current={one === what ? 'page' : undefined}>
              {names[one]}
            </Link>
          ))}
        </nav>
      </PageHead>
      {asked.what === 'heap' ? (
        <HeapMeasure
          {...common}
          answer={asked.answer}
          shape={heapShapes.find((one) => one === search.shape) ?? 'cone'}
        />
      ) : null}
      {asked.what === 'bales' ? <BalesMeasure {...common} answer={asked.answer} /> : null}
      {asked.what === 'bucket' ? <BucketMeasure {...common} answer={asked.answer} /> : null}
      {asked.what === 'barrow' ? <BarrowMeasure {...common} answer={asked.answer} /> : null}
      {asked.what === 'jar' ? <JarMeasure {...common} answer={asked.answer} /> : null}
      {asked.what === 'units' ? <UnitsMeasure {...common} answer={asked.answer} /> : null}
    </>
  );
}

// An address typed by hand may name a field twice.
function firstOfEach(search: Search): Record<string, string> {
  const named = Object.entries(search).map(([name, value]) => [name, Array.isArray(value) ? value[0] : value]);
  return Object.fromEntries(named.filter(([, value]) => value !== undefined));
}
