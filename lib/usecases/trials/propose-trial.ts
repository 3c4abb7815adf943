import 'server-only';
import { z } from 'zod';
import { cropsOf } from '@/lib/data/crop';
import { createTrial, endTrial, lockTrial } from '@/lib/data/trial';
import { blocksOf } from '@/lib/data/trial-block';
import { type CalendarDate, yearOf } from '@/lib/domain/calendar/calendar-date';
import { canCallOffTrial, canProposeTrial } from '@/lib/domain/policy/trial';
import { canEnter } from '@/lib/domain/policy/standing';
import { commitmentOf } from '@/lib/domain/sharing/lot';
import { showsFrom } from '@/lib/domain/trial/shows-from';
import { drawLotBytes } from '@/lib/platform/secret';
import { callOffTrialInput, proposeTrialInput } from '@/lib/schemas/trials/trial';
import { mutation, query } from '../operation';
import { NotFound, refuse } from '../refusal';
import { stateWith, stillIn } from './block-state';
import { tellJoined } from './draw-trial';

/** Numbers of plots for which it is told what they could show. */
const told = [3, 4, 5, 6, 8, 10, 15, 20];

/** What the form of a trial offers, and what so many plots could show. */
export const readProposal = query({
  name: 'read-trial-proposal',
  allow: canProposeTrial,
  input: z.object({}),
  read: async ({ db, scope, today }) => {
    const crops = [...(await cropsOf(db, scope)).values()];
    return {
      today,
      season: yearOf(today),
      crops: crops.map(({ key, name }) => ({ key, name })).sort((a, b) => a.name.localeCompare(b.name, 'en-GB')),
      shows: told.map((plots) => ({ plots, spreads: showsFrom(plots) })),
    };
  },
});

/** Propose a trial: joining opens at once, the bytes of its lot are drawn, and nothing of it changes from then on. */
export const proposeTrial = mutation({
  name: 'propose-trial',
  allow: canProposeTrial,
  input: proposeTrialInput,
  write: async ({ tx, scope, today, now, note }, { writeId: _, ...trial }) => {
    if (!(await cropsOf(tx, scope)).has(trial.cropKey)) refuse('trial-crop-unknown', { field: 'cropKey' });
    checkDays(trial, today);
    if (trial.treatmentA.toLowerCase() === trial.treatmentB.toLowerCase())
      refuse('trial-treatments-alike', { field: 'treatmentB' });
    const bytesHex = drawLotBytes();
    const commitment = commitmentOf(bytesHex);
    const trialId = await createTrial(tx, scope, trial, { bytesHex, commitment, at: now });
    const { cropKey, season, measure, joinByOn, resultsByOn, leastPlots } = trial;
    const facts = { cropKey, season, measure, joinByOn, resultsByOn, leastPlots, commitment };
    note({ verb: 'proposed', thing: 'trial', thingId: trialId, after: facts });
    return { trialId };
  },
});

type Days = { readonly season: number; readonly joinByOn: CalendarDate; readonly resultsByOn: CalendarDate };

function checkDays({ season, joinByOn, resultsByOn }: Days, today: CalendarDate): void {
  if (joinByOn < today) refuse('trial-day-past', { field: 'joinByOn' });
  if (resultsByOn <= joinByOn) refuse('trial-days-out-of-order', { field: 'resultsByOn' });
  const least = yearOf(today);
  if (season < least || season > least + 2)
    refuse('trial-season-wrong', { field: 'season', numbers: { least, most: least + 2 } });
  // Leeks and parsnips are lifted well into the year after.
  const year = yearOf(resultsByOn);
  if (year < season || year > season + 1)
    refuse('trial-season-wrong', { field: 'season', numbers: { least: Math.max(least, year - 1), most: year } });
}

/** Call a trial off, with a reason that stays on record; those who joined are told. */
export const callOffTrial = mutation({
  name: 'call-off-trial',
  allow: canEnter,
  input: callOffTrialInput,
  write: async (context, { trialId, why }) => {
    const { tx, scope, now, today, note } = context;
    const trial = await lockTrial(tx, scope, trialId);
    if (!trial || !canCallOffTrial(scope, trial)) throw new NotFound();
    const blocks = await blocksOf(tx, scope, [trialId]);
    const state = stateWith(trial, blocks, today);
    if (!['joining', 'drawing', 'running'].includes(state)) refuse('trial-over');
    await endTrial(tx, scope, trialId, { at: now, by: { memberId: scope.memberId, why } });
    note({ verb: 'called off', thing: 'trial', thingId: trialId, before: { state }, after: { why } });
    const body = `The trial “${trial.question}” is called off, because: “${why}”. Your ground is yours to use as you like.`;
    await tellJoined(context, stillIn(blocks), 'a trial is called off', body);
    return { trialId };
  },
});
