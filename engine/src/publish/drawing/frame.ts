// How wide is a drawing drawn, and how large are its words? For paper and a desk, or anew for a screen
// as narrow as a phone, where shrinking would leave nothing to read.

export type Frame = 'sheet' | 'phone';

/** As wide as a small phone leaves for it, so that it is read at about its own size. */
export const PHONE_WIDTH = 320;

/** Words on a phone: 12 to 13 px as shown; ours, judged on screens of 360 px. */
export const PHONE_TEXT = 13.5;
