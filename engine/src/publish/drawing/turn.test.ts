import { describe, expect, it } from 'vitest';
import { afterTurn, STAND_AT_START } from '../../coals/turning.ts';
import { degrees } from '../../quantity/unit.ts';
import { turnCaptions, turnMove, turnPhrase, turnWitness } from '../sheet/phrases.ts';
import { turnPicture } from '../sheet/turn-part.ts';

const kinds = ['food', 'oven-with-lid', 'lid-alone'] as const;
const turnOf = (kind: (typeof kinds)[number], angle: number) => ({ kind, angle: degrees(angle) });

/** Centre of the chalk dot of each state, as degrees clockwise from north; cells are 210 wide. */
const chalkAngles = (svg: string) =>
  [...svg.matchAll(/<circle cx="([\d.-]+)" cy="([\d.-]+)" r="4.5" class="chalk"/g)].map(
    ([, x, y], cell) => {
      const angle = Math.atan2(Number(x) - (210 * cell + 105), 92 - Number(y)) * (180 / Math.PI);
      return (Math.round(angle) + 360) % 360;
    },
  );

describe('the words of a turn', () => {
  it.each(kinds)(
    'of %s are seen from above, with handle or chalk mark as witness (AT-THE-FIRE 7)',
    (kind) => {
      for (const angle of [90, 180, -90]) {
        const said = turnPhrase(turnOf(kind, angle));
        expect(said).toMatch(/^Seen from above/);
        expect(said).toMatch(/chalk mark/);
        expect(said).not.toMatch(/\b(left|right)\b/i);
        expect(turnWitness(turnOf(kind, angle))).toMatch(/Seen from above.*chalk mark/);
      }
    },
  );

  it('tell the three kinds apart, and say both moves of a food turn in their order', () => {
    expect(new Set(kinds.map((kind) => turnMove(turnOf(kind, 90)))).size).toBe(3);
    expect(turnPhrase(turnOf('food', 90))).toMatch(
      /oven with its lid a quarter.*then the lid alone a quarter back/,
    );
    expect(turnPhrase(turnOf('food', 90))).toMatch(/stand over the ground as before/);
    expect(turnPhrase(turnOf('oven-with-lid', 90))).toMatch(/go with it/);
    expect(turnPhrase(turnOf('lid-alone', 90))).toMatch(/oven stays/);
  });
});

describe('the drawing of a turn', () => {
  it.each(kinds)('of %s ends with its chalk mark where the lid stands', (kind) => {
    for (const angle of [90, 180]) {
      const { svg } = turnPicture(turnOf(kind, angle));
      const { lid } = afterTurn(STAND_AT_START, turnOf(kind, angle));
      const chalk = chalkAngles(svg);
      expect(chalk).toHaveLength(turnCaptions(turnOf(kind, angle)).length);
      expect(chalk[0]).toBe(0);
      expect(chalk.at(-1)).toBe(lid);
    }
  });

  it.each(kinds)(
    'of %s has an arrow for each move and the words for those who can not see it',
    (kind) => {
      const { svg, alt } = turnPicture(turnOf(kind, 90));
      expect(svg.match(/class="arrow"/g)).toHaveLength(kind === 'food' ? 2 : 1);
      expect(svg).toContain('role="img"');
      expect(alt).toMatch(/Seen from above/);
    },
  );
});
