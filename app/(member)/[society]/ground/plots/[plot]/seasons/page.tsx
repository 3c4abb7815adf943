import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { FileField, NoteField, Options } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { cropGroupName } from '@/lib/domain/catalogue/crop-groups';
import { readGrid } from '@/lib/usecases/ground/read-ground';
import { fillGridAction, importPlantingsAction } from '../../../actions';
import { BedGrid } from '@/app/_ui/bed-grid';
import { GridSelect } from '@/app/_ui/grid-select';

export const metadata: Metadata = { title: 'Fill in seasons' };

export default async function SeasonsPage({ params }: { params: Promise<{ society: string; plot: string }> }) {
  const { society, plot: plotId } = await params;
  const { plot, seasons, beds, crops, today } = await ask(readGrid, society, { plotId });
  const choices = [
    { value: 'bare', label: 'Bare: nothing grown' },
    ...crops.map(({ key, name, cropGroup }) => ({ value: key, label: name, group: cropGroupName(cropGroup) })),
  ];
  const year = Number(today.slice(0, 4));
  return (
    <>
      <PageHead
        title={`Plot ${plot.number}, season by season`}
        lead="What stood on each bed. Leave a cell empty where you don’t know: unknown is shown as unknown. Choose “bare” where you know that nothing was grown."
      >
        <Link className="button" href={`/${society}/ground`}>
          Back to my ground
        </Link>
      </PageHead>
      {beds.length === 0 ? (
        <Empty>
          This plot has no beds yet. <Link href={`/${society}/ground/plots/${plotId}/beds`}>Draw them first</Link>.
        </Empty>
      ) : (
        <Sheet title="Beds down, seasons across" wide>
          <Form action={fillGridAction.bind(null, society, plotId)} writeId={randomUUID()} submit="Record these">
            <BedGrid
              caption="What stood on each bed in each season"
              beds={beds}
              nameOf={({ id, name }) => <Link href={`/${society}/ground/beds/${id}`}>{name}</Link>}
              seasons={seasons.toReversed()}
              seasonWords={(season) => `${season}${season > year ? ', planned' : ''}`}
              cell={(bed, season) => {
                const cell = bed.cells[seasons.indexOf(season)] ?? [];
                return {
                  content:
                    cell.length > 1 ? (
                      <Link href={`/${society}/ground/beds/${bed.id}`}>
                        {cell.map(({ cropName }) => cropName).join(', ')}
                      </Link>
                    ) : (
                      <GridSelect
                        name={`c:${bed.id}:${season}`}
                        label={`Bed ${bed.name}, ${season}`}
                        value={cell[0]?.cropKey ?? ''}
                      >
                        <Options choices={choices} empty="not recorded" />
                      </GridSelect>
                    ),
                };
              }}
            />
          </Form>
        </Sheet>
      )}
      {beds.length ? (
        <Sheet title="Or take in a table" wide>
          <Form action={importPlantingsAction.bind(null, society, plotId)} writeId={randomUUID()} submit="Look at it">
            <NoteField
              name="table"
              label="Table with a heading line"
              rows={6}
              hint="Columns: bed, crop, and season or sown, planted, cleared; also variety, from, length. Commas, semicolons or tabs. All of it is taken in, or none with each bad cell named."
            />
            <FileField name="file" label="Or the file itself" accept=".csv,.tsv,.txt,text/csv" />
          </Form>
        </Sheet>
      ) : null}
    </>
  );
}
