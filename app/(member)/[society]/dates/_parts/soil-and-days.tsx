import { citation } from '@/lib/domain/catalogue/sources';
import { bestSoilWords, emergenceColumns, emergenceWords, leastSoilWords, warmthWords } from '@/app/_ui/soil-words';
import { TextField } from '@/app/_ui/field';
import { Empty } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import type { Units } from '@/lib/domain/quantity/length';
import { soilTyped } from '@/lib/schemas/dates/dates';

type Props = {
  readonly crops: readonly { readonly key: string; readonly name: string }[];
  readonly typed: string | undefined;
  readonly units: Units;
  /** What else the address holds, and the form must keep. */
  readonly keeps?: Readonly<Record<string, string>>;
};

/** The soil that each crop's seed comes up in, and how long it takes; and what it does in the soil that the member has. */
export function SoilAndDays({ crops, typed, units, keeps = {} }: Props) {
  const soilC = soilTyped(typed);
  const told = crops.filter(({ key }) => leastSoilWords(key, units) || emergenceColumns(key));
  const others = crops.filter((crop) => !told.includes(crop));
  return (
    <>
      <form method="get" action="#soil" className="form sheet-body">
        {Object.entries(keeps).map(([name, value]) => (
          <input key={name} type="hidden" name={name} value={value} />
        ))}
        <TextField
          name="soil"
          label="My soil’s temperature"
          hint="at sowing depth, of a morning: 7 °C, or 45 F"
          value={typed ?? ''}
          inputMode="text"
          className="short-field"
        />
        {soilC === undefined ? (
          <p className="field-error" role="alert">
            Give degrees Celsius, such as 7, or Fahrenheit with an F behind it, such as 45 F; from −20 to 60 °C.
          </p>
        ) : null}
        <button type="submit" className="button">
          What comes up?
        </button>
      </form>
      {told.length === 0 ? <Empty>For none of these crops is a soil temperature published.</Empty> : null}
      <Table
        caption="Soil temperature and days to emerge"
        columns={[
          { head: 'crop' },
          ...(soilC === null || soilC === undefined ? [] : [{ head: `in soil of ${warmthWords(soilC, units)}` }]),
          { head: 'at least', number: true },
          { head: 'best', number: true },
          ...[5, 10, 15, 20, 25].map((celsius) => ({ head: `days at ${warmthWords(celsius, units)}`, number: true })),
        ]}
        rows={told.map(({ key, name }) => ({
          key,
          cells: [
            <span key="crop" className="nowrap">
              {name}
            </span>,
            ...(soilC === null || soilC === undefined ? [] : [emergenceWords(key, soilC, units)]),
            leastSoilWords(key, units) ?? '–',
            bestSoilWords(key, units) ?? '–',
            ...(emergenceColumns(key) ?? ['–', '–', '–', '–', '–']),
          ],
        }))}
      />
      <div className="sheet-body small">
        {others.length ? <p>Not published: {others.map(({ name }) => name.toLowerCase()).join(', ')}.</p> : null}
        <p>
          Least and best: {citation('osu-germination')}. Days: {citation('harrington-minges')}. Near freezing the two
          disagree; the least temperature goes first.
        </p>
      </div>
    </>
  );
}
