/**
 * What the readers of typed text say: of each fault what is allowed, and what to do. Whoever typed the text reads it
 * at once, and nothing stores it. A reader names its fault by a code, and a second language words the codes.
 */
type Words = { readonly allowed: string; readonly do: string }

/** What a sign that never occurs was probably read for. */
const insteadOf = (signs: Readonly<Record<string, string>>, odd: string): string =>
  signs[odd] ?? 'Read it again.'

const checkDigitWanted = (wanted: string, carried: string): string =>
  `the check digit ${wanted} at the ninth place, not ${carried}`

export const vinWords = {
  length: (length: number): Words => ({
    allowed: `17 characters; this one has ${length}`,
    do: 'Read it again at the windshield or the door.',
  }),
  character: (odd: string): Words => ({
    allowed: 'digits and letters without I, O and Q',
    do: `"${odd}" is not used in a VIN. ${insteadOf({ I: 'Is it a 1?', O: 'Is it a 0?', Q: 'Is it a 0 or a 9?' }, odd)}`,
  }),
  checkDigit: (wanted: string, carried: string): Words => ({
    allowed: checkDigitWanted(wanted, carried),
    do: 'One character was misread or two were exchanged. Read it again. If the vehicle itself carries it so, leave the VIN empty and note it.',
  }),
  adviseCheckDigit: (wanted: string, carried: string): string =>
    `It does not carry ${checkDigitWanted(wanted, carried)}. Outside North America it need not; read it once more.`,
  adviseOneDigit: (digit: string): string =>
    `It is ${digit} seventeen times: the arithmetic holds, and no vehicle carries it. Read the real one.`,
  /**
   * The vehicles for which the seventh place determines the cycle of years. On heavier vehicles, motorcycles and
   * trailers either round is possible; elsewhere the tenth place need not hold a year at all.
   */
  modelYearHoldsFor:
    'passenger cars, and multipurpose vehicles and trucks of 10,000 lb (4,536 kg) or less, made for North America',
} as const

export const sensorIdWords = {
  empty: { allowed: 'the whole ID of one sensor', do: 'Type it as the reader shows it.' },
  character: (notation: 'hex' | 'decimal'): Words => ({
    allowed: notation === 'hex' ? 'the digits 0 to 9 and the letters A to F' : 'the digits 0 to 9',
    do: 'Read it again: an O is a 0, an I or an L is a 1.',
  }),
  length: (length: number): Words => ({
    allowed: `16 signs at most; this one has ${length}`,
    do: 'Read it again, one sensor at a time.',
  }),
  notDecimal: {
    allowed: 'digits only, as decimal IDs have',
    do: 'With letters or 0x it is hexadecimal: say so, and type it again.',
  },
  looksDecimal: (asDecimal: string, asTyped: string): Words => ({
    allowed: 'an ID of which it is clear whether it is hexadecimal or decimal',
    do: `Decimal, it is the sensor ${asDecimal}: type that. If it is hexadecimal after all, type 0x${asTyped}.`,
  }),
  none: {
    allowed: 'the ID of one sensor',
    do: 'All zeros or all ones is what a reader shows when it read none. Trigger the sensor again; until then it is not checked.',
  },
} as const

const codeShape = 'a letter P, C, B or U, a digit 0 to 3 and three of 0 to 9 and A to F, such as U0127'

export const troubleCodeWords = {
  empty: { allowed: codeShape, do: 'Type the code as the reader shows it.' },
  shape: { allowed: codeShape, do: 'Read it again: an O is a 0, an I or an L is a 1.' },
  padding: {
    allowed: `${codeShape}, other than P0000`,
    do: 'P0000 fills an empty place in the list: there is no code here.',
  },
  /** `code`: what the two bytes mean, null where they are padding. */
  noLetter: (code: string | null): Words => ({
    allowed: codeShape,
    do:
      code === null
        ? 'The bytes 00 00 are padding: there is no code here.'
        : `If these are a code's two bytes, it is ${code}: type it so. Else read the code again, with its letter.`,
  }),
  lastByteAlone: (bytes: number): string =>
    `Of ${bytes} bytes the last is alone and was left out: a code has two. Read the codes again.`,
} as const

const readThreadAgain = "Read the thread again in the maker's source or with a thread gauge."

export const threadWords = {
  notAThread: {
    allowed: 'a metric thread with its pitch, as M12×1.5, or an inch thread, as 1/2-20',
    do: "Read the thread in the maker's source or with a thread gauge, and enter both of its figures.",
  },
  metricDiameter: { allowed: 'M3 to M36', do: readThreadAgain },
  metricPitch: (most: number, diameter: number): Words => ({
    allowed: `a pitch of 0.35 to ${most} mm for M${diameter}`,
    do: readThreadAgain,
  }),
  inchDiameter: {
    allowed: 'halves, fourths, eighths, sixteenths or 32nds of an inch, from 1/8 to under 1',
    do: readThreadAgain,
  },
  inchPitch: { allowed: '6 to 48 threads an inch', do: readThreadAgain },
} as const

export const sequenceWords = {
  notNumbers: {
    allowed: 'whole numbers with dashes, commas or blanks between them, as 1-3-5-2-4',
    do: "Enter the order as the maker's page gives it, numbered clockwise from the valve.",
  },
  compound: {
    allowed: 'one order, in which each fastener is tightened alone and once',
    do: "A pattern in pairs, or with an order of its own for each round, cannot be followed here, and no source says which single order replaces it. Enter the vehicle maker's single order if there is one. If there is none, do not work from this sheet: ask the vehicle maker.",
  },
  wrongCount: (named: number, studs: number): Words => ({
    allowed: `each of the ${studs} fasteners once`,
    do: `${named} are named. Enter all ${studs}, or correct the count on the sheet.`,
  }),
  noSuchFastener: (fastener: number | undefined, studs: number): Words => ({
    allowed: `1 to ${studs}`,
    do: `There is no fastener ${fastener} on a wheel of ${studs}. Read the maker's page again.`,
  }),
  namedTwice: (fastener: number | undefined, studs: number): Words => ({
    allowed: `each of the ${studs} fasteners once`,
    do: `${fastener} is named twice. Read the maker's page again.`,
  }),
  tooNear: (from: number | undefined, to: number | undefined): Words => ({
    allowed: 'an order that goes across the wheel at each step',
    do: `From ${from} to ${to} it goes to a near one. Number the fasteners clockwise from the valve, not as the page numbers its steps, and enter the order again. If the maker really asks for this, do not work from this sheet: ask the vehicle maker.`,
  }),
} as const

export const adapterWords = {
  roadWheel: {
    found: 'an offset adapter on a road wheel',
    allowed: 'a socket straight on the wrench, or on a short one-piece bar in line with the fastener',
    do: "Take a socket; then the wrench is set to the vehicle maker's figure itself.",
  },
  handle: (handle: number) => ({
    found: `a handle of ${handle} mm`,
    allowed: 'more than 0 mm',
    do: 'Measure from the middle of the hand grip to the middle of the square drive.',
  }),
  angle: (degrees: number) => ({
    found: `${degrees} degrees`,
    allowed: '0 (in line) to 90 (across)',
    do: 'Enter the angle between adapter and wrench; where the adapter points back, the offset is under zero.',
  }),
  offset: (offset: number, handle: number) => ({
    found: `an offset of ${offset} mm`,
    allowed: `more than -${handle} mm: the fastener lies before the hand`,
    do: 'Measure from the square drive to the middle of the fastener.',
  }),
} as const

export const calendarDayWords = {
  notADay: {
    allowed: 'a day as year, month and day: 2026-01-12',
    do: 'Enter it in that order, with four digits for the year and two for month and day.',
  },
  noSuchDay: {
    allowed: 'a day that the calendar has, from 1900-01-01 to 2199-12-31',
    do: 'Check month and day.',
  },
} as const

export const sheetWords = {
  makersSequence: 'the order of tightening names each fastener once and goes across the wheel at each step',
  noStar: "no source gives an order for this many fasteners: enter the vehicle maker's own",
} as const
