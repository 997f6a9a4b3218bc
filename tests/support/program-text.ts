/** Where a person's own words may be in what is stored, by the last names of the path; everything else is facts. */
const personWrote: readonly RegExp[] = [
  // A specification sheet is the shop's own record, typed by its people.
  /(^|\.)sheet\./,
  // A relearn step carries the sheet's own description of the procedure.
  /\.procedure\./,
  // The lift's step carries what the sheet says of lifting this vehicle.
  /\.liftNotes$/,
  /\.sources?\./,
  // As a reader of trouble codes shows them.
  /\.?codes\.\d+\.text$/,
  // Why something could not be checked, what a step recorded, what a technician found instead.
  /(^|\.)why$/,
  /(^|\.)reference$/,
  /(^|\.)value$/,
  /(^|\.)how$/,
  /(^|\.)ownFinding$/,
]

/** Two words or more in a row: a code, an id, a unit, an instant or a part number is one word. */
const isSentence = (text: string): boolean => /\p{L}{2,}\s+\p{L}{2,}/u.test(text)

/** Sentences in a stored value that no person wrote, each with its path: `findings.0.next: "Find the leak …"`. */
export const programText = (value: unknown, path = ''): string[] => {
  if (typeof value === 'string')
    return isSentence(value) && !personWrote.some((where) => where.test(path)) ? [`${path}: "${value}"`] : []
  if (value === null || typeof value !== 'object') return []
  return Object.entries(value).flatMap(([key, member]) =>
    programText(member, path === '' ? key : `${path}.${key}`),
  )
}
