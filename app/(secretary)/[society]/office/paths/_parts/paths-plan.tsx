import { PathKey } from '@/app/_ui/plan-layers';
import { Sheet } from '@/app/_ui/sheet';
import { SitePlan } from '@/app/_ui/site-plan';
import type { Units } from '@/lib/domain/quantity/length';
import type { readPaths } from '@/lib/usecases/site/read-paths';
import { DrawOnPlan } from './draw-on-plan';

type Read = Awaited<ReturnType<typeof readPaths.run>>;
type Props = Pick<Read, 'plan' | 'paths' | 'dropPoints'> & {
  site: { readonly name: string; readonly northCentideg: number };
  units: Units;
  what: readonly ('path' | 'place')[];
};

/** The site as it lies, to draw on. */
export function PathsPlan({ site, plan, paths, dropPoints, units, what }: Props) {
  return (
    <Sheet title="The site to scale" flush wide>
      <DrawOnPlan what={what} units={units}>
        <SitePlan
          name={site.name}
          plots={plan}
          paths={paths}
          dropPoints={dropPoints}
          northCentideg={site.northCentideg}
        />
      </DrawOnPlan>
      <ul className="key">
        <PathKey />
      </ul>
    </Sheet>
  );
}
