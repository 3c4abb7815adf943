import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { NoteField, SelectField, TextField, TickField, TickGroup } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { SitePlan } from '@/app/_ui/site-plan';
import { formatArea, formatRods } from '@/lib/domain/quantity/area';
import { readPlotForOffice } from '@/lib/usecases/plots/read-plots';
import {
  changeHoldersAction,
  drawPlotAction,
  endTenancyAction,
  halvePlotAction,
  joinPlotsAction,
  letPlotAction,
  nameBookerAction,
} from '../actions';

export const metadata: Metadata = { title: 'Plot' };

export default async function PlotPage({ params }: { params: Promise<{ society: string; plot: string }> }) {
  const { society, plot: plotId } = await params;
  const { plot, plan, tenancies, holding, members, others, today } = await ask(readPlotForOffice, society, { plotId });
  const bound = [null, society, plotId] as const;
  const corners = plot.polygon?.map(({ xCm, yCm }) => `${xCm / 100} m; ${yCm / 100} m`).join('\n') ?? '';
  return (
    <>
      <PageHead
        title={`Plot ${plot.number}`}
        lead={`${plot.polygon ? formatArea(plot.areaCm2, 'metric') : `${formatRods(plot.quarterRods ?? 0)}, not measured`}. ${holding ? `Let to ${holding.members.map(({ name }) => name).join(' and ')}.` : 'To let.'}`}
      >
        <Link className="button" href={`/${society}/office/plots`}>
          Back to the plots
        </Link>
        {holding ? (
          <Link className="button" href={`/${society}/ground?holding=${holding.id}`}>
            Keep their ground
          </Link>
        ) : null}
      </PageHead>
      <div className="stack">
        <Sheet title="The plot to scale" flush>
          <SitePlan name={`Plot ${plot.number}`} season={Number(today.slice(0, 4))} plots={plan} only={plotId} />
          <div className="sheet-body">
            <Reason ask={plot.polygon ? 'Draw it again' : 'Draw it'}>
              <Form action={drawPlotAction.bind(...bound)} writeId={randomUUID()} submit="Draw">
                <p>Its top left corner on the site, from the site’s own corner; then its size, or its corners.</p>
                <div className="row">
                  <TextField
                    name="east"
                    label="East"
                    value={plot.frame ? `${plot.frame.originXCm / 100} m` : ''}
                    className="short-field"
                  />
                  <TextField
                    name="south"
                    label="South"
                    value={plot.frame ? `${plot.frame.originYCm / 100} m` : ''}
                    className="short-field"
                  />
                  <TextField
                    name="bearing"
                    label="Turned by"
                    value={String((plot.frame?.bearingCentideg ?? 0) / 100)}
                    suffix="°"
                    className="short-field"
                  />
                </div>
                <div className="row">
                  <TextField name="width" label="Width" className="short-field" />
                  <TextField name="length" label="Length" className="short-field" />
                </div>
                <NoteField
                  name="corners"
                  label="Or its corners, one a line"
                  rows={5}
                  value={corners}
                  hint="Along the width; along the length, from the top left corner, going once round."
                />
              </Form>
            </Reason>
          </div>
        </Sheet>
        <Sheet title="Tenancies">
          <ul>
            {tenancies.map(({ id, fromOn, untilOn, holders }) => (
              <li key={id}>
                {holders.join(' and ')}, from {fromOn}
                {untilOn ? ` until ${untilOn}` : ''}
              </li>
            ))}
          </ul>
          {tenancies.length === 0 ? <p className="soft">It has not been let yet.</p> : null}
        </Sheet>
      </div>
      <div className="stack">
        {holding ? (
          <>
            <Sheet title="Who holds it">
              <Form
                action={changeHoldersAction.bind(null, society, holding.id)}
                writeId={randomUUID()}
                submit="Set the holders"
              >
                <MemberTicks members={members} ticked={holding.memberIds} />
                <TextField name="from" type="date" label="From" value={today} />
              </Form>
            </Sheet>
            {holding.members.length > 1 ? (
              <Sheet title="Who books">
                <Form action={nameBookerAction.bind(null, society, holding.id)} writeId={randomUUID()} submit="Set">
                  <SelectField
                    name="memberId"
                    label="Only"
                    empty="any of the holders"
                    value={holding.bookerMemberId ?? ''}
                    choices={holding.members.map(({ id, name }) => ({ value: id, label: name }))}
                    hint="For holders who have fallen out. They are told."
                  />
                </Form>
              </Sheet>
            ) : null}
            <Sheet title="End the tenancy">
              <Form action={endTenancyAction.bind(...bound)} writeId={randomUUID()} submit="End it" danger>
                <p>The ground keeps its history. The next holder sees crops and manuring, never names or notes.</p>
                <TextField name="from" type="date" label="First day on which it no longer holds" value={today} />
                <TickField name="sure" label="Yes, end it" />
              </Form>
            </Sheet>
          </>
        ) : (
          <Sheet title="Let it">
            <Form action={letPlotAction.bind(...bound)} writeId={randomUUID()} submit="Let it">
              <MemberTicks members={members} ticked={[]} />
              <TextField name="from" type="date" label="From" value={today} />
            </Form>
          </Sheet>
        )}
        <Sheet title="Halve or join">
          <Reason ask="Halve it">
            <Form action={halvePlotAction.bind(...bound)} writeId={randomUUID()} submit="Halve it">
              <TickGroup name="across" legend="Cut across its">
                <TickField kind="radio" name="across" value="length" label="length" ticked />
                <TickField kind="radio" name="across" value="width" label="width" />
              </TickGroup>
              <TextField name="at" label="Distance of the cut from the top or left" className="short-field" />
              {plot.polygon ? null : <TextField name="rods" label="Rods of the first part" className="short-field" />}
              <TextField
                name="firstNumber"
                label="First part’s number"
                value={`${plot.number}A`}
                className="short-field"
              />
              <TextField
                name="secondNumber"
                label="Second part’s number"
                value={`${plot.number}B`}
                className="short-field"
              />
              <TextField name="from" type="date" label="From" value={today} />
            </Form>
          </Reason>
          <Reason ask="Join it to another">
            <Form action={joinPlotsAction.bind(...bound)} writeId={randomUUID()} submit="Join them">
              <SelectField
                name="otherId"
                label="With plot"
                choices={others.map(({ id, number }) => ({ value: id, label: number }))}
                className="short-field"
              />
              <TextField name="number" label="Number" value={plot.number} className="short-field" />
              <TextField name="from" type="date" label="From" value={today} />
            </Form>
          </Reason>
        </Sheet>
      </div>
    </>
  );
}

function MemberTicks({
  members,
  ticked,
}: {
  members: readonly { id: string; name: string }[];
  ticked: readonly string[];
}) {
  return (
    <TickGroup name="memberIds" kind="checkbox" legend="Holders, with equal rights" className="tick-list">
      {members
        .toSorted((a, b) => Number(ticked.includes(b.id)) - Number(ticked.includes(a.id)))
        .map(({ id, name }) => (
          <TickField key={id} name="memberIds" value={id} label={name} ticked={ticked.includes(id)} />
        ))}
    </TickGroup>
  );
}
