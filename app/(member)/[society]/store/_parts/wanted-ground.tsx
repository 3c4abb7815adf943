import Link from 'next/link';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { cropOf } from '@/lib/domain/catalogue/crops';
import { formatArea } from '@/lib/domain/quantity/area';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import type { readKind } from '@/lib/usecases/store/read-kind';

type Read = Awaited<ReturnType<typeof readKind.run>>;

/** How much to put in next time, and on how much ground to grow it; and the way to the planner with it. */
export function WantedGround({ society, read }: { society: string; read: Read }) {
  const { wanted, units, forecast } = read;
  if (!forecast) return null;
  return (
    <Sheet title="For next year">
      {wanted === null ? (
        <p>
          Say how many you use a week and when the new crop comes: then how much to put in, and to grow, stands here.
        </p>
      ) : wanted.code === 'does-not-keep-so-long' ? (
        <p>
          It does not keep so long: after {wanted.days} days only {wanted.soundPermille / 10} % of a middling lot is
          sound. More ground would not help; grow a kind that keeps longer, or eat it sooner.
        </p>
      ) : (
        <Wanted society={society} wanted={wanted} units={units} holdingId={forecast.holdingId} />
      )}
    </Sheet>
  );
}

type Found = Extract<NonNullable<Read['wanted']>, { code: 'wanted' }>;
type WantedProps = { society: string; wanted: Found; units: Read['units']; holdingId: string };

function Wanted({ society, wanted, units, holdingId }: WantedProps) {
  const { massG, areaCm2, days, cropKey, pieceG, yields } = wanted;
  const mass = (grams: number) => formatMassIn(Math.round(grams), units);
  const area = (cm2: number) => formatArea(cm2, units);
  return (
    <>
      <p>
        To last {days} days from when it is put in till the crop after: {mass(massG.least)} to {mass(massG.most)}, about{' '}
        <strong>{mass(massG.median)}</strong>.
      </p>
      {areaCm2 && cropKey ? (
        <>
          <p>
            By what your ground has yielded, that is {area(areaCm2.least)} to {area(areaCm2.most)}, about{' '}
            <strong>{area(areaCm2.median)}</strong> of {cropName(cropKey)}.
          </p>
          <p className="actions">
            <Link
              className="button first"
              href={`/${society}/ground/course?holding=${holdingId}&want=${encodeURIComponent(`${cropKey}:${areaCm2.median}`)}`}
            >
              Plan {area(areaCm2.median)} of it
            </Link>
          </p>
        </>
      ) : cropKey ? (
        <p>
          On how much ground, your harvests will tell: weigh what you lift of {cropName(cropKey)}, and log it against
          its bed.
        </p>
      ) : null}
      <Reason ask="Why so much?">
        <ul className="small">
          <li>What is used on a day has to be put in with what goes bad till then, summed over those days.</li>
          <li>One is taken to weigh {mass(pieceG)}.</li>
          {areaCm2 ? (
            <li>
              {yields === 1 ? 'One harvest is' : `${yields} harvests are`} on record; another season is allowed to be as
              much better or worse as seasons are.
            </li>
          ) : null}
          <li>This year’s own bad luck is not carried on to the next.</li>
        </ul>
      </Reason>
    </>
  );
}

function cropName(key: string): string {
  return cropOf(key)?.name.toLowerCase() ?? key;
}
