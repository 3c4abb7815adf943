import { beforeAll, describe, expect, it } from 'vitest';
import { type ShareOutInputs, type ShownShare, workAgain } from '@/lib/domain/sharing/work-again';
import { bookLate } from '@/lib/usecases/deliveries/book-late';
import { bookLoads } from '@/lib/usecases/deliveries/book-loads';
import { enterBeyond, giveUp, tickOff } from '@/lib/usecases/deliveries/collect';
import { closeDelivery, openDelivery, planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { readCredits } from '@/lib/usecases/deliveries/read-credits';
import { readQueue, readQueueFile } from '@/lib/usecases/deliveries/read-queue';
import { settleDelivery } from '@/lib/usecases/deliveries/settle-delivery';
import { confirmShareOut, measureHeap, previewShareOut } from '@/lib/usecases/deliveries/share-out';
import { endTenancy } from '@/lib/usecases/plots/keep-tenancies';
import {
  deliveryFacts,
  done,
  makeBed,
  makeMember,
  makePlot,
  makeSociety,
  once,
  type TestMember,
  type TestSociety,
} from '../fixtures/society';

type Claimant = { readonly holder: TestMember; readonly holdingId: string; readonly plotId: string };

let society: TestSociety;
let claimants: Claimant[];
let deliveryId: string;
let reader: TestMember;

/** Write as the secretary. */
const write = (what: object) => once({ deliveryId, ...what });
const read = async () => {
  const answer = await readQueue.run(reader.caller, { deliveryId });
  if (!answer.result) throw new Error('the lot is revealed');
  return { ...answer, result: answer.result };
};
type Result = Awaited<ReturnType<typeof read>>['result'];

const shownOf = ({ lines }: Result): ShownShare[] =>
  lines.map(({ bookingId: id, share, dueMillionths, creditAfterMillionths }) => ({
    ...{ id, share, dueMillionths, creditAfterMillionths },
  }));
const lineOf = ({ lines }: Result, nth: number) => {
  const line = lines.find(({ holdingId }) => holdingId === claimants[nth]?.holdingId);
  if (!line) throw new Error('every holding keeps its line');
  return line;
};

/** What is shown is what the rule comes to, from what the page itself hands out. */
async function expectAgreement(): Promise<Result> {
  const { result } = await read();
  expect(workAgain(result.inputs, shownOf(result)).differences).toEqual([]);
  expect(result.rounds.reduce((sum, { served }) => sum + served.length, 0)).toBe(result.places);
  return result;
}

beforeAll(async () => {
  society = await makeSociety();
  reader = await makeMember(society, { name: 'A reader' });
  claimants = [];
  for (let nth = 0; nth < 7; nth++) {
    const holder = await makeMember(society, { name: `Unmistakable Holder ${nth}` });
    const plot = await makePlot(society, `Q${nth + 1}`, [holder.id]);
    if (nth % 2 === 0) await makeBed(society, plot);
    claimants.push({ holder, ...plot });
  }
  const secretary = society.secretary.caller;
  deliveryId = (await done(planDelivery.run(secretary, once(deliveryFacts({ amount: '20' }))))).deliveryId;
  await done(openDelivery.run(secretary, write({})));
  for (const [nth, { holder, holdingId }] of claimants.slice(0, 6).entries())
    await done(bookLoads.run(holder.caller, write({ holdingId, asked: String(3 + (nth % 3)), beds: [] })));
});

describe('the queue, from the first preview to the settled delivery', () => {
  it('is not there before the lot is revealed, nor as a file', async () => {
    expect((await readQueue.run(reader.caller, { deliveryId })).result).toBeNull();
    await expect(readQueueFile.run(reader.caller, { deliveryId })).rejects.toThrow();
  });

  it('shows what is reckoned while it is provisional', async () => {
    const { caller } = society.secretary;
    await done(closeDelivery.run(caller, write({})));
    await done(previewShareOut.run(caller, write({})));
    const result = await expectAgreement();
    expect(result).toMatchObject({ provisional: true, places: 20 });
    expect(result.inputs.frozen).toHaveLength(6);
  });

  it('shows what was written down once it is confirmed, and not what is reckoned', async () => {
    const { caller } = society.secretary;
    await done(measureHeap.run(caller, write({ loads: '17' })));
    await done(confirmShareOut.run(caller, write({})));
    const result = await expectAgreement();
    expect(result).toMatchObject({ provisional: false, places: 17, measured: [17] });
    // Whoever tampered with a figure on its way would be told by name.
    const shown = shownOf(result).map((line, at) => (at === 2 ? { ...line, share: line.share + 1 } : line));
    const { differences } = workAgain(result.inputs, shown);
    expect(differences).toEqual([
      { code: 'share', id: shown[2]?.id, shown: shown[2]?.share, found: (shown[2]?.share ?? 0) - 1 },
    ]);
  });

  it('agrees with itself after a re-measuring, a late booking, a give-up and loads beyond a share', async () => {
    const { caller } = society.secretary;
    await done(measureHeap.run(caller, write({ loads: '15' })));
    expect((await expectAgreement()).measured).toEqual([17, 15]);

    const [greedy, absent] = (await read()).result.lines.filter(({ share }) => share >= 2);
    if (!greedy || !absent) throw new Error('somebody has two loads');
    await done(tickOff.run(caller, write({ bookingId: greedy.bookingId, loads: String(greedy.share) })));
    await done(enterBeyond.run(caller, write({ bookingId: greedy.bookingId, loads: '2', reason: 'two too many' })));
    const beyond = await expectAgreement();
    expect(beyond.places).toBeLessThan(beyond.inputs.loads);
    expect(beyond.lines.find(({ bookingId }) => bookingId === greedy.bookingId)).toMatchObject({
      beyond: 2,
      share: greedy.share + 2,
      reason: { code: 'already-collected' },
    });

    await done(giveUp.run(caller, write({ bookingId: absent.bookingId })));
    const given = (await expectAgreement()).lines.find(({ bookingId }) => bookingId === absent.bookingId);
    expect(given).toMatchObject({ gaveUp: true, share: 0, asked: 0, askedFirst: absent.asked });

    const { holder, holdingId } = claimants[6] as Claimant;
    await done(bookLate.run(holder.caller, write({ holdingId, asked: '2', beds: [] })));
    const late = await expectAgreement();
    expect(lineOf(late, 6)).toMatchObject({ late: 0, asked: 2 });
    expect(late.order.at(-1)).toBe(lineOf(late, 6).bookingId);
  });

  it('agrees where loads beyond a share were entered before the share was fetched', async () => {
    const { caller } = society.secretary;
    const next = (await read()).result.lines.find(({ share, collected }) => share >= 2 && collected === 0);
    if (!next) throw new Error('somebody has loads to fetch');
    const { bookingId, share } = next;
    await done(enterBeyond.run(caller, write({ bookingId, loads: '1', reason: 'one too many' })));
    await expectAgreement();
    await done(tickOff.run(caller, write({ bookingId, loads: String(share) })));
    const line = (await expectAgreement()).lines.find((one) => one.bookingId === bookingId);
    expect(line).toMatchObject({ beyond: 1, share: share + 1, collected: share + 1 });
  });

  it('keeps the line of a holding that has ended, with the plots it had', async () => {
    const before = lineOf((await read()).result, 1);
    const { plotId } = claimants[1] as Claimant;
    const from = new Date().toISOString().slice(0, 10);
    await done(endTenancy.run(society.secretary.caller, once({ plotId, from, sure: 'yes' })));
    const result = await expectAgreement();
    expect(lineOf(result, 1)).toEqual({ ...before, former: true });
    expect(before.plots).toEqual(['Q2']);
  });

  it('says which lines are the reader’s own, and names nobody', async () => {
    const [first] = claimants;
    const own = await readQueue.run((first as Claimant).holder.caller, { deliveryId });
    expect(own.result?.lines.filter(({ mine }) => mine).map(({ plots }) => plots)).toEqual([['Q1']]);
    const file = await readQueueFile.run(reader.caller, { deliveryId });
    const said = JSON.stringify([own, await read(), file]);
    for (const { holder } of claimants) {
      expect(said).not.toContain(holder.name);
      expect(said).not.toContain(holder.id);
    }
    expect(said).not.toContain(society.secretary.id);
  });

  it('hands out a file with all that it takes', async () => {
    const { text } = await readQueueFile.run(reader.caller, { deliveryId });
    const file = JSON.parse(text) as { inputs: ShareOutInputs; shown: (ShownShare & { plots: string[] })[] };
    expect(file.shown).toHaveLength(7);
    expect(workAgain(file.inputs, file.shown).differences).toEqual([]);
  });

  it('stays so when it is settled, and the credits of the site sum to nothing', async () => {
    const { caller } = society.secretary;
    for (const { bookingId, share, collected } of (await read()).result.lines)
      if (share > collected) await done(tickOff.run(caller, write({ bookingId, loads: String(share - collected) })));
    await done(settleDelivery.run(caller, write({})));
    const { site } = await expectAgreement();
    expect(site.sumMillionths).toBe(0);
    expect(site.largestMillionths).toBeGreaterThan(0);

    const [manure] = await readCredits.run((claimants[0] as Claimant).holder.caller, {});
    expect(manure).toMatchObject(site);
    const shown = manure?.rows.reduce((sum, { millionths }) => sum + millionths, manure.lapsedMillionths);
    expect(shown).toBe(0);
    const own = manure?.rows.find(({ mine }) => mine);
    expect(own?.plots).toEqual(['Q1']);
    expect(manure?.own.reduce((sum, { changeMillionths }) => sum + changeMillionths, 0)).toBe(own?.millionths);
  });
});
