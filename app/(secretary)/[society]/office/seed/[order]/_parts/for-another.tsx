import { SelectField } from '@/app/_ui/field';
import { Sheet } from '@/app/_ui/sheet';
import type { OrderProps } from './read';

/** The way to the list of somebody without an account. */
export function ForAnother({ society, read: { order, choices } }: OrderProps) {
  return (
    <Sheet title="Put somebody’s list down">
      <form method="get" action={`/${society}/seed/orders/${order.id}`} className="form">
        <SelectField
          name="holding"
          label="Whose"
          hint="For those without an account; the book says that you did."
          choices={choices.holdings}
        />
        <button type="submit" className="button">
          Open their list
        </button>
      </form>
    </Sheet>
  );
}
