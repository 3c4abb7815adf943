import { openBallot, withdrawBallot } from '@/lib/usecases/ballots/open-ballot';
import { changeQuestion, draftQuestion } from '@/lib/usecases/ballots/put-question';
import { enterHand, raiseHand } from '@/lib/usecases/ballots/raise-hand';
import { readBallot, readBallots, readMinutes } from '@/lib/usecases/ballots/read-ballots';
import { question } from '../../fixtures/question';
import { once } from '../../fixtures/society';
import { committee, everybody, type Row, secretary } from '../row';

export const ballots: readonly Row[] = [
  { operation: readBallots, input: () => ({}), allow: everybody },
  { operation: readMinutes, input: () => ({}), allow: everybody },
  { operation: readBallot, input: ({ openBallotId }) => ({ ballotId: openBallotId }), allow: everybody },
  { operation: draftQuestion, input: () => once(question()), allow: committee },
  {
    operation: changeQuestion,
    input: ({ draftBallotId }) => once(question({ ballotId: draftBallotId })),
    allow: committee,
  },
  {
    operation: openBallot,
    input: ({ draftBallotId }) => once({ ballotId: draftBallotId, sure: 'yes' }),
    allow: committee,
  },
  {
    operation: withdrawBallot,
    input: ({ openBallotId }) => once({ ballotId: openBallotId, why: 'w' }),
    allow: committee,
  },
  {
    operation: raiseHand,
    input: ({ openBallotId, choiceId }) => once({ ballotId: openBallotId, choiceId }),
    allow: everybody,
  },
  {
    operation: enterHand,
    input: ({ openBallotId, rollId, choiceId }) => once({ ballotId: openBallotId, rollId, choiceId }),
    allow: secretary,
  },
];
