// Which part of the app an address belongs to: what the masthead marks.

export type Section = 'tonight' | 'fire' | 'dough' | 'camps';

const SECTIONS: Readonly<Record<string, Section>> = {
  '': 'tonight',
  fire: 'fire',
  dough: 'dough',
  paste: 'dough',
  bench: 'dough',
  camps: 'camps',
  camp: 'camps',
  demo: 'camps',
  slip: 'camps',
};

/** Undefined at an address where nothing is. */
export const sectionOf = (path: string): Section | undefined => SECTIONS[path.split('/')[1] ?? ''];
