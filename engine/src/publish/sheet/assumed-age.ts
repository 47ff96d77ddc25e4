// How old coals are taken to be where nobody has said it, and the question that goes with it.

import type { AssumedAge } from '../../coals/usual-fire.ts';
import type { Block } from '../document.ts';
import type { Say } from '../say.ts';
import { paragraph } from './door.ts';

/** For the list of what was assumed. */
export const assumedAgePhrase = ({ minutes, how }: AssumedAge, say: Say): string =>
  how === 'laid'
    ? `coals lit ${say.minutes(minutes)} ago`
    : `coals lit about ${say.minutes(minutes)} ago, others before them`;

/** Asked where the usual age would make them ash. */
export const lookQuestion = (age: AssumedAge | undefined, say: Say): readonly Block[] =>
  age?.how !== 'made-up'
    ? []
    : [
        paragraph(
          'How do the coals look? Nobody said, so they are taken as younger than the fire, a little ' +
            `over half as wide as new: lit about ${say.minutes(age.minutes)} ago, others before ` +
            'them. Say how they look, or how old they are, if it is not so.',
        ),
      ];
