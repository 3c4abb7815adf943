import { TextField } from './field';

/** From which day to which; under an address of its own. */
export function DaysForm({ from, to, children }: { from: string; to: string; children?: React.ReactNode }) {
  return (
    <form className="row wide no-print" method="get">
      <TextField name="from" type="date" label="From" value={from} />
      <TextField name="to" type="date" label="To" value={to} />
      {children}
      <button type="submit" className="button">
        Show
      </button>
    </form>
  );
}
