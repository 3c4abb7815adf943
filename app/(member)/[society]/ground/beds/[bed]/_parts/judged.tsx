import Link from 'next/link';
import { wordsFor } from '@/app/_server/words';
import { AdviceList, Findings, Verdict } from '@/app/_ui/judgement';
import { formatLength, type Units } from '@/lib/domain/quantity/length';
import type { JudgedPlanting } from '@/lib/usecases/ground/judge-planting';
import type { Refusal } from '@/lib/usecases/refusal';
import { HarvestCaution, WaitLine } from './harvest-waits';

type Asked = { cropKey: string; season: string; partFrom: string; partLength: string };
type Props = { judged: JudgedPlanting | { refusals: readonly Refusal[] }; asked: Asked; society: string; units: Units };

/** The verdict on what was asked, why, and where it would be kept. */
export function Judged({ judged, asked, society, units }: Props) {
  if ('refusals' in judged)
    return (
      <p className="field-error" role="alert">
        {judged.refusals.map(wordsFor).join(' ')}
      </p>
    );
  const { cropName, season, verdict, areas, areaCm2, findings, advice, moveToCm, otherBeds, footprint, wait } = judged;
  const moved =
    moveToCm === null
      ? null
      : new URLSearchParams({ ...asked, partFrom: `${moveToCm} cm`, partLength: `${footprint.lengthCm} cm` });
  return (
    <div role="status" style={{ marginTop: '1rem' }}>
      <p>
        <strong>
          {cropName} in {season}
        </strong>{' '}
        <Verdict verdict={verdict} shortCm2={areas.shortCm2} areaCm2={areaCm2} />
      </p>
      <Findings findings={findings} areaCm2={areaCm2} />
      <AdviceList advice={advice} areaCm2={areaCm2} />
      {wait ? (
        <>
          <WaitLine wait={wait} />
          <HarvestCaution />
        </>
      ) : null}
      {moved ? (
        <p>
          <Link className="button" href={`?${moved}`}>
            Begin {formatLength(moveToCm ?? 0, units)} from the top end: kept there
          </Link>
        </p>
      ) : null}
      {otherBeds.length ? (
        <p>
          Kept on{' '}
          {otherBeds.map(({ id, name }, at) => (
            <span key={id}>
              {at ? ', ' : ''}
              <Link
                href={`/${society}/ground/beds/${id}?${new URLSearchParams({ cropKey: asked.cropKey, season: asked.season })}`}
              >
                bed {name}
              </Link>
            </span>
          ))}
          .
        </p>
      ) : null}
      {verdict === 'short' && !moved && otherBeds.length === 0 ? (
        <p>
          No place of yours keeps this break in {season}. It is your ground: you may plant it all the same, and it shows
          as short.
        </p>
      ) : null}
    </div>
  );
}
