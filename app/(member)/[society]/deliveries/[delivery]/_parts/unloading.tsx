import { randomUUID } from 'node:crypto';
import { Form } from '@/app/_ui/form';
import { Sheet } from '@/app/_ui/sheet';
import { unloadAction } from '../../actions';
import type { Read } from './read';

/** Who helps to unload, where anybody is wanted. */
export function Unloading({ read: { delivery, unloaders, iUnload }, society }: { read: Read; society: string }) {
  if (!delivery.unloadersWanted || !['open', 'closed', 'tipped'].includes(delivery.state)) return null;
  return (
    <Sheet title="Unloading">
      <p>
        {delivery.unloadersWanted} wanted; {unloaders.length ? unloaders.join(', ') : 'nobody yet'}.
      </p>
      <Form
        action={unloadAction.bind(null, society, delivery.id)}
        writeId={randomUUID()}
        submit={iUnload ? 'I can’t after all' : 'I can help'}
      >
        <input type="hidden" name="offers" value={iUnload ? '' : 'yes'} />
      </Form>
    </Sheet>
  );
}
