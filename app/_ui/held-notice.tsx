import type { DeliveryState } from '@/lib/domain/delivery/steps';
import { whenWords } from './delivery-words';

type Props = {
  readonly held: { readonly since: Date; readonly reason: string } | null;
  readonly state: DeliveryState;
  readonly timeZone: string;
};

/** That a delivery is held, since when and why; nothing where it is not. */
export function HeldNotice({ held, state, timeZone }: Props) {
  if (!held) return null;
  return (
    <div className="notice short wide">
      <p>
        <strong>{state === 'called_off' ? 'Was held' : 'Held'}</strong>, from {whenWords(held.since, timeZone)}:{' '}
        {held.reason}
      </p>
      {state === 'called_off' ? null : (
        <p>It is not shared out until the secretary decides. Bookings stand. Take none of it.</p>
      )}
    </div>
  );
}
