import { todayIn } from '@/lib/platform/clock';
import { giveResult } from '@/lib/usecases/trials/give-result';
import { joinTrial, readJoining } from '@/lib/usecases/trials/join-trial';
import { leaveTrial, treatBlock } from '@/lib/usecases/trials/keep-block';
import { callOffTrial, proposeTrial, readProposal } from '@/lib/usecases/trials/propose-trial';
import { readTrialReport } from '@/lib/usecases/trials/read-report';
import { readTrial, readTrials } from '@/lib/usecases/trials/read-trials';
import { once } from '../../fixtures/society';
import { proposal } from '../fill/trials';
import { committee, everybody, holders, type Row } from '../row';

export const trials: readonly Row[] = [
  { operation: readTrials, input: () => ({}), allow: everybody },
  { operation: readProposal, input: () => ({}), allow: everybody },
  { operation: readTrial, input: ({ laidOutTrialId }) => ({ trialId: laidOutTrialId }), allow: everybody },
  { operation: readJoining, input: ({ trialId }) => ({ trialId }), allow: everybody },
  { operation: readTrialReport, input: ({ withheldTrialId }) => ({ trialId: withheldTrialId }), allow: everybody },
  { operation: proposeTrial, input: () => once(proposal()), allow: everybody },
  // The secretary proposed it.
  { operation: callOffTrial, input: ({ trialId }) => once({ trialId, why: 'w' }), allow: committee },
  {
    operation: joinTrial,
    input: ({ trialId, bedId }) => once({ trialId, first: `${bedId}:first`, second: `${bedId}:second`, agree: 'yes' }),
    allow: holders,
    isOwn: true,
  },
  {
    operation: leaveTrial,
    input: ({ trialBlockId }) => once({ blockId: trialBlockId, why: 'w' }),
    allow: holders,
    isOwn: true,
  },
  {
    operation: treatBlock,
    input: ({ trialBlockId }) => once({ blockId: trialBlockId, treatedOn: todayIn('Europe/London') }),
    allow: holders,
    isOwn: true,
  },
  {
    operation: giveResult,
    input: ({ trialGroundId }) => once({ groundId: trialGroundId, source: 'typed', amount: '1 kg', sure: 'yes' }),
    allow: holders,
    isOwn: true,
  },
];
