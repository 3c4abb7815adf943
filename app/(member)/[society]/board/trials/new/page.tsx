import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { NoteField, SelectField, TextField, TickField, TickGroup } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { readProposal } from '@/lib/usecases/trials/propose-trial';
import { FixedAnalysis } from '../_parts/fixed-analysis';
import { WhatFewShow } from '../_parts/what-few-show';
import { proposeAction } from '../actions';

export const metadata: Metadata = { title: 'Propose a trial' };

export default async function ProposePage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { crops, season, shows } = await ask(readProposal, society);
  return (
    <>
      <PageHead
        title="Propose a trial"
        lead="Joining opens as soon as it is sent, and from then on nothing of it can be changed, by anybody. It can be called off, with a reason that stays on record."
      />
      <Sheet title="What is tried out">
        <Form action={proposeAction.bind(null, society)} writeId={randomUUID()} submit="Open it for joining">
          <TextField name="question" label="Question" hint="such as: Do onions gain by manure the autumn before?" />
          <SelectField
            name="cropKey"
            label="Crop"
            empty="choose"
            choices={crops.map(({ key, name }) => ({ value: key, label: name }))}
          />
          <TextField name="season" label="Season" inputMode="numeric" value={String(season)} />
          <NoteField
            name="treatmentA"
            label="Treatment A"
            hint="What is done, how much of it and when. Such as: one barrow-load of rotted manure on 6 m², dug in before Christmas."
          />
          <NoteField
            name="treatmentB"
            label="Treatment B"
            hint="The same, with one thing otherwise. Such as: dug over on the same day, no manure."
          />
          <TickGroup name="measure" legend="What is measured">
            <TickField
              kind="radio"
              name="measure"
              value="grams"
              label="weight from a square metre"
              ticked
              hint="Taken from harvests where they are logged."
            />
            <TickField kind="radio" name="measure" value="pieces" label="count from a square metre" />
          </TickGroup>
          <TextField type="date" name="joinByOn" label="Last day of joining" hint="The lot is drawn when it is over." />
          <TextField
            type="date"
            name="resultsByOn"
            label="Last day of results"
            hint="The report opens the day after, or once all results are in."
          />
          <TextField
            name="leastPlots"
            label="Least number of plots"
            inputMode="numeric"
            value="4"
            hint="At least 3. If fewer join, it does not take place."
          />
        </Form>
      </Sheet>
      <div className="stack">
        <Sheet title="What so few plots can show">
          <WhatFewShow shows={shows} />
        </Sheet>
        <Sheet title="How it will be reckoned">
          <FixedAnalysis />
        </Sheet>
      </div>
    </>
  );
}
