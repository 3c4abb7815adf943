import { randomUUID } from 'node:crypto';
import { NoteField, SelectField, TextField, TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Caution, Reason, Sheet } from '@/app/_ui/sheet';
import { leftWords, SoilCaution } from '@/app/_ui/trouble-words';
import { troubleName, troubleOf, troubles } from '@/lib/domain/catalogue/troubles';
import { hostGroupName } from '@/lib/domain/catalogue/host-groups';
import { percent } from '@/lib/domain/quantity/area';
import type { readBed } from '@/lib/usecases/ground/read-ground';
import { recordTroubleAction, retireTroubleAction } from '../../../actions';

type Found = Awaited<ReturnType<typeof readBed.run>>['troubles'];
type Props = { society: string; bedId: string; found: Found; bedCm2: number; today: string };

/** What was found in this ground, how long its hosts stay away, and what is likely left: never an all-clear. */
export function TroublesFound({ society, bedId, found, bedCm2, today }: Props) {
  const choices = troubles.map(({ key, name, hosts }) => ({
    value: key,
    label: name,
    group: hosts.map(hostGroupName).join(', '),
  }));
  return (
    <Sheet title="Troubles found in this ground">
      {found.length === 0 ? <p className="soft">None is recorded.</p> : null}
      {found.map((trouble) => (
        <div key={trouble.id} className="found">
          <p>
            <strong>{troubleName(trouble.troubleKey)}</strong>,{' '}
            {trouble.certainty === 'sure' ? 'sure' : trouble.certainty}, found {trouble.foundOn} on{' '}
            {percent(trouble.shareCm2, bedCm2)} of the bed.{' '}
            {trouble.freeFrom === null
              ? 'No break is known to clear it: grow none of its hosts here.'
              : `None of its hosts before ${trouble.freeFrom}: ${trouble.breakYears} clear years after ${trouble.lastFed}.`}
          </p>
          {trouble.notes ? <p className="small soft">{trouble.notes}</p> : null}
          <p className="small">{leftWords(trouble.left)}</p>
          <p className="small">
            Its hosts: {(troubleOf(trouble.troubleKey)?.hosts ?? []).map(hostGroupName).join(', ')}.
          </p>
          <Reason ask="Take back, if it was a mistake">
            <Form
              action={retireTroubleAction.bind(null, society, trouble.id)}
              writeId={randomUUID()}
              submit="Take it back"
              danger
            >
              <p>Waiting it out needs no taking back: the longer break ends by itself.</p>
              <TickField name="sure" label="Yes, it was a mistake" />
            </Form>
          </Reason>
        </div>
      ))}
      {found.some(({ troubleKey }) => troubleOf(troubleKey)?.travelsInSoil) ? (
        <Caution>
          <SoilCaution />
        </Caution>
      ) : null}
      <Reason ask="Record a trouble">
        <Form action={recordTroubleAction.bind(null, society, bedId)} writeId={randomUUID()} submit="Record it">
          <SelectField name="troubleKey" label="What was found" empty="choose one" choices={choices} />
          <SelectField
            name="certainty"
            label="How sure"
            value="likely"
            choices={[
              { value: 'suspected', label: 'suspected' },
              { value: 'likely', label: 'likely: the signs fit' },
              { value: 'sure', label: 'sure: somebody who knows has seen it' },
            ]}
            hint="Even a suspicion has the longer break."
          />
          <TextField name="foundOn" type="date" label="Found on" value={today} />
          <TextField name="partFrom" label="From the top end" hint="empty: the whole bed" className="short-field" />
          <TextField name="partLength" label="Over a length of" hint="empty: to the end" className="short-field" />
          <NoteField name="notes" label="Notes, for you alone" />
        </Form>
      </Reason>
    </Sheet>
  );
}
