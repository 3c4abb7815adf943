import 'server-only';
import type { HoldingOnDay } from '@/lib/data/holding';
import { type TrialRecord, trialsOf } from '@/lib/data/trial';
import { type BlockRecord, blocksOf } from '@/lib/data/trial-block';
import { addDays, daysBetween } from '@/lib/domain/calendar/calendar-date';
import type { Dated } from '@/lib/domain/reminders/dated';
import { trialState } from '@/lib/domain/trial/trial-state';
import type { ReadContext } from '../operation';
import { resultOf, stateWith, stillIn } from './block-state';

type OfBlock = {
  readonly trialId: string;
  readonly blockId: string;
  readonly question: string;
  readonly plotNumber: string;
};

/** What a trial wants of those who joined it: to do A here and B there, and to say what came of it. */
export type TrialDue =
  | (OfBlock & { readonly code: 'trial-treat'; readonly a: string; readonly b: string })
  | (OfBlock & {
      readonly code: 'trial-result';
      readonly missing: number;
      readonly resultsByOn: string;
      readonly daysLeft: number;
    });

/** Results are asked for in the last weeks [days]. */
const asksBefore = 28;

/** What trials want of the viewer's holdings. */
export async function dueOfTrials(context: ReadContext, holdings: readonly HoldingOnDay[]): Promise<TrialDue[]> {
  return (await ownBlocks(context, holdings)).flatMap(({ trial, block }) => dueOf(context, trial, block));
}

type OwnBlock = { readonly trial: TrialRecord; readonly block: BlockRecord };

/** The blocks of some holdings in trials that are laid out and not reported. */
async function ownBlocks({ db, scope, today }: ReadContext, holdings: readonly HoldingOnDay[]): Promise<OwnBlock[]> {
  const ids = new Set(holdings.map(({ id }) => id));
  if (ids.size === 0) return [];
  const trials = (await trialsOf(db, scope)).filter((trial) => trialState(trial, today, false) === 'running');
  if (trials.length === 0) return [];
  const blocks = await blocksOf(
    db,
    scope,
    trials.map(({ id }) => id),
  );
  return trials.flatMap((trial) => {
    const its = blocks.filter(({ trialId }) => trialId === trial.id);
    if (stateWith(trial, its, today) !== 'running') return [];
    return stillIn(its).flatMap((block) => (ids.has(block.holdingId) ? [{ trial, block }] : []));
  });
}

function dueOf({ today }: ReadContext, { id, question, resultsByOn }: TrialRecord, block: BlockRecord): TrialDue[] {
  const common = { trialId: id, blockId: block.id, question, plotNumber: block.plotNumber };
  const missing = block.grounds.filter((ground) => resultOf(ground) === null).length;
  const daysLeft = daysBetween(today, resultsByOn);
  const isTreated = block.treatedOn !== null || missing < block.grounds.length;
  return [
    ...(isTreated ? [] : [{ code: 'trial-treat' as const, ...common, a: bedOf(block, 'A'), b: bedOf(block, 'B') }]),
    ...(missing && daysLeft <= asksBefore
      ? [{ code: 'trial-result' as const, ...common, missing, resultsByOn, daysLeft }]
      : []),
  ];
}

function bedOf({ grounds }: BlockRecord, treatment: 'A' | 'B'): string {
  const ground = grounds.find((one) => one.treatment === treatment);
  return ground ? `${ground.bedName}:${ground.piece}` : '';
}

/** The last days of joining, for whoever has ground, and of results for those who joined. */
export async function datesOfTrials(context: ReadContext, holdings: readonly HoldingOnDay[]): Promise<Dated[]> {
  if (holdings.length === 0) return [];
  const { db, scope, today } = context;
  const soon = addDays(today, 366);
  const open = (await trialsOf(db, scope)).filter((trial) => trialState(trial, today, false) === 'joining');
  const dated = (key: string, code: string, day: TrialRecord['joinByOn'], { id, question }: TrialRecord): Dated[] =>
    day > soon ? [] : [{ key, code, from: day, to: day, facts: { trialId: id, question } }];
  return [
    ...open.flatMap((trial) => dated(`trial-joining ${trial.id}`, 'trial-joining-closes', trial.joinByOn, trial)),
    ...(await ownBlocks(context, holdings)).flatMap(({ trial, block }) =>
      dated(`trial-results ${block.id}`, 'trial-results-due', trial.resultsByOn, trial),
    ),
  ];
}
