import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { askCourse, cancelCourse, moveOneOn } from '@/lib/usecases/course/ask-course';
import { changeBoard, takeOnCourse } from '@/lib/usecases/course/keep-course';
import { readCourse } from '@/lib/usecases/course/read-course';
import { solveCourse } from '@/lib/usecases/course/solve-course';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import { recordTrouble } from '@/lib/usecases/ground/keep-troubles';
import { weekLetter } from '@/app/(member)/[society]/_parts/week-letter';
import { startWork } from '@/lib/usecases/work-queue';
import {
  done,
  makeBed,
  makeMember,
  makePlot,
  makeSociety,
  once,
  refusedWith,
  type TestMember,
} from '../fixtures/society';

const next = Number(new Date().toISOString().slice(0, 4)) + 1;
let holder: TestMember;
let holdingId: string;
let beds: { id: string }[];

beforeAll(async () => {
  const society = await makeSociety();
  holder = await makeMember(society);
  const plot = await makePlot(society, '1', [holder.id]);
  holdingId = plot.holdingId;
  beds = [];
  for (const at of [0, 1, 2, 3]) beds.push(await makeBed(society, plot, at));
  const groups = ['onion', 'kale', 'broad-bean', 'maincrop-potato'];
  for (const back of [1, 2, 3, 4])
    for (const [at, { id: bedId }] of beds.entries())
      await done(
        recordPlanting.run(
          holder.caller,
          once({ bedId, cropKey: groups[(at + back) % 4] ?? '', season: String(next - back) }),
        ),
      );
});

const wanted = (area: string) => ['alliums', 'brassicas', 'legumes', 'potatoes'].map((key) => ({ key, area }));
const ask = (change: object = {}) =>
  once({
    holdingId,
    firstSeason: String(next),
    years: '4',
    wanted: wanted('12'),
    keepOrder: '',
    evenTurns: '',
    bedIds: beds.map(({ id }) => id),
    cells: [],
    ...change,
  });
async function solved(change: object = {}) {
  const { courseId } = await done(askCourse.run(holder.caller, ask(change)));
  await solveCourse({ id: courseId });
  const read = await readCourse.run(holder.caller, { courseId });
  return { courseId, read, plan: read.plan ?? expect.fail(`no plan: ${read.state}`) };
}

describe('a course asked for', () => {
  it('is proven best, keeps every break and gives each crop its ground', async () => {
    const { read, plan } = await solved();
    expect(read.state).toBe('solved');
    expect(plan).toMatchObject({ gap: null, conflict: null, isChanged: false, isAged: false, lines: [] });
    for (const year of [0, 1, 2, 3])
      expect(beds.map(({ id }) => plan.board[id]?.[year]).toSorted()).toEqual([
        'alliums',
        'brassicas',
        'legumes',
        'potatoes',
      ]);
  });

  it('says which wishes clash, and is judged anew when one is given up', async () => {
    const cells = [0, 1].map((year) => ({ bedId: beds[0]?.id, season: next + year, kind: 'must', key: 'alliums' }));
    const { plan } = await solved({ cells, wanted: wanted('') });
    expect(plan.conflict).toEqual([0, 1].map((year) => ({ kind: 'must', bedId: beds[0]?.id, year, key: 'alliums' })));
    expect(plan.lines.some((line) => line.level === 'rules' && line.rule === 'allium-kin')).toBe(true);
    const freed = await solved({ cells: [], wanted: wanted('') });
    expect(freed.plan.conflict).toBeNull();
  });

  it('keeps a trouble’s hosts off its ground', async () => {
    const bedId = beds[3]?.id ?? '';
    await done(
      recordTrouble.run(
        holder.caller,
        once({ bedId, troubleKey: 'clubroot', certainty: 'sure', foundOn: `${next - 1}-06-01` }),
      ),
    );
    const { plan } = await solved({
      wanted: [
        { key: 'brassicas', area: '12' },
        { key: 'alliums', area: '' },
      ],
    });
    expect(plan.board[bedId]).not.toContain('brassicas');
  });
});

describe('a plan in hand', () => {
  it('is changed by hand at a price, taken on, and stands on the board', async () => {
    const { courseId, plan } = await solved({ years: '1', wanted: wanted('') });
    expect(plan.cost.rules).toBe(0);
    const last = await db().planting.findFirstOrThrow({ where: { bedId: beds[0]?.id ?? '', firstSeason: next - 1 } });
    expect(last.cropKey).toBe('kale');
    const cells = [{ bedId: beds[0]?.id, season: next, key: 'brassicas' }];
    await done(changeBoard.run(holder.caller, once({ courseId, cells })));
    const changed = (await readCourse.run(holder.caller, { courseId })).plan ?? expect.fail('no plan');
    expect(changed.isChanged).toBe(true);
    expect(changed.lines).toContainEqual({
      level: 'rules',
      bedId: beds[0]?.id,
      season: next,
      rule: 'brassica-kin',
      areaCm2: 120_000,
    });
    expect(changed.cost.rules).toBeGreaterThan(changed.foundCost.rules);
    await done(takeOnCourse.run(holder.caller, once({ courseId, which: 'first' })));
    await done(takeOnCourse.run(holder.caller, once({ courseId, which: 'first' })));
    const planned = await db().planting.findMany({
      where: { holdingId, firstSeason: next, planned: true, retiredAt: null },
    });
    expect(planned.filter(({ bedId }) => bedId === beds[0]?.id).map(({ cropKey }) => cropKey)).toEqual(['brassicas']);
    expect(
      await refusedWith(changeBoard.run(holder.caller, once({ courseId, cells: [{ ...cells[0], key: 'moss' }] }))),
    ).toEqual(['not-in-course']);
  });

  it('can be last season’s, moved one bed on', async () => {
    const { courseId } = await done(moveOneOn.run(holder.caller, once({ holdingId })));
    const { plan } = await readCourse.run(holder.caller, { courseId });
    const stood = ['brassicas', 'legumes', 'potatoes', 'alliums'];
    expect(beds.map(({ id }) => plan?.board[id]?.[0])).toEqual(stood.map((_, at) => stood[(at + 3) % 4]));
    expect(plan?.seconds).toBeNull();
  });
});

describe('asking', () => {
  it('is refused beside its field where it makes no sense', async () => {
    const refused = (change: object) => refusedWith(askCourse.run(holder.caller, ask(change)));
    expect(await refused({ firstSeason: '2001' })).toEqual(['course-first-season']);
    expect(await refused({ wanted: [] })).toEqual(['nothing-wanted']);
    expect(await refused({ wanted: [{ key: 'alliums', area: 'lots' }] })).toEqual(['area-wrong']);
    expect(await refused({ wanted: [...wanted(''), ...wanted('')] })).toEqual(['wanted-twice']);
    expect(await refused({ wanted: [{ key: 'triffid', area: '' }] })).toEqual(['crop-unknown']);
    expect(await refused({ bedIds: [] })).toEqual(['no-beds-to-plan']);
  });

  it('is not barred for ever by a course that a dead process left behind', async () => {
    const { courseId } = await done(askCourse.run(holder.caller, ask()));
    const gone = new Date(Date.now() - 60_000);
    await db().course.update({ where: { id: courseId }, data: { state: 'solving', beatAt: gone } });
    expect(await readCourse.run(holder.caller, { courseId })).toMatchObject({ isLost: true, plan: null });
    const again = await done(askCourse.run(holder.caller, ask()));
    await done(cancelCourse.run(holder.caller, once(again)));
  });

  it('is worked by the queue, one at a time for a holding, and stops when it is cancelled', async () => {
    const { courseId } = await done(askCourse.run(holder.caller, ask()));
    expect(await refusedWith(askCourse.run(holder.caller, ask()))).toEqual(['one-course-at-a-time']);
    await done(cancelCourse.run(holder.caller, once({ courseId })));
    await solveCourse({ id: courseId });
    expect(await readCourse.run(holder.caller, { courseId })).toMatchObject({ state: 'cancelled', plan: null });
    expect(await refusedWith(cancelCourse.run(holder.caller, once({ courseId })))).toEqual(['course-ended']);
    const queued = await done(askCourse.run(holder.caller, ask()));
    const work = await startWork({ letter: weekLetter });
    try {
      await expect
        .poll(async () => (await readCourse.run(holder.caller, queued)).state, { timeout: 60_000, interval: 100 })
        .toBe('solved');
    } finally {
      await work.stop();
    }
  });
});
