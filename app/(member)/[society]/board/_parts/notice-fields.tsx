import { TextField, TickField } from '@/app/_ui/field';

type Props = { readonly pinned: boolean; readonly mustRead: boolean; readonly endsOn: string | null };

/** How a notice stands. */
export function NoticeFields({ pinned, mustRead, endsOn }: Props) {
  return (
    <>
      <TickField name="pinned" label="At the head of the board" ticked={pinned} />
      <TextField
        name="endsOn"
        type="date"
        label="Until"
        value={endsOn ?? ''}
        hint="After that day it is found among the threads. Empty: it stays at the head until you take it down."
      />
      <TickField
        name="mustRead"
        label="Every member is asked to say that they have read it"
        hint="They are told by mail, and you see who has."
        ticked={mustRead}
      />
    </>
  );
}
