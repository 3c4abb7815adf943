import { randomUUID } from 'node:crypto';
import Link from 'next/link';
import { dayWords } from '@/app/_ui/delivery-words';
import { TextField, TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Mark } from '@/app/_ui/mark';
import { ResidueCaution } from '@/app/_ui/residue-caution';
import { bioassayReasonWords, potName, verdictMarks, verdictWords } from '@/app/_ui/residue-words';
import { PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import type { readTest } from '@/lib/usecases/residue/read-tests';
import type { ShownTest } from '@/lib/usecases/residue/shown-test';
import { endAction, sowAction, takeBackAction } from '../ground/residue/actions';
import { testsAt } from './residue-address';
import { HowItIsDone } from './residue-how';
import { nextWords } from './residue-next';
import { ReadingForm } from './residue-reading';

type Read = Awaited<ReturnType<typeof readTest.run>>;
type Props = { readonly society: string; readonly read: Read; readonly said: string | undefined };

const told: Record<string, string> = {
  started: 'The test is started. This page says what comes next, and so does “This week”.',
  sown: 'The day of sowing is kept.',
  read: 'The reading is kept.',
  ended: 'The test is ended. What it showed stays.',
};

/** One test, guided: what to do next, what it shows so far, and everything that was read. */
export function TestPage({ society, read, said }: Props) {
  const { test, delivery, mayHold, today } = read;
  return (
    <>
      <PageHead title={test.name} lead={`Residue test${delivery ? ` of “${delivery.name}”` : ''}. ${nextWords(test)}`}>
        <Link className="button" href={testsAt(society, test.deliveryId)}>
          All tests
        </Link>
      </PageHead>
      {told[said ?? ''] ? (
        <p className="notice kept wide" role="status">
          {told[said ?? '']}
        </p>
      ) : null}
      <div className="stack">
        <Shows test={test} society={society} mayHold={mayHold} />
        {test.keeps && !test.isEnded ? <Next test={test} society={society} today={today} /> : null}
        <Readings test={test} society={society} />
      </div>
      <div className="stack">
        <Steps test={test} />
        <HowItIsDone />
        {test.keeps ? <Closing test={test} society={society} /> : null}
      </div>
    </>
  );
}

function Shows({ test, society, mayHold }: { test: ShownTest; society: string; mayHold: boolean }) {
  const { verdict, reasons } = test.judged;
  return (
    <Sheet
      title="What it shows"
      aside={<Mark kind={verdictMarks[verdict]}>{verdictWords(verdict, test.isEnded)}</Mark>}
    >
      <ul>
        {reasons.map((reason) => (
          <li key={reason.code + ('kind' in reason ? reason.kind : '')}>{bioassayReasonWords(reason)}</li>
        ))}
      </ul>
      {mayHold ? (
        <p className="actions">
          <Link
            className={verdict === 'symptoms' ? 'button first' : 'button'}
            href={`/${society}/office/deliveries/${test.deliveryId}#hold`}
          >
            Hold this delivery
          </Link>
        </p>
      ) : null}
      <ResidueCaution />
    </Sheet>
  );
}

function Next({ test, society, today }: { test: ShownTest; society: string; today: string }) {
  const { sownOn, pots, readings } = test.record;
  const form = <ReadingForm society={society} testId={test.id} pots={pots} on={today} />;
  if (sownOn !== null)
    return (
      <Sheet title="Read the pots">
        {test.state.next === 'read' ? form : <Reason ask="Read them once more">{form}</Reason>}
        {readings.length === 0 ? (
          <Reason ask="It was sown on another day">
            <SowForm society={society} testId={test.id} on={sownOn} />
          </Reason>
        ) : null}
      </Sheet>
    );
  return (
    <Sheet title="Sow the pots">
      <SowForm society={society} testId={test.id} on={today} />
    </Sheet>
  );
}

function SowForm({ society, testId, on }: { society: string; testId: string; on: string }) {
  return (
    <Form action={sowAction.bind(null, society, testId)} writeId={randomUUID()} submit="It was sown on that day">
      <TextField name="sownOn" type="date" label="Sown on" value={on} />
    </Form>
  );
}

function Readings({ test, society }: { test: ShownTest; society: string }) {
  const { pots, readings } = test.record;
  if (readings.length === 0) return null;
  return (
    <Sheet title="What was read">
      {readings.toReversed().map((reading) => (
        <div key={reading.on}>
          <h3>{dayWords(reading.on)}</h3>
          <Table
            caption={`Read on ${dayWords(reading.on)}`}
            columns={[
              { head: 'pot' },
              { head: 'up', number: true },
              { head: 'distorted', number: true },
              { head: 'leaf sets', number: true },
            ]}
            rows={pots.flatMap((pot) => {
              const line = reading.pots.find(({ potId }) => potId === pot.id);
              return line
                ? [
                    {
                      key: pot.id,
                      cells: [potName(pot), `${line.up} of ${pot.seeds}`, line.distorted, line.trueLeaves],
                    },
                  ]
                : [];
            })}
          />
          {test.keeps ? (
            <Reason ask="Correct this reading">
              <ReadingForm society={society} testId={test.id} pots={pots} on={reading.on} corrects={reading} />
            </Reason>
          ) : null}
        </div>
      ))}
    </Sheet>
  );
}

/** The whole of it in order: what is done, what is next, and the days that are to come. */
function Steps({ test: { record, state, judged, isEnded } }: { test: ShownTest }) {
  const { manureParts, mixParts, pots, sownOn } = record;
  const of = (kind: 'test' | 'control') => pots.filter((pot) => pot.kind === kind).length;
  const rows: [string, string][] = [
    ['Pots', `${of('test')} with manure and mix, ${manureParts} to ${mixParts}; ${of('control')} with the mix alone`],
    ['Sown', sownOn === null ? 'to be done' : dayWords(sownOn)],
    ...state.readingDays.map(({ on, read }, at): [string, string] => [
      `Reading ${at + 1}`,
      `${dayWords(on)}${read ? ': read' : isEnded || state.next !== 'read' ? ': not needed' : on === state.dueOn ? ': next' : ''}`,
    ]),
    ['Result', verdictWords(judged.verdict, isEnded)],
  ];
  return (
    <Sheet title="In order">
      <dl>{rows.map(([what, when]) => [<dt key={what}>{what}</dt>, <dd key={`${what} is`}>{when}</dd>])}</dl>
    </Sheet>
  );
}

function Closing({ test, society }: { test: ShownTest; society: string }) {
  return (
    <Sheet title="End it, or take it back">
      {test.isEnded ? null : (
        <Form action={endAction.bind(null, society, test.id)} writeId={randomUUID()} submit="End the test">
          <p>It is read no more, and what it showed stays.</p>
        </Form>
      )}
      <Reason ask="Take it back, if it was a mistake">
        <Form
          action={takeBackAction.bind(null, society, test.id)}
          writeId={randomUUID()}
          submit="Take the test back"
          danger
        >
          <p>It goes from this page and from the delivery. The book keeps that it was there.</p>
          <TickField name="sure" label="Yes, it was a mistake" />
        </Form>
      </Reason>
    </Sheet>
  );
}
