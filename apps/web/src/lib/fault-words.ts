import type { TemplateFault } from '@bayledger/ledger/message-template'

/**
 * What the screens say of what was just typed or is still missing: a person of the shop reads it at once, and nothing
 * stores it. What readers of `reckoning` say of a text is in its own words.
 */

/** What a reader of typed text allows, and what to do. */
export const readAgain = (read: { readonly allowed: string; readonly do: string }): string =>
  `Allowed: ${read.allowed}. ${read.do}`

type Refused = { readonly found: string; readonly allowed: string; readonly do: string }

export const noSensorId = (read: Refused): string =>
  `"${read.found}" is not taken as a sensor ID. ${readAgain(read)}`

export const noTroubleCode = (read: Refused): string =>
  `"${read.found}" is no trouble code. ${readAgain(read)}`

/** `undefined` where the text is short enough. */
export const tooLong = (
  text: string,
  most: number,
  of: 'letters' | 'signs' = 'letters',
): string | undefined => (text.length > most ? `Keep it to ${most} ${of}.` : undefined)

export const outOfRange = (value: string, unit: string, low: number, high: number): string => {
  const measured = (figure: string | number) => `${figure} ${unit}`.trimEnd()
  return `${measured(value)} cannot be: allowed is ${low} to ${measured(high)}. Read it again.`
}

export const dateCodeFaults = { short: 'Four digits: week, then year.' } as const

export const treadFaults = { notAllThree: 'Read the tread at all three places, or at none of them.' } as const

export const partFaults = {
  madeMonth: 'Type year and month like 2025-08, or leave it out.',
} as const

export const idFaults = {
  noKnownEnd: 'Up to four signs only pick a known ID, and none known ends so. Type the whole ID.',
  takenAt: (wheel: string): string =>
    `This ID is in use at the ${wheel} wheel. Read back again: is it this sensor?`,
  notWhole: (word: string): string => `"${word}" is no whole sensor ID.`,
  count: (ids: number, wheels: number): string =>
    `${ids} IDs for ${wheels} wheels. Put its wheel before each, as LF 1A2B3C10.`,
  noWheel: (word: string): string => `"${word}" has no wheel before it.`,
  noneStored: (wheel: string): string => `This vehicle stores no ID for ${wheel}.`,
  namedTwice: 'One wheel is named twice.',
} as const

export const secondPersonFaults = {
  nobody: 'Choose the second person.',
  noPin: 'The second person types their 6-digit PIN.',
} as const

export const odometerFaults = {
  noFigure: 'The odometer is no figure in miles. Correct it, or leave it empty if nobody read it.',
} as const

export const paymentFaults = {
  noAmount: 'Type the amount in dollars, with at most two decimals.',
  nothing: 'Type the amount that was received.',
  noMethod: 'How was it paid?',
  noRefund: 'Type the amount that is given back.',
  tooMuchBack: 'Give back at most what was paid this way.',
  noReason: 'Say why it is given back.',
} as const

export const decisionFaults = {
  unanswered: 'Each line needs a Yes, a No or a Not today.',
  nothingChanged: 'Choose what the customer now answers otherwise.',
  nobody: 'Who decides?',
  noName: 'Write the name of who decides.',
  noSignature: 'Let the customer sign.',
  anotherName:
    'The name typed as a signature is not the name of who decides. Write both the same, or let them sign.',
  noCall: 'Write down the number called and the answer in words.',
} as const

export const writeUpFaults = {
  nobody: 'Whose vehicle is it? Type a name.',
  telephone:
    'The telephone number takes 7 to 24 digits, spaces, and the signs + ( ) - and the point; or leave it empty.',
  email: 'The e-mail address cannot be right: read it again, or leave it empty.',
  vin: 'The VIN cannot be right: read it again, or leave it empty.',
  noVehicle: 'Which vehicle is it?',
  noSheet: 'Choose the specification sheet.',
  noComplaint: 'Write down the complaint in the customer’s own words.',
  noLight: 'Ask what the light does; "does not know" is an answer.',
  noWaiting: 'Does the customer wait here?',
  promiseDay: 'Enter the day of the promise.',
  promisePast: 'The promised time has passed: change the day or the time.',
  noConsent: 'Record consent to inspect first.',
  consentByNobody: 'Who gave the consent?',
  noConsentName: 'Write the name of the person who gave the consent.',
  noLookFee: 'Choose the inspection fee before the inspection begins.',
} as const

export const recordFaults = {
  missing: 'Fill this in.',
  noNumber: 'Type a number with digits only, and a point before decimals.',
  whole: 'Type a whole number.',
  decimals: (most: number): string => `Keep it to ${most} ${most === 1 ? 'decimal' : 'decimals'}.`,
  noDay: 'Type a day, as 2026-03-02.',
  notOffered: 'Choose one of the list.',
  served: (found: string, allowed: string): string => `Found ${found}; allowed: ${allowed}.`,
  doubted: (found: string, usual: string): string => `Is ${found} right? ${usual}`,
} as const

export const bookFaults = {
  dayOfYear: 'Type a month and a day, as 11-15.',
  frequencies: 'One frequency, or two with a comma.',
} as const

export const hoursFaults = {
  form: 'Type opening and closing time, as 07:30-17:30, or leave it empty where it is closed.',
  order: 'It closes before it opens.',
} as const

export const textFaults = {
  head: 'Keep it to four lines of 80 letters.',
  telephone: 'Type it in international form, as +15555550100.',
  quietHours: 'Type two times, as 21:00-08:00.',
} as const

/** What is wrong with a message in the shop's own words. */
export const templateFaultWords = (fault: TemplateFault): string =>
  fault.why === 'missing-place'
    ? missingPlaceWords(fault.place)
    : `${fault.found} is not filled in. Type one of ${fault.places.join(', ')}, or leave the braces out.`

const missingPlaceWords = (place: string): string =>
  place === '{link}'
    ? 'The link is missing. Put {link} where the address goes.'
    : place === '{when}'
      ? 'Put {when} where it says when to come back.'
      : 'Put {work} where the work that was put off is listed.'

/** What is wrong with a figure of a specification sheet. */
export const sheetFaults = {
  labelInKilopascals: (typed: string): string =>
    `${typed} psi is more than any label asks for. Is it kPa? Type the psi figure of the label, or say that it prints kPa.`,
  unread: (needs: string, next: string): string => `It needs ${needs}. ${next}`,
} as const
