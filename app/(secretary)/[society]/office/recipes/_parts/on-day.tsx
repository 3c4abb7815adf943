import { TextField } from '@/app/_ui/field';

/** Choose the day that the recipes are looked at for, and from which what is set then holds. */
export function OnDay({ on }: { on: string }) {
  return (
    <form className="inline-form" method="get">
      <TextField name="on" type="date" label="As from" value={on} />
      <button type="submit" className="button">
        Show
      </button>
    </form>
  );
}
