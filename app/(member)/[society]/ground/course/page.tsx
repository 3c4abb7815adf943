import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { BedGrid } from '@/app/_ui/bed-grid';
import { whenWords } from '@/app/_ui/delivery-words';
import { SelectField, TextField, TickField, TickGroup } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { cropGroupName, cropGroups } from '@/lib/domain/catalogue/crop-groups';
import { formatArea, squareFootCm2 } from '@/lib/domain/quantity/area';
import { wishRows } from '@/lib/schemas/ground/course';
import { readCourseForm } from '@/lib/usecases/course/read-course';
import { withWanted } from '@/lib/domain/course/with-wanted';
import { askCourseAction, moveOneOnAction } from './actions';
import { wantedFrom } from './_parts/wanted-from';
import { WishCell } from './_parts/wish-cell';

export const metadata: Metadata = { title: 'The coming years' };

type Search = { holding?: string; from?: string; without?: string; years?: string; want?: string };
type Props = { params: Promise<{ society: string }>; searchParams: Promise<Search> };

export default async function CoursePage({ params, searchParams }: Props) {
  const { society } = await params;
  const search = await searchParams;
  const read = await ask(readCourseForm, society, { holdingId: search.holding ?? null, from: search.from ?? null });
  if (!read.holding)
    return (
      <>
        <PageHead title="The coming years" />
        <Empty>You hold no plot at present. Once one is let to you, its course is planned here.</Empty>
      </>
    );
  const { holding, beds, crops, courses, usual, before, today, units, timeZone, others } = read;
  const nextSeason = Number(today.slice(0, 4)) + 1;
  const firstSeason = before?.firstSeason ?? nextSeason;
  const years = Math.min(6, Math.max(1, Number(search.years) || before?.years || 4));
  const seasons = Array.from({ length: years }, (_, at) => firstSeason + at);
  // What was asked before, less the wish that was given up.
  const asked = (before?.wishes.options ?? usual).filter(({ key }) => `wanted:${key}` !== search.without);
  const wantedCrop = wantedFrom(search.want, crops);
  const wished = wantedCrop ? withWanted(asked, wantedCrop) : asked;
  const cells = (before?.wishes.cells ?? []).filter(
    ({ bedId, season }) => `must:${bedId}:${season}` !== search.without,
  );
  const choices = cropGroups
    .filter(({ key }) => key !== 'standing')
    .flatMap(({ key: group }) =>
      crops
        .filter(({ cropGroup }) => cropGroup === group)
        .sort((a, b) => Number(b.key === group) - Number(a.key === group) || a.name.localeCompare(b.name, 'en-GB'))
        .map(({ key, name }) => ({ value: key, label: name, group: cropGroupName(group) })),
    );
  const groupChoices = choices.filter(({ value }) => cropGroups.some(({ key }) => key === value));
  // To a tenth, and never more than what stands there.
  const typedArea = (areaCm2: number) =>
    areaCm2 === 0 ? '' : String(Math.floor((areaCm2 / (units === 'metric' ? 10_000 : squareFootCm2)) * 10) / 10);
  const area = beds.reduce((sum, bed) => sum + bed.areaCm2, 0);
  return (
    <>
      <PageHead
        title="The coming years"
        lead={`${holding.plots.length === 1 ? 'Plot' : 'Plots'} ${holding.plots.join(', ')}: ${beds.length} beds, ${formatArea(area, units)}. Say what you want; the best course for your beds is worked out, and proven.`}
      >
        <Link className="button" href={`/${society}/ground${search.holding ? `?holding=${holding.id}` : ''}`}>
          Back to the ground
        </Link>
        {others.map(({ id, plots }) => (
          <Link key={id} className="button" href={`?holding=${id}`}>
            Plot {plots.join(', ')}
          </Link>
        ))}
      </PageHead>
      {beds.length === 0 ? (
        <Empty>No bed is drawn yet. Draw them first; then their course can be planned.</Empty>
      ) : (
        <Sheet title="What you want" wide>
          {wantedCrop ? (
            <p className="notice kept" role="status">
              {crops.find(({ key }) => key === wantedCrop.key)?.name}: {formatArea(wantedCrop.areaCm2, units)}, so that
              the store lasts till the crop after. It is filled in below; change what you like.
            </p>
          ) : null}
          <Form action={askCourseAction.bind(null, society, holding.id)} writeId={randomUUID()} submit="Work it out">
            <div className="row">
              <TextField
                name="firstSeason"
                label="First season"
                value={String(firstSeason)}
                inputMode="numeric"
                className="short-field"
              />
              <SelectField
                name="years"
                label="How many"
                value={String(years)}
                choices={[1, 2, 3, 4, 5, 6].map((count) => ({ value: String(count), label: String(count) }))}
                className="short-field"
              />
            </div>
            <fieldset>
              <legend>Crops and groups, each with the ground it wants every season</legend>
              <p className="hint">
                In the order in which they follow each other on a bed, if you keep one. A group stands for its crop
                until you settle it. No area: it may stand where it fits.
              </p>
              {Array.from({ length: wishRows }, (_, row) => (
                <div className="wish-row" key={row}>
                  <SelectField
                    name={`wanted.${row}.key`}
                    label={`Crop or group, ${row + 1}`}
                    empty="none"
                    value={wished[row]?.key ?? ''}
                    choices={choices}
                  />
                  <TextField
                    name={`wanted.${row}.area`}
                    label="Area"
                    value={typedArea(wished[row]?.areaCm2 ?? 0)}
                    suffix={units === 'metric' ? 'm²' : 'sq ft'}
                    className="short-field"
                  />
                </div>
              ))}
            </fieldset>
            <TickField
              name="keepOrder"
              label="Keep this order on each bed where it can be kept"
              ticked={before?.wishes.keepOrder ?? true}
            />
            <TickField
              name="evenTurns"
              label="Even out the turns for manure"
              hint="So that each autumn needs about the same loads."
              ticked={before?.wishes.evenTurns ?? false}
            />
            <TickGroup name="bedIds" legend="Beds to plan" kind="checkbox" className="tick-columns">
              {beds.map(({ id, name, plotNumber, areaCm2 }) => (
                <TickField
                  key={id}
                  name="bedIds"
                  value={id}
                  label={`${plotNumber}, bed ${name}`}
                  hint={formatArea(areaCm2, units)}
                  ticked={before ? before.wishes.bedIds.includes(id) : true}
                />
              ))}
            </TickGroup>
            <Reason
              ask={cells.length ? `What is fixed or preferred (${cells.length})` : 'Fix or prefer something on a bed'}
            >
              <BedGrid
                caption="What must or would rather stand on each bed"
                beds={beds}
                nameOf={({ plotNumber, name }) => `${plotNumber}, ${name}`}
                seasons={seasons}
                cell={(bed, season) => {
                  const cell = cells.find((one) => one.bedId === bed.id && one.season === season);
                  return {
                    content: (
                      <WishCell
                        name={`c:${bed.id}:${season}`}
                        label={`Plot ${bed.plotNumber}, bed ${bed.name}, ${season}`}
                        value={cell ? `${cell.kind}:${cell.key}` : ''}
                        choices={groupChoices}
                      />
                    ),
                  };
                }}
              />
            </Reason>
          </Form>
        </Sheet>
      )}
      {beds.length ? (
        <Sheet title="Or move everything one bed on">
          <p>
            Each bed takes next season what stands now on the bed before it. It is judged like any plan, and you can
            change it by hand.
          </p>
          <Form action={moveOneOnAction.bind(null, society, holding.id)} writeId={randomUUID()} submit="Move one on">
            {null}
          </Form>
        </Sheet>
      ) : null}
      {courses.length ? (
        <Sheet title="Worked out before">
          <ul>
            {courses.map(({ id, firstSeason: from, years: count, state, askedAt, takenOnAt, isMoved }) => (
              <li key={id}>
                <Link href={`/${society}/ground/course/${id}`}>
                  {isMoved ? 'Moved one on, ' : ''}
                  {count === 1 ? from : `${from} to ${from + count - 1}`}
                </Link>{' '}
                <span className="soft small">
                  {takenOnAt ? 'taken on' : state}, {whenWords(askedAt, timeZone)}
                </span>
              </li>
            ))}
          </ul>
        </Sheet>
      ) : null}
    </>
  );
}
