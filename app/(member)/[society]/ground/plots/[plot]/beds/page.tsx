import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { SitePlan } from '@/app/_ui/site-plan';
import { readPlot } from '@/lib/usecases/ground/read-plot';
import { DrawBed } from '../../../_parts/draw-bed';
import { addBedsAction } from '../../../actions';

export const metadata: Metadata = { title: 'Draw beds' };

export default async function BedsPage({ params }: { params: Promise<{ society: string; plot: string }> }) {
  const { society, plot: plotId } = await params;
  const { plot, season, units, next } = await ask(readPlot, society, { plotId });
  const example = units === 'metric' ? '1.2 m' : '4 ft';
  return (
    <>
      <PageHead
        title={`Draw beds on plot ${plot.number}`}
        lead={
          plot.polygon ? undefined : 'Nobody has measured this plot yet. Beds can be drawn all the same, by their size.'
        }
      >
        <Link className="button" href={`/${society}/ground`}>
          Back to my ground
        </Link>
      </PageHead>
      <Sheet title="Size and position">
        <Form
          action={addBedsAction.bind(null, society, plotId)}
          writeId={randomUUID()}
          submit="Draw"
          labels={{
            name: 'Name',
            width: 'Width',
            length: 'Length',
            x: 'From the left',
            y: 'From the top',
            gap: 'Path',
            count: 'How many',
          }}
        >
          <TextField
            name="name"
            label="Name"
            value={String(plot.beds.length + 1)}
            hint="Several at once get 1, 2, 3 … after it."
            className="short-field"
          />
          <div className="row">
            <TextField name="width" label="Width" hint={`such as ${example}`} className="short-field" />
            <TextField
              name="length"
              label="Length"
              hint={units === 'metric' ? 'such as 3.6 m' : 'such as 12 ft 6 in'}
              className="short-field"
            />
          </div>
          <div className="row">
            <TextField name="count" label="How many alike" value="1" inputMode="numeric" className="short-field" />
            <TextField
              name="gap"
              label="Path between"
              hint={units === 'metric' ? '60 cm if left empty' : '2 ft if left empty'}
              {...(units === 'imperial' ? { value: '2 ft' } : {})}
              className="short-field"
            />
          </div>
          <div className="row">
            <TextField name="x" label="From the left" hint={`if empty: ${next.x}`} className="short-field" />
            <TextField name="y" label="From the top" hint={`if empty: ${next.y}`} className="short-field" />
          </div>
          <TextField
            name="from"
            type="date"
            label="A bed since"
            value={`${Number(season) - 6}-01-01`}
            hint="Past seasons can be filled in from then on."
          />
        </Form>
      </Sheet>
      <Sheet title="The plot to scale" flush>
        <DrawBed
          polygon={plot.polygon}
          beds={plot.beds.map(({ name, footprint }) => ({ name, footprint }))}
          units={units}
        >
          <SitePlan name={`Plot ${plot.number}`} season={season} plots={[plot]} only={plot.id} />
        </DrawBed>
      </Sheet>
    </>
  );
}
