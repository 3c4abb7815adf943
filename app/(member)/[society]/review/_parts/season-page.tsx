import { PageHead } from '@/app/_ui/sheet';
import { whenWords } from '@/app/_ui/delivery-words';
import { PrintButton } from '@/app/_ui/print-button';
import { SeasonSwitch } from '@/app/_ui/season-switch';
import { formatArea } from '@/lib/domain/quantity/area';
import type { readReview } from '@/lib/usecases/review/read-review';
import { HowGroundHeld } from './how-ground-held';
import { cultivable } from './review-words';
import { TroublesFound } from './troubles-found';
import { WhatGrew } from './what-grew';

type Read = Omit<Awaited<ReturnType<typeof readReview.run>>, 'parts' | 'readsHoldings' | 'isCommittee' | 'decisions'>;

type Props = { read: Read; title: string; links: React.ReactNode; foot?: React.ReactNode; children: React.ReactNode };

/** A season on one page of A4: what is the same for members and landlord, around what differs. */
export function SeasonPage({ read, title, links, foot, children }: Props) {
  const { season, seasons, thisYear, ground, harvest, units, isWhole } = read;
  const count = (number: number, one: string) => `${number} ${one}${number === 1 ? '' : 's'}`;
  return (
    <div className="review wide">
      <PageHead
        title={title}
        lead={`${count(ground.sites, 'site')}, ${count(ground.plots, 'plot')}, ${formatArea(cultivable(ground.total), units)} of cultivable ground. All from the society’s records as they stood on ${whenWords(read.now, read.timeZone)}.${isWhole ? '' : ' The season is not over: more may come.'}`}
      >
        <PrintButton>Print on A4</PrintButton>
        {links}
      </PageHead>
      <SeasonSwitch seasons={seasons} season={season} thisYear={thisYear} />
      <div className="review-columns">
        <HowGroundHeld {...{ ground, season, units }} />
        <TroublesFound troubles={ground.troubles} units={units} />
        {children}
        <WhatGrew {...{ harvest, units }} />
      </div>
      {foot}
    </div>
  );
}
