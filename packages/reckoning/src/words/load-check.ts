import type { LoadRefusal, MissingForLoadCheck } from '../tire/load-check-codes.ts'

/**
 * Why no formula replaces a load table: the standards let load fall with pressure by powers from 0.5 to 0.8, and
 * the power changes the answer. Shown to the person who must enter a table value.
 */
export const whyNoFormula =
  'It is not reckoned by a formula: the standards let the load fall with the pressure by powers from 0.5 to 0.8, and ' +
  'which power it is can turn the answer around. Load index 106 (950 kg at 290 kPa) instead of 102 (850 kg at 250 kPa), ' +
  'both at 227.5 kPa, carries 841 kg where 811 kg are needed by the one, and 782 kg where 788 kg are needed by the other.'

/** What the load check says to the person at the desk. */
export const loadWords = {
  labelDecides:
    "The vehicle maker's label names this size and load index: set the pressure that it gives for that size.",
  asks: (missing: readonly MissingForLoadCheck[]): string =>
    [
      `Still needed: ${missing.map((one) => asked[one]).join('; ')}.`,
      ...(missing.some((one) => one === 'originalTableLoad' || one === 'fittedTableLoad')
        ? [whyNoFormula]
        : []),
    ].join(' '),
  refuses: (reasons: readonly LoadRefusal[]): string =>
    `Do not fit it so: ${reasons.map((one) => why[one]).join('; ')}. The vehicle maker's label and the tire maker's load table govern.`,
  passes:
    "By the table values entered it carries what the original does. The vehicle maker's label and the tire maker's load " +
    'table govern; the vehicle still warns at the trigger of its own label.',
} as const

const asked: Readonly<Record<MissingForLoadCheck, string>> = {
  newOnLabel: "whether the vehicle maker's label names the new size and load index",
  chosen: 'the pressure that is to be set',
  sidewallMaximum: "the maximum pressure on the new tire's sidewall",
  originalLoadIndex: "the original tire's load index",
  fittedLoadIndex: "the new tire's load index",
  originalSpeed: "the original tire's speed symbol",
  fittedSpeed: "the new tire's speed symbol",
  originalTableLoad:
    "the original tire's load at the label's pressure, from the load table of the tire's maker or its standard",
  fittedTableLoad:
    "the new tire's load at the chosen pressure, from the load table of the tire's maker or its standard",
}

const why: Readonly<Record<LoadRefusal, string>> = {
  'over-sidewall-maximum': "the chosen pressure is above the maximum on the new tire's sidewall",
  'slower-symbol': "the new tire's speed symbol is lower than the original's",
  'lower-index': "the new tire's load index is lower than the original's",
  'carries-less':
    "by its load table the new tire carries less at the chosen pressure than the original at the label's",
}
