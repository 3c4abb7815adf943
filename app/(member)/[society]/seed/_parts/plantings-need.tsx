import { Mark } from '@/app/_ui/mark';
import { seedAmountWords, seedMassWords } from '@/app/_ui/seed-words';
import { sourceWords } from '@/app/_ui/setting-words';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { formatLength, type Units } from '@/lib/domain/quantity/length';
import type { SourceKey } from '@/lib/domain/catalogue/sources';
import type { readSeed } from '@/lib/usecases/seed/read-seed';
import { SowingForm } from './sowing-form';

type Read = Awaited<ReturnType<typeof readSeed.run>>;
type Line = Read['plantings'][number];
type Need = NonNullable<Line['need']>;

/** What each planting of the season takes: plants, seeds and grams, each with where it comes from. */
export function PlantingsNeed({ society, read: { plantings, units } }: { society: string; read: Read }) {
  return (
    <Sheet title="What each planting takes" wide>
      <ul className="plain-list">
        {plantings.map((line) => (
          <li key={line.id} className="ruled">
            <p>
              <strong>{line.cropName}</strong>
              {line.variety ? ` “${line.variety}”` : ''}{' '}
              <span className="soft">
                plot {line.plotNumber}, bed {line.bedNames.join(', ')}: {formatLength(line.footprint.widthCm, units)} ×{' '}
                {formatLength(line.footprint.lengthCm, units)}
              </span>
            </p>
            <Takes line={line} units={units} />
            <Reason ask={line.need ? 'Sow it another way' : 'Give your own distances'}>
              <SowingForm units={units} society={society} line={line} />
            </Reason>
          </li>
        ))}
      </ul>
    </Sheet>
  );
}

function Takes({ line: { need, isInGround }, units }: { line: Line; units: Units }) {
  if (isInGround) return <p className="soft">In the ground already: nothing to order for it.</p>;
  if (!need)
    return (
      <p>
        <Mark kind="not-known">no distances</Mark> Nobody prints how far apart it stands, so no seed is worked out.
      </p>
    );
  return (
    <>
      <p>
        {need.plants.toLocaleString('en-GB')} {need.plants === 1 ? 'plant' : 'plants'}:{' '}
        <b>{need.from === 'sets' ? seedAmountWords('sets', need.sets) : seedAmountWords('seeds', need.seeds)}</b>
        {need.from === 'seed' && need.mass ? `, about ${seedMassWords(need.mass)}` : ''}
        {need.from === 'seed' && need.mass?.isDoubtful ? (
          <>
            {' '}
            <Mark kind="not-known">weight doubtful</Mark>
          </>
        ) : null}
      </p>
      <Reason ask={`Why ${(need.from === 'sets' ? need.sets : need.seeds).toLocaleString('en-GB')}?`}>
        <Why need={need} units={units} />
      </Reason>
    </>
  );
}

function Why({ need, units }: { need: Need; units: Units }) {
  const { rows, inRow, apart, apartSource } = need;
  return (
    <ul>
      <li>
        {rows} {rows === 1 ? 'row' : 'rows'} of {inRow}, along the longer side: {formatLength(apart.rowsCm, units)}{' '}
        between rows, {formatLength(apart.inRowCm, units)} in the row; half of each is left at the edges. (
        {saidBy(apartSource)})
      </li>
      {need.from === 'sets' ? <li>One set, clove or tuber for each plant.</li> : <SeedWhy need={need} />}
    </ul>
  );
}

function SeedWhy({ need }: { need: Extract<Need, { from: 'seed' }> }) {
  const { germinationPercent, germinationSource, marginPercent, mass } = need;
  return (
    <>
      <li>
        {germinationPercent} of 100 are reckoned to come up
        {germinationSource === 'own' ? '' : ', the least that it may be sold with'}. ({saidBy(germinationSource)})
      </li>
      <li>{marginPercent} % more for slugs, gaps and thinning.</li>
      {mass ? (
        <li>
          {seedMassWords(mass)}
          {mass.leastMg < mass.mostMg
            ? `; from ${seedMassWords({ massMg: mass.leastMg })} to ${seedMassWords({ massMg: mass.mostMg })} by other accounts`
            : ''}
          . Seed differs much in weight
          {mass.isDoubtful ? ', and here the accounts do too: count rather than weigh' : ''}. ({saidBy(mass.source)})
        </li>
      ) : (
        <li>Nobody has weighed its seed, so there are no grams.</li>
      )}
    </>
  );
}

function saidBy(source: SourceKey | 'own'): string {
  return source === 'own' ? 'yours' : sourceWords(source);
}
