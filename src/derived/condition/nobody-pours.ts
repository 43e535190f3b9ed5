import type { Known } from '../survey/index.ts';
import { isFault, type Finding } from './finding.ts';

const POUR = 'bearings.pour';

/**
 * Shell and contact of a new pour are asked for where a bearing is to be poured, or was; where nobody pours and nobody
 * looked, there is nothing to check.
 */
export function leaveOutPouring(findings: readonly Finding[], { progress, history, looks }: Pick<Known, 'progress' | 'history' | 'looks'>): readonly Finding[] {
  const read = [...Object.keys(history), ...Object.keys(looks)].some((key) => key.startsWith('pouring.'));
  const asked = findings.some((finding) => isFault(finding) && finding.cures.includes(POUR));
  if (read || asked || progress[POUR] !== undefined) return findings;
  return findings.map((finding) => (finding.part === 'pouring' && finding.grade === 'not-known' ? { ...finding, grade: 'does-not-apply', reason: 'No bearing is to be poured.', missing: [] } : finding));
}
