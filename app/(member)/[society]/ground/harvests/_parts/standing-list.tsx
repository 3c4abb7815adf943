import Link from 'next/link';
import { dayWords } from '@/app/_ui/delivery-words';
import { seasonWords } from '@/app/_ui/yield-words';
import type { readHarvests } from '@/lib/usecases/harvest/read-harvests';

type Standing = Awaited<ReturnType<typeof readHarvests.run>>['standing'];

/** What stands, each a button of its own: one tap to the form. */
export function StandingList({ society, standing }: { society: string; standing: Standing }) {
  return (
    <ul className="pick-list">
      {standing.map(({ id, cropName, variety, plotNumber, bedName, lastOn, notBefore, ...seasons }) => (
        <li key={id}>
          <Link className="button" href={`/${society}/ground/harvests/new?planting=${id}`}>
            <span>
              {cropName}
              {variety ? ` ‘${variety}’` : ''}
            </span>
            <span className="small soft">
              plot {plotNumber}, bed {bedName}, {seasonWords(seasons)}
              {lastOn ? `; last ${dayWords(lastOn)}` : ''}
            </span>
            {notBefore ? <span className="small wait">not before {dayWords(notBefore)}: manure</span> : null}
          </Link>
        </li>
      ))}
    </ul>
  );
}
