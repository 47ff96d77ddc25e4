// The way in to all that can be asked about a dough: the bread first, then the question.

import { Link } from 'wouter-preact';
import { Page } from '../parts/Page.tsx';
import { doughDoors, doughHints, doughTitles } from './doors.ts';
import { FormulaButton } from './FormulaButton.tsx';
import { useBreadAnswers } from './use-bread-answers.ts';
import { WhichBread } from './WhichBread.tsx';

export default function DoughPage() {
  const { answers, change } = useBreadAnswers();
  const { what } = answers;
  return (
    <Page
      title="The dough alone"
      lead="No camp and no coals. Choose the bread, then what you want to know of it."
    >
      <div className="camps">
        <section aria-labelledby="dough-bread">
          <h2 id="dough-bread">The bread</h2>
          <WhichBread what={what} onChoose={(next) => change({ what: next })} />
          {what === undefined ? null : (
            <div>
              <FormulaButton what={what} />
            </div>
          )}
        </section>
        <section aria-labelledby="dough-questions">
          <h2 id="dough-questions">What do you want to know?</h2>
          <ul className="camp-rows">
            {doughDoors.map((door) => (
              <li key={door}>
                <Link href={`/dough/${door}`}>
                  <strong>{doughTitles[door]}</strong>
                  <span>{doughHints[door]}</span>
                </Link>
              </li>
            ))}
          </ul>
        </section>
      </div>
    </Page>
  );
}
