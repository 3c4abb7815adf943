import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { BedGrid } from '@/app/_ui/bed-grid';
import { Options, SelectField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { GridSelect } from '@/app/_ui/grid-select';
import { PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { formatArea } from '@/lib/domain/quantity/area';
import { readCourse } from '@/lib/usecases/course/read-course';
import { cancelCourseAction, changeBoardAction, takeOnAction } from '../actions';
import { CourseVerdict } from '../_parts/course-verdict';
import { progressWords, ruleWords } from '../_parts/course-words';
import { Refresh } from '../_parts/refresh';

export const metadata: Metadata = { title: 'A course' };

type Props = { params: Promise<{ society: string; course: string }> };

export default async function CourseResultPage({ params }: Props) {
  const { society, course: courseId } = await params;
  const read = await ask(readCourse, society, { courseId });
  const { firstSeason, years, state, isLost, isOutOfDate, isMoved, holding, beds, kept, options, plan, units } = read;
  const seasons = Array.from({ length: years }, (_, at) => firstSeason + at);
  const span = years === 1 ? `${firstSeason}` : `${firstSeason} to ${firstSeason + years - 1}`;
  const again = `/${society}/ground/course?holding=${holding.id}&from=${courseId}`;
  const working = (state === 'waiting' || state === 'solving') && !isLost;
  const bound = [null, society, courseId] as const;
  const wordOf = (key: string) => (options.find((option) => option.key === key)?.name ?? key).replace(', any', '');
  const bedOf = (id: string) => beds.find((bed) => bed.id === id);
  const rules = plan?.lines.flatMap((line) => (line.level === 'rules' ? [line] : [])) ?? [];
  const advised =
    plan?.lines.flatMap((line) => (line.level === 'order' && line.rule ? [{ ...line, rule: line.rule }] : [])) ?? [];
  const lacking = plan?.lines.flatMap((line) => (line.level === 'shortfall' ? [line] : [])) ?? [];
  return (
    <>
      <PageHead
        title={`${isMoved ? 'Moved one on: ' : 'The course, '}${span}`}
        lead={`${holding.plots.length === 1 ? 'Plot' : 'Plots'} ${holding.plots.join(', ')}, ${beds.length} beds.${kept.length ? ` Kept by standing crops: ${kept.map(({ plotNumber, name }) => `${plotNumber}, ${name}`).join('; ')}.` : ''}`}
      >
        <Link className="button" href={again}>
          {plan ? 'Ask otherwise' : 'Ask again'}
        </Link>
        {plan ? (
          <Link className="button" href={`/${society}/ground/course/${courseId}/print`}>
            To print
          </Link>
        ) : null}
      </PageHead>
      {working ? (
        <Sheet title="Being worked out" wide>
          <p role="status">
            {read.progress ? `Now ${progressWords(read.progress.at)}.` : 'Waiting for its turn.'}{' '}
            {read.progress?.best != null && read.progress.bound != null && read.progress.best > read.progress.bound
              ? `Found so far: ${formatArea(read.progress.best, units)}; none can be below ${formatArea(Math.max(0, read.progress.bound), units)}.`
              : ''}
          </p>
          <Refresh />
          <noscript>
            <p>
              <a href="">Look again</a> in some seconds.
            </p>
          </noscript>
          <Form action={cancelCourseAction.bind(...bound)} writeId={randomUUID()} submit="Cancel it" danger>
            {null}
          </Form>
        </Sheet>
      ) : null}
      {isLost ? (
        <p className="notice short wide">Nobody is at it any more: the service was stopped meanwhile. Ask again.</p>
      ) : null}
      {state === 'cancelled' ? (
        <p className="notice short wide">It was cancelled. What you asked is kept: ask again when you like.</p>
      ) : null}
      {state === 'failed' ? (
        <p className="notice short wide">
          It could not be worked out, and the reason is noted. Ask again; if it stays, tell the secretary.
        </p>
      ) : null}
      {isOutOfDate ? (
        <p className="notice short wide">The beds have changed since this was worked out. Ask again.</p>
      ) : null}
      {plan ? (
        <>
          <CourseVerdict read={read} again={again} />
          <Sheet title="Beds down, seasons across" wide>
            <Form action={changeBoardAction.bind(...bound)} writeId={randomUUID()} submit="Judge it as changed">
              <BedGrid
                caption="What stands on each bed in each season"
                beds={beds}
                nameOf={({ plotNumber, name }) => `${plotNumber}, ${name}`}
                seasons={seasons}
                cell={(bed, season) => ({
                  broken: rules.some((line) => line.bedId === bed.id && line.season === season),
                  content: (
                    <GridSelect
                      name={`c:${bed.id}:${season}`}
                      label={`Plot ${bed.plotNumber}, bed ${bed.name}, ${season}`}
                      value={plan.board[bed.id]?.[season - firstSeason] ?? 'open'}
                    >
                      <Options choices={options.map(({ key }) => ({ value: key, label: wordOf(key) }))} />
                    </GridSelect>
                  ),
                })}
              />
            </Form>
          </Sheet>
          <Sheet title="What speaks against it" flush>
            {rules.length + lacking.length + advised.length === 0 ? (
              <p className="sheet-body">Nothing: every break is kept, and every crop has its ground.</p>
            ) : null}
            <Table
              caption="What speaks against this plan"
              columns={[{ head: 'season' }, { head: 'bed' }, { head: 'why' }, { head: 'ground', number: true }]}
              rows={[
                ...[...rules, ...advised].map((line) => {
                  const bed = bedOf(line.bedId);
                  return {
                    key: `${line.season} ${line.bedId} ${line.rule}`,
                    cells: [
                      line.season,
                      `${bed?.plotNumber}, ${bed?.name}`,
                      ruleWords(line.rule),
                      formatArea(line.areaCm2, units),
                    ],
                  };
                }),
                ...lacking.map((line) => ({
                  key: `${line.season} ${line.key}`,
                  cells: [
                    line.season,
                    '–',
                    `${wordOf(line.key)}: less ground than wanted`,
                    formatArea(line.areaCm2, units),
                  ],
                })),
              ]}
            />
          </Sheet>
          <Sheet title="Turns for manure" flush>
            <Table
              caption="Ground due its turn in each season"
              columns={[
                { head: 'season' },
                { head: 'beds' },
                { head: 'ground', number: true },
                { head: 'barrow-loads', number: true },
              ]}
              rows={plan.turns.map(({ season, bedIds, areaCm2, loads }) => ({
                key: String(season),
                cells: [
                  season,
                  bedIds.map((id) => `${bedOf(id)?.plotNumber} ${bedOf(id)?.name}`).join(', ') || '–',
                  formatArea(areaCm2, units),
                  loads,
                ],
              }))}
            />
            <p className="small soft" style={{ padding: '0 1rem' }}>
              Of rotted horse manure, by the society’s dressing and barrow, rounded up once a season.
            </p>
          </Sheet>
          <Sheet title="Take it on">
            <Form action={takeOnAction.bind(...bound)} writeId={randomUUID()} submit="Put it on the board">
              <SelectField
                name="which"
                label="Which seasons"
                value="first"
                choices={[
                  { value: 'first', label: `${firstSeason} only` },
                  ...(years > 1 ? [{ value: 'all', label: `all, ${span}` }] : []),
                ]}
                hint="In place of what was planned there. What was sown or planted already stays."
              />
            </Form>
            <Reason ask="What that does">
              <p>
                Each bed’s page, your ground and the site plan show it as planned, and the turns and needs follow from
                it. You can change any bed afterwards.
              </p>
            </Reason>
          </Sheet>
        </>
      ) : null}
    </>
  );
}
