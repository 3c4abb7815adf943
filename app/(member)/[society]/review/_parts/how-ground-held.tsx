import { ComplianceByGroup } from '@/app/_ui/compliance';
import { Empty, Sheet } from '@/app/_ui/sheet';
import { StackChart } from '@/app/_ui/stack-chart';
import type { seasonGround } from '@/lib/usecases/review/season-ground';
import type { Units } from '@/lib/domain/quantity/length';
import { cultivable, heldWords } from './review-words';

const parts = [
  { key: 'kept', name: 'kept' },
  { key: 'short', name: 'short' },
  { key: 'notKnown', name: 'not known' },
  { key: 'outside', name: 'outside the rotation' },
  { key: 'bare', name: 'bare' },
] as const;

type Ground = Awaited<ReturnType<typeof seasonGround>>;

/** How the rotation held: season by season as shares of the ground, and this season by crop group. */
export function HowGroundHeld({ ground, season, units }: { ground: Ground; season: number; units: Units }) {
  const rows = ground.trend.flatMap(({ year, total }) => {
    const whole = cultivable(total);
    const share = (cm2: number) => (cm2 * 100) / whole;
    if (whole === 0) return [];
    const { keptCm2, shortCm2, notKnownCm2, outsideCm2, bareCm2 } = total;
    const values = {
      kept: share(keptCm2),
      short: share(shortCm2),
      notKnown: share(notKnownCm2),
      outside: share(outsideCm2),
      bare: share(bareCm2),
    };
    return [{ name: String(year), values }];
  });
  if (rows.length === 0)
    return (
      <Sheet title="The rotation">
        <Empty>No plot is on record for this season. The secretary enters plots under the office.</Empty>
      </Sheet>
    );
  return (
    <>
      <Sheet title="The rotation, season by season">
        <StackChart
          title="What of the ground kept its rotation"
          says={heldWords(season, ground.total)}
          unit="% of the ground"
          parts={parts}
          rows={rows}
        />
      </Sheet>
      {ground.byGroup.length ? (
        <Sheet title={`By crop group, ${season}`} flush>
          <ComplianceByGroup groups={ground.byGroup} units={units} />
        </Sheet>
      ) : null}
    </>
  );
}
