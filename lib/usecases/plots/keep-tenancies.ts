import 'server-only';
import { creditedMaterials, creditsOf, writeCredits } from '@/lib/data/credit';
import { holdingById } from '@/lib/data/holding';
import { memberById } from '@/lib/data/member';
import { plotById } from '@/lib/data/plot';
import {
  beginTenancies,
  changeHolders as writeHolders,
  createHoldings,
  endHolding,
  endTenancyOn,
  holdingWithMembers,
  lockTenancyOn,
  nameBooker as writeBooker,
  plotsHeldOn,
} from '@/lib/data/tenancy';
import { brokenConstraint } from '@/lib/data/db';
import { endStandingOf } from '@/lib/data/standing-booking';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { changeHoldersInput, endTenancyInput, letPlotInput, nameBookerInput } from '@/lib/schemas/plots/plot';
import { tell } from '../tell';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';

async function checkMembers({ tx, scope, today }: WriteContext, memberIds: readonly string[]): Promise<void> {
  if (memberIds.length === 0) refuse('no-holder-chosen', { field: 'memberIds' });
  for (const id of memberIds) {
    const member = await memberById(tx, scope, id, today);
    if (!member?.isHere) throw new NotFound();
  }
}

/** Let a plot to one or several members with equal rights. A household that holds ground already keeps one holding. */
export const letPlot = mutation({
  name: 'let-plot',
  allow: canRunSociety,
  input: letPlotInput,
  write: async (context, { plotId, memberIds, from }) => {
    const { tx, scope, note } = context;
    const plot = await plotById(tx, scope, plotId);
    if (!plot) throw new NotFound();
    await checkMembers(context, memberIds);
    if (await lockTenancyOn(tx, scope, plotId, from))
      refuse('plot-let-already', { field: 'from', numbers: { number: plot.number } });
    const known = await holdingWithMembers(tx, scope, memberIds, context.today);
    const [holdingId = ''] = known ? [known] : await createHoldings(tx, scope, [{ memberIds, fromOn: from }]);
    await beginTenancies(tx, scope, [{ plotId, holdingId, fromOn: from }]).catch((error) => {
      // A later tenancy is there already, or another secretary was quicker.
      if (brokenConstraint(error) === 'tenancy_once')
        refuse('plot-let-already', { field: 'from', numbers: { number: plot.number } });
      throw error;
    });
    note({
      verb: 'let',
      thing: 'plot',
      thingId: plotId,
      forHoldingId: holdingId,
      after: { number: plot.number, memberIds: [...memberIds], from },
    });
    await tell(
      context,
      memberIds,
      `plot ${plot.number} is yours`,
      `Plot ${plot.number} is let to you from ${from}. Sign in to draw its beds; what stood on the ground before is there already.`,
    );
    return { holdingId };
  },
});

/** End a tenancy from a day. The ground keeps its history; a holding without ground ends, and its credit lapses. */
export const endTenancy = mutation({
  name: 'end-tenancy',
  allow: canRunSociety,
  input: endTenancyInput,
  write: async (context, { plotId, from }) => {
    const { tx, scope, note } = context;
    const plot = await plotById(tx, scope, plotId);
    if (!plot) throw new NotFound();
    const tenancy = await lockTenancyOn(tx, scope, plotId, from < context.today ? from : context.today);
    if (!tenancy) refuse('plot-not-let', { field: 'from', numbers: { number: plot.number } });
    if (from <= tenancy.fromOn) refuse('end-before-start', { field: 'from', numbers: { from: tenancy.fromOn } });
    await endTenancyOn(tx, scope, tenancy.id, from);
    const left = await plotsHeldOn(tx, scope, tenancy.holdingId, from);
    if (left === 0) {
      await endHolding(tx, scope, tenancy.holdingId, from);
      await lapse(context, tenancy.holdingId);
      for (const thingId of await endStandingOf(tx, scope, tenancy.holdingId, context.now))
        note({ verb: 'ended', thing: 'standing booking', thingId, forHoldingId: tenancy.holdingId });
    }
    note({
      verb: 'tenancy ended',
      thing: 'plot',
      thingId: plotId,
      forHoldingId: tenancy.holdingId,
      before: { from: tenancy.fromOn },
      after: { until: from, holdingEnds: left === 0 },
    });
    return { holdingEnds: left === 0 };
  },
});

async function lapse({ tx, scope, now }: WriteContext, holdingId: string): Promise<void> {
  for (const materialKey of await creditedMaterials(tx, scope)) {
    const credit = (await creditsOf(tx, scope, materialKey)).get(holdingId) ?? 0;
    const entries = [
      { holdingId, changeMillionths: -credit },
      { holdingId: null, changeMillionths: credit },
    ];
    await writeCredits(tx, scope, { materialKey, deliveryId: null, code: 'leaver', at: now, entries });
  }
}

/** Name which holder alone books, when holders have fallen out; or let any of them again. */
export const nameBooker = mutation({
  name: 'name-booker',
  allow: canRunSociety,
  input: nameBookerInput,
  write: async (context, { holdingId, memberId }) => {
    const { tx, scope, today, note } = context;
    const holding = await holdingById(tx, scope, holdingId, today);
    if (!holding) throw new NotFound();
    if (memberId && !holding.memberIds.includes(memberId)) refuse('booker-not-holder', { field: 'memberId' });
    await writeBooker(tx, scope, holdingId, memberId);
    note({
      verb: 'booker named',
      thing: 'holding',
      thingId: holdingId,
      forHoldingId: holdingId,
      before: { memberId: holding.bookerMemberId },
      after: { memberId },
    });
    await tell(
      context,
      holding.memberIds,
      'who books for your ground',
      memberId
        ? `From now on ${holding.members.find(({ id }) => id === memberId)?.name ?? 'one holder'} books for your holding.`
        : 'From now on any holder books for your holding.',
    );
    return { holdingId };
  },
});

/** Change who holds a holding's ground, all with equal rights. */
export const changeHolders = mutation({
  name: 'change-holders',
  allow: canRunSociety,
  input: changeHoldersInput,
  write: async (context, { holdingId, memberIds, from }) => {
    const { tx, scope, today, note } = context;
    const holding = await holdingById(tx, scope, holdingId, today);
    if (!holding) throw new NotFound();
    await checkMembers(context, memberIds);
    const leave = holding.memberIds.filter((id) => !memberIds.includes(id));
    // Another household gets a holding of its own: notes, names and credit stay with this one.
    if (leave.length === holding.memberIds.length) refuse('no-holder-stays', { field: 'memberIds' });
    const join = memberIds.filter((id) => !holding.memberIds.includes(id));
    await writeHolders(tx, scope, holdingId, { leave, join, from }).catch((error) => {
      if (brokenConstraint(error) === 'holding_member_days') refuse('holder-came-later', { field: 'from' });
      throw error;
    });
    if (holding.bookerMemberId && leave.includes(holding.bookerMemberId)) await writeBooker(tx, scope, holdingId, null);
    note({
      verb: 'holders changed',
      thing: 'holding',
      thingId: holdingId,
      forHoldingId: holdingId,
      before: { memberIds: [...holding.memberIds] },
      after: { memberIds: [...memberIds], from },
    });
    await tell(
      context,
      [...new Set([...holding.memberIds, ...memberIds])],
      'who holds your ground',
      `The holders of plot ${holding.plots.map(({ number }) => number).join(', ')} change from ${from}.`,
    );
    return { holdingId };
  },
});
