import type { Caller } from '@/lib/usecases/operation';

/** Anything that a person can do or ask. */
export type Operation = {
  readonly kind: 'mutation' | 'query';
  readonly name: string;
  readonly run: (caller: Caller, raw: unknown) => Promise<unknown>;
};

/** Whoever stands in the society under test. A holder keeps the ground in question; a neighbour holds other ground. */
export const people = ['secretary', 'chair', 'treasurer', 'gate_helper', 'holder', 'neighbour'] as const;
export type Person = (typeof people)[number];

export const everybody: readonly Person[] = [...people];
export const secretary: readonly Person[] = ['secretary'];
export const committee: readonly Person[] = ['secretary', 'chair', 'treasurer'];
export const gate: readonly Person[] = ['secretary', 'gate_helper'];
export const keepers: readonly Person[] = ['secretary', 'holder'];
/** Whose records are their own, and not even the secretary's. */
export const holders: readonly Person[] = ['holder'];
/** Who keeps the ledger. */
export const moneyKeepers: readonly Person[] = ['secretary', 'treasurer'];
export const atTheHeap: readonly Person[] = ['secretary', 'gate_helper', 'holder'];
/** Everybody with a share of the delivery that is shared out, and whoever stands at its gate. */
export const atCollecting: readonly Person[] = ['secretary', 'gate_helper', 'holder', 'neighbour'];

/** What an operation is asked with, and who may: to everybody else it does not exist. */
export type Row = {
  readonly operation: Operation;
  readonly input: (ids: Ids) => object;
  readonly allow: readonly Person[];
  /** The id only narrows a list: another society's narrows it to nothing. Elsewhere it is not found. */
  readonly idIsFilter?: true;
  /** What a household lifts, keeps and eats is its own: the secretary keeps none of it for them. */
  /** A holding's own: nobody else's, the secretary's no more than anybody's. */
  readonly isOwn?: true;
};

/** The society under test: ids of its rows, each in the state that its name says, and one bed's name. */
export type Ids = Readonly<
  Record<
    | 'siteId'
    | 'plotId'
    | 'sparePlotId'
    | 'bedId'
    | 'nextBedId'
    | 'plantingId'
    | 'harvestId'
    | 'workId'
    | 'sheetId'
    | 'troubleId'
    | 'courseId'
    | 'waitingCourseId'
    | 'holdingId'
    | 'otherHoldingId'
    | 'otherBedId'
    | 'holderId'
    | 'spareMemberId'
    | 'leftMemberId'
    | 'noAccountId'
    | 'invitedId'
    | 'plannedId'
    | 'openId'
    | 'closedId'
    | 'tippedId'
    | 'sharedId'
    | 'collectedId'
    | 'settledId'
    | 'leftOverId'
    | 'waitingId'
    | 'standingId'
    | 'bookingId'
    | 'entryId'
    | 'accountId'
    | 'testId'
    | 'pathId'
    | 'dropPointId'
    | 'supplierId'
    | 'supplierLoadId'
    | 'packetId'
    | 'seedItemId'
    | 'seedPackId'
    | 'plannedSeedId'
    | 'openSeedId'
    | 'closedSeedId'
    | 'orderedSeedId'
    | 'arrivedSeedId'
    | 'settledSeedId'
    | 'placeId'
    | 'sparePlaceId'
    | 'lotId'
    | 'goingOverId'
    | 'threadId'
    | 'noticeId'
    | 'lockedThreadId'
    | 'postId'
    | 'ownPostId'
    | 'reportedPostId'
    | 'hiddenPostId'
    | 'pictureId'
    | 'trialId'
    | 'laidOutTrialId'
    | 'withheldTrialId'
    | 'trialBlockId'
    | 'trialGroundId'
    | 'draftBallotId'
    | 'openBallotId'
    | 'choiceId'
    | 'rollId'
    | 'bedName',
    string
  >
>;

/** The ids that a row's input names. */
export function idsNamed(input: Row['input']): (keyof Ids)[] {
  const named = new Set<string>();
  const noting = new Proxy({} as Ids, {
    get: (_, key) => {
      named.add(String(key));
      return String(key);
    },
  });
  input(noting);
  return [...named].filter((key): key is keyof Ids => key.endsWith('Id'));
}
