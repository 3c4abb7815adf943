import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { type Choice, SelectField, TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { pieceWords } from '@/app/_ui/trial-words';
import { areaCm2 } from '@/lib/domain/ground/footprint';
import { formatArea } from '@/lib/domain/quantity/area';
import { pieceOfBed, pieces } from '@/lib/domain/trial/piece-of-bed';
import { readJoining } from '@/lib/usecases/trials/join-trial';
import { joinAction } from '../../actions';

export const metadata: Metadata = { title: 'Join a trial' };

type Props = { params: Promise<{ society: string; trial: string }> };

export default async function JoinPage({ params }: Props) {
  const { society, trial: trialId } = await params;
  const { trial, isOpen, plots, units } = await ask(readJoining, society, { trialId });
  const choices = plots.flatMap((plot) => choicesOf(plot, units));
  return (
    <>
      <PageHead
        title={`Join: ${trial.question}`}
        lead="Two beds of one plot, or the two halves of one, as like each other as you have them."
      >
        <Link className="button" href={`/${society}/board/trials/${trialId}`}>
          The trial
        </Link>
      </PageHead>
      {!isOpen ? <Empty>Joining is closed.</Empty> : null}
      {isOpen && choices.length === 0 ? (
        <Empty>
          You have no bed to offer that is not in it already. Draw your beds on{' '}
          <Link href={`/${society}/ground`}>your ground</Link> first.
        </Empty>
      ) : null}
      {isOpen && choices.length ? (
        <Sheet title="Your two pieces of ground">
          <Form action={joinAction.bind(null, society, trialId)} writeId={randomUUID()} submit="Join">
            <SelectField name="first" label="First piece" empty="choose" choices={choices} />
            <SelectField
              name="second"
              label="Second piece"
              empty="choose"
              choices={choices}
              hint="Of the same plot. Which of the two gets A is for the lot to say: be ready to do either on either."
            />
            <TickField
              name="agree"
              label="Both results are reported in this trial, without my name."
              hint="To every member, once the report opens, and of no fewer than three holders. You can drop out until then."
            />
          </Form>
        </Sheet>
      ) : null}
      <Sheet title="What you would do">
        <dl>
          <dt>A</dt>
          <dd>{trial.treatmentA}</dd>
          <dt>B</dt>
          <dd>{trial.treatmentB}</dd>
          <dt>all else</dt>
          <dd>alike on both: seed, spacing, water, weeding, and the day of each</dd>
        </dl>
      </Sheet>
    </>
  );
}

type Plot = Awaited<ReturnType<typeof readJoining.run>>['plots'][number];

function choicesOf({ number, beds }: Plot, units: 'metric' | 'imperial'): Choice[] {
  return beds.flatMap(({ id, name, footprint }) =>
    pieces
      .filter((piece) => piece === 'whole' || footprint.lengthCm >= 2)
      .map((piece) => ({
        value: `${id}:${piece}`,
        label: `${pieceWords(`${name}:${piece}`)}, ${formatArea(areaCm2(pieceOfBed(footprint, piece)), units)}`,
        group: `Plot ${number}`,
      })),
  );
}
