import type { TopicState } from '@/lib/usecases/board/topic-state';
import { dayWords, stateWords } from '@/app/_ui/delivery-words';
import { resultsName, resultsNow } from './results-words';

/** What a thread is about, in a few words. */
export function topicName(state: TopicState): string {
  if (state.kind === 'bed') return `Bed ${state.name}, plot ${state.plotNumber}`;
  if (state.kind === 'date') return dayWords(state.on);
  if (state.kind === 'results') return `What beds gave: ${resultsName(state)}`;
  return state.name;
}

/** How that stands now. */
export function topicNow(state: TopicState): string {
  if (state.kind === 'delivery') return `${stateWords(state.state)}; comes on ${dayWords(state.arrivesOn)}`;
  if (state.kind === 'crop')
    return state.breakYears === null
      ? `${state.group}; no break is asked of it`
      : `${state.group}; ${yearsWords(state.breakYears)} clear between two plantings`;
  if (state.kind === 'trouble')
    return state.clearYears === null
      ? 'no break clears it'
      : `${yearsWords(state.clearYears)} clear where it has been found`;
  if (state.kind === 'results') return resultsNow(state);
  if (state.kind === 'date') return state.inDays === 0 ? 'today' : daysAway(state.inDays);
  if (state.standing === null) return 'what stands there is not shown to neighbours';
  return `${state.season}: ${state.standing.join(', ') || 'nothing on record'}`;
}

/** Its own page, where there is one that everybody may open. */
export function topicPath(state: TopicState): string | null {
  if (state.kind === 'delivery') return `/deliveries/${state.key}`;
  if (state.kind === 'results') return `/board/results?${state.key}`;
  if (state.kind === 'bed' && state.isOwn) return `/ground/beds/${state.key}`;
  return null;
}

/** Crops whose results are asked about beside it: its own, or those of one’s own bed. */
export function topicCrops(state: TopicState): readonly string[] {
  if (state.kind === 'crop') return [state.key];
  return state.kind === 'bed' ? state.ownCrops : [];
}

function yearsWords(years: number): string {
  return years === 1 ? '1 year' : `${years} years`;
}

function daysAway(days: number): string {
  const count = Math.abs(days) === 1 ? '1 day' : `${Math.abs(days)} days`;
  return days > 0 ? `in ${count}` : `${count} ago`;
}
