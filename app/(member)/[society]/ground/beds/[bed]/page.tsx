import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { Options, TextField } from '@/app/_ui/field';
import { dayWords } from '@/app/_ui/delivery-words';
import { Form } from '@/app/_ui/form';
import { Findings, Verdict } from '@/app/_ui/judgement';
import { Mark } from '@/app/_ui/mark';
import { TurnWords } from '@/app/_ui/need-reason';
import { Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { cropGroupName } from '@/lib/domain/catalogue/crop-groups';
import { hostGroupName } from '@/lib/domain/catalogue/host-groups';
import { areaCm2 } from '@/lib/domain/ground/footprint';
import { formatArea, percent } from '@/lib/domain/quantity/area';
import { formatLength } from '@/lib/domain/quantity/length';
import { judgePlanting } from '@/lib/usecases/ground/judge-planting';
import { readFeeding } from '@/lib/usecases/ground/read-feeding';
import { readBed } from '@/lib/usecases/ground/read-ground';
import { listSheets } from '@/lib/usecases/sheets/read-sheet';
import { recordPlantingAction, retirePlantingAction } from '../../actions';
import { BedShape } from './_parts/bed-shape';
import { GroundSheets } from './_parts/ground-sheets';
import { HarvestWaits } from './_parts/harvest-waits';
import { Judged } from './_parts/judged';
import { LimeAdvice } from './_parts/lime-advice';
import { TakeBack } from './_parts/take-back';
import { TroublesFound } from './_parts/troubles-found';
import { WhatFeeds } from './_parts/what-feeds';
import { WorksDone } from './_parts/works-done';

export const metadata: Metadata = { title: 'Bed' };

type Search = {
  cropKey?: string;
  season?: string;
  partFrom?: string;
  partLength?: string;
  texture?: string;
  purpose?: string;
  ph?: string;
};
type Props = { params: Promise<{ society: string; bed: string }>; searchParams: Promise<Search> };

export default async function BedPage({ params, searchParams }: Props) {
  const { society, bed: bedId } = await params;
  const search = await searchParams;
  const { bed, plot, units, plantings, troubles, works, turn, next, crops, siblings, season, holdingId, today } =
    await ask(readBed, society, { bedId });
  const { texture, purpose, ph } = search;
  const feeding = await ask(readFeeding, society, { bedId, texture, purpose, ph });
  const asked = {
    cropKey: search.cropKey ?? '',
    season: search.season ?? String(season),
    partFrom: search.partFrom ?? '',
    partLength: search.partLength ?? '',
  };
  const judged =
    asked.cropKey && asked.cropKey !== 'bare' ? await ask(judgePlanting, society, { bedId, ...asked }) : null;
  const choices = [
    { value: 'bare', label: 'Bare: nothing grown' },
    ...crops.map(({ key, name, cropGroup }) => ({ value: key, label: name, group: cropGroupName(cropGroup) })),
  ];
  const bound = [null, society, bedId] as const;
  const whole = areaCm2(bed.footprint);
  const waitOf = (id: string) =>
    feeding.waits.find(({ plantingId, isWorstCase }) => plantingId === id && !isWorstCase)?.earliestOn;
  return (
    <>
      <PageHead
        title={`Plot ${plot.number}, bed ${bed.name}`}
        lead={`${formatLength(bed.footprint.widthCm, units)} × ${formatLength(bed.footprint.lengthCm, units)}, ${formatArea(whole, units)}${bed.retiredOn ? `, in use until ${bed.retiredOn}` : ''}.`}
      >
        <Link className="button" href={`/${society}/ground${holdingId ? `?holding=${holdingId}` : ''}`}>
          Back to the ground
        </Link>
        <Link className="button" href={`/${society}/dates${holdingId ? `?holding=${holdingId}` : ''}`}>
          Dates
        </Link>
      </PageHead>
      <div className="stack">
        <Sheet title="What may stand here?">
          <form method="get" className="form">
            <div className="row">
              <div className="field">
                <label htmlFor="ask-crop">Crop</label>
                <select id="ask-crop" name="cropKey" defaultValue={asked.cropKey}>
                  <Options choices={choices} empty="choose a crop" />
                </select>
              </div>
              <TextField
                name="season"
                label="Season"
                value={asked.season}
                inputMode="numeric"
                className="short-field"
              />
            </div>
            <div className="row">
              <TextField
                name="partFrom"
                label="From the top end"
                value={asked.partFrom}
                hint="empty: the whole bed"
                className="short-field"
              />
              <TextField
                name="partLength"
                label="Over a length of"
                value={asked.partLength}
                hint="empty: to the end"
                className="short-field"
              />
            </div>
            <button type="submit" className="button">
              Judge it
            </button>
          </form>
          {judged ? <Judged judged={judged} asked={asked} society={society} units={units} /> : null}
          {asked.cropKey ? (
            <Form
              action={recordPlantingAction.bind(...bound)}
              writeId={randomUUID()}
              submit={
                Number(asked.season) > Number(today.slice(0, 4))
                  ? `Plan it for ${asked.season}`
                  : `Record it for ${asked.season}`
              }
              className="form record"
            >
              {Object.entries(asked).map(([name, value]) => (
                <input key={name} type="hidden" name={name} value={value} />
              ))}
              <Reason ask="Variety, days and notes">
                <div className="form">
                  <TextField name="variety" label="Variety" />
                  <TextField name="sownOn" type="date" label="Sown" hint="With a day, the season follows from it." />
                  <TextField name="plantedOn" type="date" label="Planted" />
                  <TextField name="clearedOn" type="date" label="Cleared" />
                  <TextField name="notes" label="Notes, for you alone" />
                </div>
              </Reason>
            </Form>
          ) : null}
        </Sheet>
        <HarvestWaits waits={feeding.waits} clashes={feeding.clashes} />
        <Sheet title="What stood on this ground" flush aside={<span className="small soft">whoever held it</span>}>
          {plantings.length === 0 ? (
            <Empty>
              Nothing is recorded here. Fill in the seasons you remember; what you don’t know stays “not known”.
            </Empty>
          ) : null}
          <Table
            caption="What stood on this ground"
            columns={[
              { head: 'season' },
              { head: 'crop' },
              { head: 'of the bed', number: true },
              { head: 'rotation' },
              { head: '' },
            ]}
            rows={plantings.map((one) => ({
              key: one.id,
              cells: [
                `${one.firstSeason}${one.lastSeason > one.firstSeason ? (one.lastSeason >= 2200 ? ' on' : `–${one.lastSeason}`) : ''}${one.planned ? ', planned' : ''}`,
                <div key="crop">
                  {one.cropName}
                  {one.variety ? ` ‘${one.variety}’` : ''}
                  {one.notes ? <div className="small soft">{one.notes}</div> : null}
                  {waitOf(one.id) ? (
                    <div className="small">no harvest before {dayWords(waitOf(one.id) ?? '')}</div>
                  ) : null}
                  {one.mayBePicked ? (
                    <div>
                      <Link href={`/${society}/ground/harvests/new?planting=${one.id}`}>Log a harvest</Link>
                    </div>
                  ) : null}
                </div>,
                percent(one.shareCm2, whole),
                <div key="verdict">
                  {one.cropKey === 'bare' ? (
                    <Mark kind="bare" />
                  ) : (
                    <Verdict verdict={one.verdict} shortCm2={one.areas.shortCm2} areaCm2={one.areaCm2} />
                  )}
                  <Findings findings={one.findings.filter(({ code }) => code !== 'not-known')} areaCm2={one.areaCm2} />
                </div>,
                one.correctable ? (
                  <TakeBack key="back" action={retirePlantingAction.bind(null, society, one.id)} />
                ) : (
                  ''
                ),
              ],
            }))}
          />
        </Sheet>
        <WhatFeeds feeding={feeding} bedCm2={whole} />
      </div>
      <div className="stack">
        <Sheet title={`Turn for manure, ${season}`}>
          {turn ? (
            <p>
              <TurnWords turn={turn.turn} units={units} />
            </p>
          ) : null}
        </Sheet>
        <GroundSheets
          society={society}
          bedId={bedId}
          sheets={await ask(listSheets, society, { bedId })}
          isRetired={bed.retiredOn !== null}
        />
        <WorksDone society={society} bedId={bedId} season={season} works={works} bedCm2={whole} units={units} />
        <LimeAdvice feeding={feeding} asked={search.cropKey ? asked : {}} />
        <TroublesFound society={society} bedId={bedId} found={troubles} bedCm2={whole} today={today} />
        <Sheet title={`Could stand here in ${season}`} flush>
          <Table
            caption={`Judged for ${season}`}
            columns={[{ head: 'kin' }, { head: 'on the whole bed' }]}
            rows={next.map(({ hostGroup, verdict, findings }) => ({
              key: hostGroup,
              cells: [
                hostGroupName(hostGroup),
                <div key="verdict">
                  <Mark kind={verdict} />
                  <Findings findings={findings.slice(0, 2)} areaCm2={whole} />
                </div>,
              ],
            }))}
          />
        </Sheet>
        {bed.retiredOn ? null : (
          <BedShape society={society} bed={bed} siblings={siblings} units={units} today={today} />
        )}
      </div>
    </>
  );
}
