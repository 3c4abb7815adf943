import { randomUUID } from 'node:crypto';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Mark } from '@/app/_ui/mark';
import { packetMark, packetWhy, seedAmountWords } from '@/app/_ui/seed-words';
import { Reason } from '@/app/_ui/sheet';
import type { readTin } from '@/lib/usecases/seed/read-seed';
import { changePacketAction, finishPacketAction, takeBackPacketAction, usePacketAction } from '../../actions';

type Kept = Awaited<ReturnType<typeof readTin.run>>['packets'][number];
type Props = { readonly society: string; readonly packet: Kept; readonly season: number };

/** One packet: what is left in it, whether it may be relied on and why, and what can be done with it. */
export function Packet({ society, packet, season }: Props) {
  const { id, cropName, variety, seeds, packedYear, germinationPercent, state, isOrdered } = packet;
  const { word, mark } = packetMark(state);
  return (
    <li className="ruled">
      <p>
        <strong>{cropName}</strong>
        {variety ? ` “${variety}”` : ''}: {seedAmountWords('seeds', seeds)}{' '}
        <span className="soft">
          {packedYear ?? 'no year'}
          {isOrdered ? ', from the society’s order' : ''}
        </span>{' '}
        <Mark kind={mark}>{word}</Mark>
      </p>
      <p className="small">{packetWhy(state, Math.max(season, packedYear ?? season), germinationPercent)}</p>
      {seeds > 0 ? (
        <Reason ask="Use some, or all">
          <Form action={usePacketAction.bind(null, society, id)} writeId={randomUUID()} submit="Used that many">
            <TextField name="seeds" label="Seeds used" inputMode="numeric" className="short-field" />
          </Form>
          <Form action={finishPacketAction.bind(null, society, id)} writeId={randomUUID()} submit="It is used up">
            {null}
          </Form>
        </Reason>
      ) : null}
      <Reason ask="Correct it, or take it back">
        <Form action={changePacketAction.bind(null, society, id)} writeId={randomUUID()} submit="Correct it">
          <div className="row">
            <TextField
              name="seeds"
              label="Seeds left"
              value={String(seeds)}
              inputMode="numeric"
              className="short-field"
            />
            <TextField name="variety" label="Variety" value={variety ?? ''} />
          </div>
          <div className="row">
            <TextField
              name="packedYear"
              label="Year on the packet"
              value={String(packedYear ?? '')}
              inputMode="numeric"
              className="short-field"
            />
            <TextField
              name="germinationPercent"
              label="Came up in a test"
              suffix="of 100"
              value={String(germinationPercent ?? '')}
              inputMode="numeric"
              className="short-field"
            />
          </div>
        </Form>
        <Form
          action={takeBackPacketAction.bind(null, society, id)}
          writeId={randomUUID()}
          submit="It was never there"
          danger
        >
          {null}
        </Form>
      </Reason>
    </li>
  );
}
