import type { Criterion, Knowledge } from '../../src/knowledge/index.ts';

/** Ids of the sources that a criterion rests on. */
export function sourcesOf({ rule, dispute }: Criterion): string[] {
  const graded = rule.kind === 'measured' ? rule.steps : Object.values(rule.answers);
  return [...graded.map(({ source }) => source), ...(dispute ? [dispute.source] : []), ...(rule.kind === 'measured' && rule.otherwise ? [rule.otherwise.source] : [])];
}

/** What keeps a criterion from being explained or tested, one sentence each. */
export function criterionProblems(knowledge: Pick<Knowledge, 'criteria' | 'sources' | 'jobs' | 'cautions'>): string[] {
  const sources = new Set(knowledge.sources.map(({ id }) => id));
  const jobs = new Set(knowledge.jobs.map(({ id }) => id));
  const cautions = new Set(knowledge.cautions.map(({ id }) => id));
  const unknown = (ids: readonly string[], held: ReadonlySet<string>, what: string) => ids.filter((id) => !held.has(id)).map((id) => `names an unknown ${what}: ${id}`);
  return knowledge.criteria.flatMap((criterion, index) => {
    const problems = [
      ...unknown(sourcesOf(criterion), sources, 'source'),
      ...unknown(criterion.cures, jobs, 'job'),
      ...unknown(criterion.cautions, cautions, 'caution'),
    ];
    if (sourcesOf(criterion).length === 0) problems.push('has no source');
    if (!/^[a-z0-9-]+(\.[a-z0-9-]+)+$/.test(criterion.id)) problems.push('its id is not of trade words with dots between');
    if (knowledge.criteria.findIndex(({ id }) => id === criterion.id) !== index) problems.push('its id is taken');
    if (criterion.families.length === 0) problems.push('applies to no family of hammers');
    if (criterion.examples.length === 0) problems.push('has no example');
    if (criterion.rule.kind === 'measured')
      for (const stands of ['at', 'just under', 'just over'] as const)
        if (!criterion.examples.some((example) => example.stands === stands)) problems.push(`has no example ${stands} a step`);
    return problems.map((problem) => `${criterion.id}: ${problem}`);
  });
}

/** What keeps a source from being looked up. */
export function sourceProblems(sources: Knowledge['sources']): string[] {
  return sources.flatMap(({ id, title, where, standing, kind }, index) => {
    const problems: string[] = [];
    if (title.trim() === '') problems.push('has no title');
    if (standing.trim() === '') problems.push('does not say who read it');
    if (where.trim() === '' && kind !== 'common-practice' && kind !== 'memory') problems.push('does not say where it stands');
    if (sources.findIndex((other) => other.id === id) !== index) problems.push('its id is taken');
    return problems.map((problem) => `${id}: ${problem}`);
  });
}
