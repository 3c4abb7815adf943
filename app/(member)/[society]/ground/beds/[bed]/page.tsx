import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { Options, SelectField, TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Findings, Verdict } from '@/app/_ui/judgement';
import { Mark } from '@/app/_ui/mark';
import { TurnWords } from '@/app/_ui/need-reason';
import { Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { cropGroupName } from '@/lib/domain/catalogue/crop-groups';
import { hostGroupName } from '@/lib/domain/catalogue/host-groups';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { areaCm2 } from '@/lib/domain/ground/footprint';
import { formatArea, percent } from '@/lib/domain/quantity/area';
import { formatLength } from '@/lib/domain/quantity/length';
import { judgePlanting } from '@/lib/usecases/ground/judge-planting';
import { readBed } from '@/lib/usecases/ground/read-ground';
import { logManuringAction, recordPlantingAction, retireManuringAction, retirePlantingAction } from '../../actions';
import { BedShape } from './_parts/bed-shape';
import { Judged } from './_parts/judged';
import { TroublesFound } from './_parts/troubles-found';

export const metadata: Metadata = { title: 'Bed' };

type Search = { cropKey?: string; season?: string; partFrom?: string; partLength?: string };
type Props = { params: Promise<{ society: string; bed: string }>; searchParams: Promise<Search> };

export default async function BedPage({ params, searchParams }: Props) {
  const { society, bed: bedId } = await params;
  const search = await searchParams;
  const { bed, plot, units, plantings, troubles, works, turn, next, crops, siblings, season, holdingId, today } =
    await ask(readBed, society, { bedId });
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
  return (
    <>
      <PageHead
        title={`Plot ${plot.number}, bed ${bed.name}`}
        lead={`${formatLength(bed.footprint.widthCm, units)} × ${formatLength(bed.footprint.lengthCm, units)}, ${formatArea(whole, units)}${bed.retiredOn ? `, in use until ${bed.retiredOn}` : ''}.`}
      >
        <Link className="button" href={`/${society}/ground${holdingId ? `?holding=${holdingId}` : ''}`}>
          Back to the ground
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
      </div>
      <div className="stack">
        <Sheet title={`Turn for manure, ${season}`}>
          {turn ? (
            <p>
              <TurnWords turn={turn.turn} units={units} />
            </p>
          ) : null}
          <ul>
            {works.map(({ id, kind, season: manuredFor, loads, materialKey, shareCm2 }) => (
              <li key={id}>
                for {manuredFor}:{' '}
                {kind === 'limed'
                  ? 'lime'
                  : materialKey
                    ? (materialOf(materialKey)?.name.toLowerCase() ?? 'manure')
                    : 'manure'}
                {loads === null ? '' : `, ${loads} loads`} on {percent(shareCm2, whole)}{' '}
                <TakeBack action={retireManuringAction.bind(null, society, bedId, id)} />
              </li>
            ))}
          </ul>
          <Reason ask="Log that it was manured or limed">
            <Form action={logManuringAction.bind(...bound)} writeId={randomUUID()} submit="Log it">
              <SelectField
                name="kind"
                label="What was done"
                value="manured"
                choices={[
                  { value: 'manured', label: 'manured' },
                  { value: 'limed', label: 'limed' },
                ]}
                hint="Not both at once: lime drives the ammonia out of manure. Leave months between them."
              />
              <TextField
                name="season"
                label="For the season"
                value={String(season)}
                inputMode="numeric"
                className="short-field"
              />
              <TextField name="doneOn" type="date" label="Done on" />
              <TextField name="loads" label="Barrow-loads" inputMode="numeric" className="short-field" />
              <TextField name="partFrom" label="From the top end" hint="empty: the whole bed" className="short-field" />
              <TextField name="partLength" label="Over a length of" className="short-field" />
            </Form>
          </Reason>
        </Sheet>
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

function TakeBack({ action }: { action: Parameters<typeof Form>[0]['action'] }) {
  return (
    <Reason ask="Take back">
      <Form action={action} writeId={randomUUID()} submit="Yes, take it back" danger className="inline-form">
        {null}
      </Form>
    </Reason>
  );
}
