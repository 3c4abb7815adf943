import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { SelectField, TextField, TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { cropGroupName, cropGroups } from '@/lib/domain/catalogue/crop-groups';
import { hostGroupName, hostGroups } from '@/lib/domain/catalogue/host-groups';
import { listCrops } from '@/lib/usecases/ground/keep-crops';
import { readStanding } from '@/lib/usecases/members/read-standing';
import { saveCropAction } from './actions';

export const metadata: Metadata = { title: 'Crops' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ crop?: string }> };

export default async function CropsPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { crop: chosen } = await searchParams;
  const [crops, { roles }] = await Promise.all([ask(listCrops, society), ask(readStanding, society)]);
  const crop = crops.find(({ key }) => key === chosen);
  return (
    <>
      <PageHead
        title="Crops"
        lead={`${crops.length} crops. What the society sets for itself stands over the catalogue.`}
      />
      <Sheet title="The list" flush>
        <Table
          caption="Crops"
          columns={[{ head: 'crop' }, { head: 'group' }, { head: 'kin that share troubles' }, { head: 'takes manure' }]}
          rows={crops.map(({ key, name, binomial, cropGroup, hostGroups: hosts, takesManure, own }) => ({
            key,
            mine: own,
            cells: [
              <div key="name">
                <Link href={`?crop=${key}#save`}>{name}</Link>
                <div className="small soft">
                  <i>{binomial}</i>
                  {own ? ', the society’s own' : ''}
                </div>
              </div>,
              cropGroupName(cropGroup),
              hosts.map(hostGroupName).join(', ') || '–',
              takesManure ? 'yes' : 'no',
            ],
          }))}
        />
      </Sheet>
      {roles.includes('secretary') ? (
        <section id="save" key={crop?.key ?? 'new'}>
          <Sheet title={crop ? `Change: ${crop.name}` : 'Add a crop'}>
            <Form action={saveCropAction.bind(null, society)} writeId={randomUUID()} submit={crop ? 'Save' : 'Add'}>
              <input type="hidden" name="key" value={crop?.key ?? ''} />
              <TextField name="name" label="Name" value={crop?.name ?? ''} />
              <TextField name="binomial" label="Botanical name" value={crop?.binomial ?? ''} />
              <TextField name="family" label="Botanical family" value={crop?.family ?? ''} />
              <SelectField
                name="cropGroup"
                label="Group"
                value={crop?.cropGroup ?? 'leaves'}
                choices={cropGroups.map(({ key, name }) => ({ value: key, label: name }))}
              />
              <SelectField
                name="hostGroup"
                label="Shares soil troubles with"
                empty="none of these"
                value={crop?.hostGroups[0] ?? ''}
                choices={hostGroups.map(({ key, name }) => ({ value: key, label: name }))}
              />
              <SelectField
                name="life"
                label="Lives"
                value={crop?.life ?? 'annual'}
                choices={['annual', 'biennial', 'perennial'].map((life) => ({ value: life, label: life }))}
              />
              <TickField
                name="takesManure"
                label="Takes manure when it is its turn"
                ticked={crop?.takesManure ?? false}
              />
            </Form>
          </Sheet>
        </section>
      ) : null}
    </>
  );
}
