// The checker's rules in a cook's words.

const RULES: Readonly<Record<string, string>> = {
  'one-thing-at-a-time': 'somebody would do two things at once',
  hours: 'somebody would work outside their hours',
  hands: 'a job has too few hands',
  'two-person-lift': 'a heavy oven is lifted alone',
  skill: 'work is given to hands that are too new for it',
  table: 'the table has no room',
  'not-before': 'something would have had to begin before now',
  'recipe-order': 'a step of the recipe comes too soon or too late',
  'every-step-once': 'a step of the recipe is missing',
  'minutes-in-the-oven': 'something is in its oven too short or too long',
  'can-wait': 'a dish waits longer than it may',
  'coals-ready': 'coals are laid before they are lit, or too old',
  'ash-over': 'coals are laid before they have ashed over',
  chimneys: 'more chimneys burn than there are',
  'clean-hands': 'food is handled with unwashed hands',
  'washed-before-free-from': 'hands go to a free-from dish unwashed',
  'fire-fed': 'the feeder fire is left too long',
  'oven-in-one-place': 'one oven would hold two dishes',
  'one-action-on-an-oven': 'two people would work at one oven',
  'cut-once-rested': 'bread stands uncut too long after its rest',
  'risen-enough': 'a dough has not risen enough',
};

export function ruleWord(rule: string): string {
  const known = RULES[rule];
  if (known !== undefined) return known;
  const [, job] = /^(.+)-at-its-minute$/.exec(rule) ?? [];
  return job === undefined
    ? rule.replaceAll('-', ' ')
    : `${job.replaceAll('-', ' ')} comes off its minute`;
}
