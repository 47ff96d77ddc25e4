import { describe, expect, it } from 'vitest';
import { newestWins } from './newest-wins.ts';

function slowAsk() {
  const asked: number[] = [];
  const waiting: (() => void)[] = [];
  const ask = (question: number) => {
    asked.push(question);
    return new Promise<number>((resolve) => waiting.push(() => resolve(question * 10)));
  };
  const answerNext = async () => {
    waiting.shift()?.();
    await new Promise((resolve) => setTimeout(resolve));
  };
  return { asked, ask, answerNext };
}

describe('edits while a plan is being computed', () => {
  it('asks only for the newest of them, and shows every answer that comes', async () => {
    const { asked, ask, answerNext } = slowAsk();
    const shown: number[] = [];
    const edits = newestWins({
      ask,
      onAnswer: (_question, answer) => shown.push(answer),
      onFailure: () => shown.push(-1),
    });
    for (const edit of [1, 2, 3, 4]) edits.wish(edit);
    await answerNext();
    await answerNext();
    expect(asked).toEqual([1, 4]);
    expect(shown).toEqual([10, 40]);
  });

  it('goes on after a failure', async () => {
    const shown: string[] = [];
    const edits = newestWins<string, string>({
      ask: async (question) => {
        if (question === 'bad') throw new Error('failed');
        return question;
      },
      onAnswer: (question) => shown.push(question),
      onFailure: (question) => shown.push(`${question} failed`),
    });
    edits.wish('bad');
    edits.wish('good');
    await new Promise((resolve) => setTimeout(resolve, 5));
    expect(shown).toEqual(['bad failed', 'good']);
  });
});
