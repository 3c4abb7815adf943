import { randomUUID } from 'node:crypto';
import { db } from '@/lib/data/db';
import { todayIn } from '@/lib/platform/clock';
import type { Caller } from '@/lib/usecases/operation';
import { changeHabits } from '@/lib/usecases/recipes/change-habits';
import { changeSetting } from '@/lib/usecases/settings/settings';
import { done, makeSociety, once } from '../fixtures/society';
import { makeBallots } from './fill/ballots';
import { makeBoard } from './fill/board';
import { makeDeliveries } from './fill/deliveries';
import { makeGround } from './fill/ground';
import { makeHarvests } from './fill/harvest';
import { makeMembers, type Word } from './fill/members';
import { makeMoney } from './fill/money';
import { makeNotes } from './fill/notes';
import { makePaths } from './fill/paths';
import { makeReminders } from './fill/reminders';
import { makeTests } from './fill/residue';
import { makeSeed } from './fill/seed';
import { makeStore } from './fill/store';
import { makeSupplier } from './fill/suppliers';
import { makeTrials } from './fill/trials';
import { makeWaiting } from './fill/waiting';
import type { Ids, Person } from './row';

export type FilledSociety = {
  readonly id: string;
  readonly slug: string;
  /** Stands in every text of the society, and nowhere else. */
  readonly tag: string;
  readonly ids: Ids;
  readonly callers: Readonly<Record<Person, Caller>>;
};

/**
 * Make a society with something of everything, each text of it marked with the society's tag.
 *
 * @param wanted  the ids that are wanted, where the deliveries among them are enough
 */
export async function fillSociety(wanted?: readonly (keyof Ids)[]): Promise<FilledSociety> {
  const tag = `zq${randomUUID().slice(0, 8)}`;
  const word: Word = (what) => `${tag} ${what}`;
  const society = await makeSociety(tag);
  await db().site.update({ where: { id: society.siteId }, data: { name: word('site') } });
  const members = await makeMembers(society, word);
  // First, since the book shows its newest page.
  const board = await makeBoard(word, members);
  const ballots = await makeBallots(word, members);
  await makeReminders(members);
  const ground = await makeGround(society, word, members);
  const { holdingId } = ground.ids;
  const holdings = { holdingId, otherHoldingId: ground.otherHoldingId };
  const seed = await makeSeed(word, members, holdings, wanted);
  const deliveries = await makeDeliveries(word, members, ground, wanted);
  const waiting = await makeWaiting(word, members, ground, wanted);
  const harvests = await makeHarvests(word, members, ground);
  await makeNotes(members, holdings);
  const paths = await makePaths(word, members, society.siteId);
  const suppliers = await makeSupplier(word, members, deliveries);
  const tests = await makeTests(word, members, deliveries.openId);
  const store = await makeStore(word, members, { ...ground.ids, otherHoldingId: ground.otherHoldingId });
  const trials = await makeTrials(word, members, { ...ground.ids, otherHoldingId: ground.otherHoldingId });
  const money = await makeMoney(word, members, ground.ids.holdingId, deliveries.settledId);
  const { secretary, chair, treasurer, gateHelper, holder, neighbour } = members;
  const rule = once({ key: 'barrowLitres', value: '85', from: todayIn('Europe/London') });
  await done(changeSetting.run(secretary.caller, rule));
  await done(changeHabits.run(holder.caller, once({ bodyMassKg: String(holderWeighsKg), ageBand: '60-or-over' })));
  const figure = figureOf(tag);
  const credit = { societyId: society.id, materialKey: word('material'), code: 'settled' };
  await db().creditEntry.createMany({
    data: [
      { ...credit, holdingId: ground.ids.holdingId, changeMillionths: figure },
      { ...credit, holdingId: ground.otherHoldingId, changeMillionths: -figure },
    ],
  });
  return {
    id: society.id,
    slug: society.slug,
    tag,
    ids: {
      ...ground.ids,
      ...harvests,
      ...deliveries,
      ...tests,
      ...money,
      ...paths,
      ...waiting,
      ...suppliers,
      ...seed,
      ...store,
      ...board,
      ...trials,
      ...ballots,
      siteId: society.siteId,
      holderId: holder.id,
      spareMemberId: members.spare.id,
      leftMemberId: members.left.id,
      noAccountId: members.noAccount.id,
      invitedId: members.invited.id,
    },
    callers: {
      secretary: secretary.caller,
      chair: chair.caller,
      treasurer: treasurer.caller,
      gate_helper: gateHelper.caller,
      holder: holder.caller,
      neighbour: neighbour.caller,
    },
  };
}

/** What the holder has said of themselves, and nobody else has [kg]. */
export const holderWeighsKg = 187;

/** The society's one credit, which no other society has [10⁻⁶ load]. */
export function figureOf(tag: string): number {
  return 10_000_000_000 + Number.parseInt(tag.slice(2), 16);
}
