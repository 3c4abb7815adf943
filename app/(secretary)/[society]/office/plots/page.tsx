import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { FileField, NoteField, SelectField, TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { formatArea, formatRods } from '@/lib/domain/quantity/area';
import { listPlots } from '@/lib/usecases/plots/read-plots';
import { addPlotAction, addSiteAction, importPlotsAction } from './actions';

export const metadata: Metadata = { title: 'Plots' };

export default async function PlotsPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { sites, plots, today, runs } = await ask(listPlots, society);
  const choices = sites.map(({ id, name }) => ({ value: id, label: name }));
  return (
    <>
      <PageHead
        title="Plots and tenancies"
        lead={`${plots.length} plots, ${plots.filter(({ holders }) => !holders).length} to let, ${plots.filter(({ polygon }) => !polygon).length} not measured yet.`}
      />
      <Sheet title="The plots" flush>
        {plots.length === 0 ? (
          <Empty>
            None yet. Paste the society’s list beside this, or add them one by one; the plan can be drawn later.
          </Empty>
        ) : null}
        <Table
          caption="Plots"
          columns={[{ head: 'plot' }, { head: 'size' }, { head: 'let to' }]}
          rows={plots.map(({ id, number, polygon, quarterRods, areaCm2, holders }) => ({
            key: id,
            cells: [
              runs ? (
                <Link key="number" href={`/${society}/office/plots/${id}`}>
                  {number}
                </Link>
              ) : (
                number
              ),
              polygon ? formatArea(areaCm2, 'metric') : `${formatRods(quarterRods ?? 0)}, not measured`,
              holders ?? 'to let',
            ],
          }))}
        />
      </Sheet>
      {runs ? (
        <div className="stack">
          {sites.length ? (
            <>
              <Sheet title="Take in a list">
                <Form action={importPlotsAction.bind(null, society)} writeId={randomUUID()} submit="Look at it">
                  <SelectField name="siteId" label="Site" choices={choices} />
                  <NoteField
                    name="table"
                    label="Table with a heading line"
                    rows={8}
                    hint="Columns: plot, rods, holders, email, phone, from. Several holders in one cell, parted by a semicolon or an ampersand. Commas, semicolons or tabs. All of it is taken in, or none with each bad cell named."
                  />
                  <FileField name="file" label="Or the file itself" accept=".csv,.tsv,.txt,text/csv" />
                  <TextField name="from" type="date" label="Let from, where the table gives no day" value={today} />
                </Form>
              </Sheet>
              <Sheet title="Add one plot">
                <Form action={addPlotAction.bind(null, society)} writeId={randomUUID()} submit="Add">
                  <SelectField name="siteId" label="Site" choices={choices} />
                  <TextField name="number" label="Number" className="short-field" />
                  <TextField
                    name="rods"
                    label="Size"
                    suffix="rods"
                    className="short-field"
                    hint="A rod is 25.3 m². Draw it later, if you like."
                  />
                </Form>
              </Sheet>
            </>
          ) : null}
          <Sheet title={sites.length ? 'Another site' : 'First, the site'}>
            {sites.length ? (
              <Reason ask="Add a site">
                <AddSite society={society} />
              </Reason>
            ) : (
              <AddSite society={society} />
            )}
          </Sheet>
        </div>
      ) : null}
    </>
  );
}

function AddSite({ society }: { society: string }) {
  return (
    <Form action={addSiteAction.bind(null, society)} writeId={randomUUID()} submit="Add the site">
      <TextField name="name" label="Name" />
    </Form>
  );
}
