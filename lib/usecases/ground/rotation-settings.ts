import 'server-only';
import type { SettingValues } from '@/lib/domain/catalogue/settings';
import type { Crop } from '@/lib/domain/catalogue/crops';
import type { Finding, RotationSettings, TroubleOnGround } from '@/lib/domain/rotation/judge';

/** What the judge takes, from the society's rules. */
export function rotationSettings({ breakYears, edgeWidthCm, edgeSharePercent }: SettingValues): RotationSettings {
  return { breakYears, edgeWidthCm, edgeSharePercent };
}

/** How many seasons back the longest break reaches, where these troubles were found. */
export function longestBreak({ breakYears }: SettingValues, troubles: readonly TroubleOnGround[]): number {
  return Math.max(0, ...Object.values(breakYears), ...troubles.map((trouble) => trouble.breakYears ?? 0));
}

/** The host groups that a planting is judged by: none for crops outside the rotation. */
export function judgedGroups(crop: Crop | null): readonly string[] {
  return crop && crop.cropGroup !== 'standing' ? crop.hostGroups : [];
}

/** A finding with its crop's name, for words. */
export type NamedFinding = Finding & { readonly cropName?: string };

export function nameFindings(findings: readonly Finding[], nameOf: (key: string) => string): NamedFinding[] {
  return findings.map((finding) =>
    finding.code === 'not-known' || !finding.cause ? finding : { ...finding, cropName: nameOf(finding.cause.cropKey) },
  );
}
