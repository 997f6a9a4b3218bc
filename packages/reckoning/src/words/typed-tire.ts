/** What the readers of a tire's sidewall say: of each fault what is allowed, and what to do (see `typed-text.ts`). */
type Words = { readonly allowed: string; readonly do: string }

const readSizeAgain = 'Read it off the sidewall or the label again.'

export const tireSizeWords = {
  notASize: {
    allowed: 'a size as 205/55R16 91V, LT235/85R16 120/116R E, 185R14C or 31x10.5R15LT',
    do: 'Read it off the sidewall or the label again, and enter the size alone.',
  },
  /** Which part of the size a refusal is about. */
  part: {
    width: (width: number): string => `width ${width}`,
    aspect: (percent: number): string => `aspect ${percent}`,
    diameter: (inches: number): string => `diameter ${inches}`,
    rim: (inches: number): string => `rim ${inches}`,
    marks: (before: string, after: string): string => `${before} and ${after}`,
    zrWith: (symbol: string): string => `ZR with ${symbol}`,
  },
  metricWidth: { allowed: 'a width of 105 to 395 mm that ends in 5', do: readSizeAgain },
  aspect: { allowed: 'an aspect of 20 to 100, in steps of five, or 78 or 82', do: readSizeAgain },
  diameter: {
    allowed: 'an overall diameter of 22 to 46 in, more than that of the rim',
    do: readSizeAgain,
  },
  flotationWidth: { allowed: 'a width of 7 to 18 in', do: readSizeAgain },
  heightlessInches: { allowed: 'a width of 4.50 to 13 in', do: readSizeAgain },
  rim: { allowed: 'a rim of 10 to 30 in, whole or half', do: readSizeAgain },
  afterTheRim: {
    allowed: 'after the rim only load index, speed symbol and load mark, as 91V XL or 120/116R E',
    do: 'Leave the rest out, and read load index and speed symbol again.',
  },
  oneLoadMark: { allowed: 'one load mark', do: 'Read which of them the sidewall carries.' },
  flotationSuffix: {
    allowed: 'LT after the rim of a size in inches, as 31x10.5R15LT',
    do: 'Check that the sidewall says LT, and enter it too.',
  },
  loadMark: (marks: readonly string[]): Words => ({
    allowed: `${marks.length === 0 ? 'no load mark' : marks.join(', ')} with this kind of size`,
    do: 'Read the letters before the size and the load mark again.',
  }),
  loadIndex: {
    allowed: 'a load index of 20 to 279, and a second one no higher than the first',
    do: 'Read the figures before the speed symbol again.',
  },
  speedSymbol: {
    allowed: 'A1 to A8, B to H, J to N, P to W and Y; in brackets only Y, as (101Y)',
    do: 'Read the letter after the load index again.',
  },
  speedWithZr: {
    allowed: 'with ZR a speed symbol above 240 km/h: W, Y or (Y)',
    do: 'Read both again: one of them was misread.',
  },
} as const

export const dateCodeWords = {
  notADateCode: {
    allowed: 'four digits, week and year, as 2620; three on a tire made before July 2000',
    do: 'Read the last group of the number that begins with DOT. Where it has no date, look on the other sidewall.',
  },
  week: (week: number): string => `week ${String(week).padStart(2, '0')}`,
  weeksOfYear: (year: number, weeks: number): string => `${year} has weeks 01 to ${weeks}`,
  weeks: 'weeks 01 to 53',
  week53: 'a week 53 only in a year that has one',
  weekFirst: 'Read the code again: the week comes before the year.',
  begins: (week: number, year: number, day: string): string => `week ${week} of ${year} begins on ${day}`,
  inTheFuture: (inspectedOn: string): Words => ({
    allowed: `a week that has begun by ${inspectedOn}`,
    do: 'Read the code again, week before year. A tire made before July 2000 has three digits.',
  }),
} as const

const insteadOf: Readonly<Record<string, string>> = {
  G: 'Is it a 6 or a C?',
  I: 'Is it a 1?',
  O: 'Is it a 0?',
  Q: 'Is it a 0?',
  S: 'Is it a 5?',
  Z: 'Is it a 2?',
}

export const tinWords = {
  symbol: (odd: string): Words => ({
    allowed: 'digits and letters without G, I, O, Q, S and Z',
    do: `"${odd}" is not used in these numbers. ${insteadOf[odd] ?? 'Read it again.'}`,
  }),
  length: (symbols: number): Words => ({
    allowed: `13 symbols, 7 of a retread, 7 to 12 of an older tire; this one has ${symbols}`,
    do: 'Read the whole number: on older tires one sidewall carries only a part of it. For the age alone, enter the date code.',
  }),
  retread: {
    allowed: 'after the R of a retread 7 symbols that end in 4 digits',
    do: "Read the retreader's own number: the first maker's may be on the tire as well.",
  },
} as const
