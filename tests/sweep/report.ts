// The text of the sweep's report: one section a sweep; those not run again stay as they were.
import type { Claim } from './sweep';

export interface Section {
  readonly name: string;
  readonly title: string;
  readonly taskCount: number;
  readonly time_s: number;
  readonly madeWith: string;
  readonly claims: readonly Claim[];
  readonly notes?: readonly string[];
}

const HEAD = `# The sweep

What \`npm run sweep\` found when it last ran. Each section says with which version of the model it was made.
`;

export function reportWith(previous: string, sections: readonly Section[]): string {
  const kept = new Map(
    previous.split(/^(?=## )/m).flatMap((text) => (text.startsWith('## ') ? [[nameIn(text), text]] : [])),
  );
  for (const section of sections) kept.set(section.name, textOf(section));
  const names = [...kept.keys()].sort();
  return `${HEAD}\n${names.map((name) => kept.get(name)!.trimEnd()).join('\n\n')}\n`;
}

function nameIn(section: string): string {
  return section.slice(3).split(':')[0].trim();
}

function textOf({ name, title, taskCount, time_s, madeWith, claims, notes = [] }: Section): string {
  const list = claims.map(({ text, holds }) => `- ${holds ? 'holds' : '**fails**'}: ${text}`).join('\n');
  const counts = notes.length > 0 ? `\n${notes.join('\n\n')}\n` : '';
  return `## ${name}: ${title}\n\n${taskCount} tasks in ${time_s.toFixed(0)} s, ${madeWith}.\n\n${list}\n${counts}`;
}
