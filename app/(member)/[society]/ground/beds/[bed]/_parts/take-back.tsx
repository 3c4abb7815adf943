import { randomUUID } from 'node:crypto';
import { Form } from '@/app/_ui/form';
import { Reason } from '@/app/_ui/sheet';

/** Take a record back: asked once. */
export function TakeBack({ action }: { action: Parameters<typeof Form>[0]['action'] }) {
  return (
    <Reason ask="Take back">
      <Form action={action} writeId={randomUUID()} submit="Yes, take it back" danger className="inline-form">
        {null}
      </Form>
    </Reason>
  );
}
