import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { sourceWords } from '@/app/_ui/setting-words';
import { Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { readTin } from '@/lib/usecases/seed/read-seed';
import { HoldingSwitch } from '../_parts/holding-switch';
import { AddPacket } from './_parts/add-packet';
import { Packet } from './_parts/packet';

export const metadata: Metadata = { title: 'The tin' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ holding?: string }> };

export default async function TinPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { holding: asked } = await searchParams;
  const read = await ask(readTin, society, { holdingId: asked || null });
  const { holding, holdings, packets, usedUp, season, thisYear } = read;
  return (
    <>
      <PageHead
        title="The tin"
        lead={`Seed in hand, and how far it may be relied on in ${season}. Nobody sees it but those who hold the plot with you.`}
      >
        <Link className="button" href={`/${society}/seed`}>
          What I need
        </Link>
      </PageHead>
      <div className="wide">
        <HoldingSwitch holdings={holdings} at={holding?.id ?? null} />
      </div>
      {holding === null ? (
        <Empty>You hold no plot at present. Once one is let to you, its tin stands here.</Empty>
      ) : (
        <>
          <div className="stack">
            <Sheet title={packets.length ? `In the tin: ${packets.length}` : 'The tin is empty'}>
              {packets.length ? (
                <ul className="plain-list">
                  {packets.map((packet) => (
                    <Packet key={packet.id} society={society} packet={packet} season={season} />
                  ))}
                </ul>
              ) : (
                <p>Put in what you have, and what you must order is that much less.</p>
              )}
              <p className="small soft">
                How long seed lives: {sourceWords('knott-seed-life')}. That is in good storage; a tin in a shed is none,
                so sound is no promise.
              </p>
            </Sheet>
            {usedUp.length ? (
              <Sheet title="Used up">
                <Reason ask={`${usedUp.length} ${usedUp.length === 1 ? 'packet' : 'packets'}`}>
                  <ul className="plain-list">
                    {usedUp.map((packet) => (
                      <Packet key={packet.id} society={society} packet={packet} season={season} />
                    ))}
                  </ul>
                </Reason>
              </Sheet>
            ) : null}
          </div>
          <AddPacket society={society} holdingId={holding.id} crops={read.crops} thisYear={thisYear} />
        </>
      )}
    </>
  );
}
