import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { PrintButton } from '@/app/_ui/print-button';
import { PageHead } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { readCourse } from '@/lib/usecases/course/read-course';
import { notFound } from 'next/navigation';

export const metadata: Metadata = { title: 'The course to print' };

type Props = { params: Promise<{ society: string; course: string }> };

export default async function CoursePrintPage({ params }: Props) {
  const { society, course: courseId } = await params;
  const { plan, beds, options, firstSeason, years, holding } = await ask(readCourse, society, { courseId });
  if (!plan) notFound();
  const seasons = Array.from({ length: years }, (_, at) => firstSeason + at);
  const wordOf = (key: string) =>
    key === 'open' ? '–' : (options.find((option) => option.key === key)?.name ?? key).replace(', any', '');
  const due = (id: string, season: number) =>
    plan.turns.some((turn) => turn.season === season && turn.bedIds.includes(id));
  return (
    <>
      <PageHead
        title={`${holding.plots.length === 1 ? 'Plot' : 'Plots'} ${holding.plots.join(', ')}: the course, ${seasons[0]}${years > 1 ? ` to ${seasons.at(-1)}` : ''}`}
        lead="For the shed wall. An M marks ground whose turn for manure it is."
      />
      <p className="wide no-print">
        <PrintButton>Print on A4</PrintButton>
      </p>
      <div className="wide paper">
        <Table
          caption="The course"
          columns={[{ head: 'bed' }, ...seasons.map((season) => ({ head: season }))]}
          rows={beds.map((bed) => ({
            key: bed.id,
            cells: [
              <b key="bed">
                {bed.plotNumber}, {bed.name}
              </b>,
              ...seasons.map((season, year) => (
                <span key={season}>
                  {wordOf(plan.board[bed.id]?.[year] ?? 'open')}
                  {due(bed.id, season) ? <b> M</b> : null}
                </span>
              )),
            ],
          }))}
          foot={['loads', ...plan.turns.map(({ season, loads }) => <span key={season}>{loads}</span>)]}
        />
      </div>
    </>
  );
}
