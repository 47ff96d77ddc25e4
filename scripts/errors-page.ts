// The manual of codes as a page: every stage's list, in the order of the job.
import { codeLists } from '#engine';
import { fileCodes } from '#formats';

const title = (name: string) => `${name.charAt(0).toUpperCase()}${name.slice(1)}`;

/** The whole text of docs/errors.md. */
export function errorsPage(): string {
  const stages = Object.entries({ file: fileCodes, ...codeLists });
  const sections = stages.map(([stage, list]) => {
    const rows = Object.entries(list).map(
      ([code, entry]) => `| \`${code}\` | ${entry.kind} | ${entry.when} | ${entry.next} |`,
    );
    return [
      `## ${title(stage)}`,
      '',
      '| code | kind | when | what to do |',
      '| --- | --- | --- | --- |',
      ...rows,
    ].join('\n');
  });
  return [
    '# Everything the program can say',
    '',
    'Written by `npm run errors` from the lists of codes; a test compares the two. Codes are never renamed or',
    'used again. A notice comes with a result that stands; a refusal says what could not be done and which wishes',
    'conflict. Sentences as a cook reads them are in `engine/src/publish/words`.',
    '',
    sections.join('\n\n'),
    '',
  ].join('\n');
}
