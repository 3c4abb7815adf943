import { creditWords, loadsWords, reasonWords, unitWord } from '@/app/_ui/delivery-words';
import type { LoadUnit } from '@/lib/domain/quantity/load-mass';
import type { QueueLine, QueueResult } from './queue-result';

const stageNames: Record<string, string> = { needs: 'needs', wants: 'wants', late: 'waiting list' };

/** What a holding is called on this page: its plots, and no name. */
export function holdingWords({ plots, former }: Pick<QueueLine, 'plots' | 'former'>): string {
  if (plots.length === 0) return 'a former holding';
  return former ? `${plots.join('+')} (a former holding)` : plots.join('+');
}

/** A round by its name: needs, round 3. */
export function roundWords({ stage, round }: { readonly stage: string; readonly round: number }): string {
  return `${stageNames[stage] ?? stage}, round ${round}`;
}

/** Where the heap ended. */
export function endWords({ stage, round, contenders, left }: QueueResult['ended'], unit: LoadUnit): string {
  if (stage === 'all-met') return 'Everything asked for is met.';
  if (round === 0) return `The heap ended before the first round of ${stageNames[stage] ?? stage}.`;
  const where = `The heap ended in ${roundWords({ stage, round })}`;
  return left ? `${where}: ${loadsWords(left, unit)} for ${contenders} claims.` : `${where}, to the ${unitWord(unit)}.`;
}

/** The reason of a line, with the round that met it in full, if one did, and what became of the share at the heap. */
export function whyWords(line: QueueLine, metIn?: string): string {
  const { reason, creditBeforeMillionths, gaveUp, beyond, asked, askedFirst } = line;
  const why = reasonWords(reason, creditBeforeMillionths);
  const said = [why];
  if (metIn) said[0] = reason.code === 'met-in-full' ? `${why} in ${metIn}` : `${why}; met in full in ${metIn}`;
  if (gaveUp) said.push(askedFirst > asked ? `the rest given up (had asked ${askedFirst})` : 'the rest given up');
  if (beyond > 0) said.push(`took ${beyond} beyond its share`);
  return said.join('; ');
}

/** How many places the heap reached, where that is not the same as its loads. */
export function shortQueueWords({ places, inputs, ended, lines }: QueueResult, unit: LoadUnit): string {
  if (places === inputs.loads) return '';
  const heap = loadsWords(inputs.loads, unit);
  const beyond = lines.reduce((sum, line) => sum + line.beyond, 0);
  const ahead = `Loads were taken beyond a share (${loadsWords(beyond, unit)}), so the heap of ${heap} reaches only the first ${places} places of the queue.`;
  return ended.stage === 'all-met' ? `The whole queue is ${places} places, shorter than the heap of ${heap}.` : ahead;
}

/** What a credit means in words. */
export function owedWords(millionths: number, unit: LoadUnit): string {
  if (millionths === 0) return 'is owed nothing from before';
  const amount = creditWords(Math.abs(millionths)).slice(1);
  return millionths > 0
    ? `is owed ${amount} of a ${unitWord(unit)} from before`
    : `had ${amount} of a ${unitWord(unit)} more than its due before`;
}
