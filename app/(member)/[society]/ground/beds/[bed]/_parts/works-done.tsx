import Link from 'next/link';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { dayWords } from '@/app/_ui/delivery-words';
import { percent } from '@/lib/domain/quantity/area';
import { formatLength, type Units } from '@/lib/domain/quantity/length';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import type { readBed } from '@/lib/usecases/ground/read-ground';
import { retireWorkAction } from '../../../actions';
import { LogWork } from './log-work';
import { TakeBack } from './take-back';
import { workName } from './work-names';

type Works = Awaited<ReturnType<typeof readBed.run>>['works'];
type Props = { society: string; bedId: string; season: number; works: Works; bedCm2: number; units: Units };

/** Older than this, work is folded away [seasons]. */
const shownSeasons = 3;

/** The log of work done on this ground, and the forms that add to it. */
export function WorksDone({ works, season, ...props }: Props) {
  const lately = works.filter((work) => work.season > season - shownSeasons);
  const earlier = works.filter((work) => work.season <= season - shownSeasons);
  return (
    <Sheet title="Work done on this ground" aside={<span className="small soft">whoever held it</span>}>
      {works.length === 0 ? (
        <p className="soft">
          Nothing is logged. What you log resets the turn, counts towards the nutrients, and tells when a harvest is
          safe.
        </p>
      ) : null}
      <WorkList works={lately} {...props} />
      {earlier.length ? (
        <Reason ask={`Earlier: ${earlier.length}`}>
          <WorkList works={earlier} {...props} />
        </Reason>
      ) : null}
      <LogWork society={props.society} bedId={props.bedId} season={season} />
    </Sheet>
  );
}

function WorkList({ works, society, bedId, bedCm2, units }: Omit<Props, 'season'>) {
  if (works.length === 0) return null;
  return (
    <ul>
      {works.map((work) => (
        <li key={work.id}>
          <WorkLine work={work} bedCm2={bedCm2} units={units} />{' '}
          {work.sheetId ? (
            <span className="small">
              From a <Link href={`/${society}/ground/sheets/${work.sheetId}`}>ground sheet</Link>: take the tick back
              there.
            </span>
          ) : (
            <TakeBack action={retireWorkAction.bind(null, society, bedId, work.id)} />
          )}
        </li>
      ))}
    </ul>
  );
}

function WorkLine({ work, bedCm2, units }: { work: Works[number]; bedCm2: number; units: Units }) {
  const { kind, season, materialKey, loads, massG, ageMonths, incorporated, method, depthCm, doneOn, shareCm2 } = work;
  const amounts = [
    loads === null ? null : loads === 1 ? 'one barrow-load' : `${loads} barrow-loads`,
    massG === null ? null : formatMassIn(massG, units),
  ].filter(Boolean);
  const said = [
    amounts.length === 2 ? `${amounts[0]} (${amounts[1]})` : amounts[0],
    ageMonths === null ? null : ageMonths === 1 ? 'a month old' : `${ageMonths} months old`,
    kind !== 'dug' && !incorporated ? 'left on top' : null,
    depthCm === null ? null : `${formatLength(depthCm, units)} deep`,
  ].filter(Boolean);
  return (
    <>
      <strong>for {season}</strong>: {[workName(kind, materialKey, method), ...said].join(', ')}, on{' '}
      {percent(shareCm2, bedCm2)}; {doneOn ? dayWords(doneOn) : 'day not recorded'}
    </>
  );
}
