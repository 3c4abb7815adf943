import 'server-only';
import type { ResidueTestRecord } from '@/lib/data/residue-test';
import { type BioassayState, bioassayState } from '@/lib/domain/bioassay/bioassay-state';
import { type BioassayVerdict, judgeBioassay } from '@/lib/domain/bioassay/judge-bioassay';
import { recordThatStands } from '@/lib/domain/bioassay/kept-record';
import type { BioassayRecord } from '@/lib/domain/bioassay/record';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { canKeepResidueTest } from '@/lib/domain/policy/residue';
import type { Standing } from '@/lib/domain/policy/standing';

/** A test as it is shown: the record that stands, what it wants next, and what it shows so far. */
export type ShownTest = {
  readonly id: string;
  readonly deliveryId: string | null;
  readonly name: string;
  readonly record: BioassayRecord;
  readonly state: BioassayState;
  readonly judged: BioassayVerdict;
  readonly isEnded: boolean;
  /** Whether the viewer keeps it. */
  readonly keeps: boolean;
};

/** What a test comes to on a day, for a viewer who may see it. */
export function shownTest(viewer: Standing, test: ResidueTestRecord, today: CalendarDate): ShownTest {
  const record = recordThatStands(test.kept);
  const { id, deliveryId, name, endedAt } = test;
  return {
    id,
    deliveryId,
    name,
    record,
    state: bioassayState(record, today),
    judged: judgeBioassay(record),
    isEnded: endedAt !== null,
    keeps: canKeepResidueTest(viewer, test),
  };
}
