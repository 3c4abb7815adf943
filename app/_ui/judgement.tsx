import { hostGroupName } from '@/lib/domain/catalogue/host-groups';
import { citation } from '@/lib/domain/catalogue/sources';
import { ruleOf } from '@/lib/domain/catalogue/succession-rules';
import { troubleName } from '@/lib/domain/catalogue/troubles';
import { percent } from '@/lib/domain/quantity/area';
import type { Finding } from '@/lib/domain/rotation/judge';
import type { Advice } from '@/lib/domain/rotation/rules/rule';
import { Mark, type MarkKind } from './mark';

export type WordedFinding = Finding & { readonly cropName?: string };

/** A verdict with its share of the ground: "short on 30 %". */
export function Verdict({ verdict, shortCm2, areaCm2 }: { verdict: MarkKind; shortCm2: number; areaCm2: number }) {
  return <Mark kind={verdict}>{verdict === 'short' ? `short on ${percent(shortCm2, areaCm2)}` : undefined}</Mark>;
}

/** Why, in plain sentences: one for each cause. */
export function Findings({ findings, areaCm2 }: { findings: readonly WordedFinding[]; areaCm2: number }) {
  if (findings.length === 0) return null;
  return (
    <ul className="small">
      {findings.map((finding) => (
        <li key={JSON.stringify(finding)}>{sentence(finding, areaCm2)}</li>
      ))}
    </ul>
  );
}

/** What the general rules say, as advice: it makes nothing fall short. */
export function AdviceList({ advice, areaCm2 }: { advice: readonly Advice[]; areaCm2: number }) {
  if (advice.length === 0) return null;
  return (
    <ul className="small">
      {advice.map(({ rule, areaCm2: ground }) => {
        const { name, says, source } = ruleOf(rule);
        return (
          <li key={rule}>
            {name}: not so on {percent(ground, areaCm2)} of this. {says}{' '}
            <span className="soft">({citation(source)})</span>
          </li>
        );
      })}
    </ul>
  );
}

function sentence(finding: WordedFinding, areaCm2: number): string {
  const share = percent(finding.areaCm2, areaCm2);
  if (finding.code === 'not-known')
    return `No record for ${list(finding.missing)} on ${share} of this ground: ${years(finding.missing.length)} missing.`;
  const { cause, trouble, clearYears, breakYears, yearsShort, hostGroup, cropName } = finding;
  if (trouble) return troubleSentence(finding, trouble, share);
  const stood = `${share} of this stands on ${cropName ?? cause?.cropKey} of ${cause?.season}`;
  if (finding.code === 'edge-only') return `${stood}: edge only, which does not count against the break.`;
  const had = clearYears === 0 ? 'no clear year' : `${years(clearYears)} clear`;
  return `${stood}: ${had} of the ${breakYears} that ${hostGroupName(hostGroup).toLowerCase()} should have, ${years(yearsShort ?? 0)} short.`;
}

function troubleSentence(
  { cause, clearYears, breakYears, cropName }: Exclude<WordedFinding, { code: 'not-known' }>,
  trouble: { key: string; foundSeason: number },
  share: string,
): string {
  const found = `${troubleName(trouble.key)} was found on ${share} of this ground in ${trouble.foundSeason}`;
  if (breakYears === null) return `${found}: no break is known to clear it. Grow none of its hosts here.`;
  const since =
    cause && cause.season > trouble.foundSeason ? `, and ${cropName ?? cause.cropKey} fed it in ${cause.season}` : '';
  const last = Math.max(trouble.foundSeason, cause?.season ?? 0);
  return `${found}${since}: ${years(clearYears)} clear of the ${breakYears} it wants, so none of its hosts before ${last + breakYears + 1}.`;
}

function years(count: number): string {
  return count === 1 ? '1 year' : `${count} years`;
}

function list(seasons: readonly number[]): string {
  return seasons.length > 1 ? `${seasons.slice(0, -1).join(', ')} and ${seasons.at(-1)}` : String(seasons[0] ?? '');
}
