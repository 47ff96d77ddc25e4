// Units that data tables of the trade are written in; exact (NIST SP 811 appendix B.8).

export const INCH_METRES = 0.0254;
export const QUART_CUBIC_METRES = 946.352946e-6;
export const POUND_GRAMS = 453.59237;
