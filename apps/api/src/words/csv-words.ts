/** Why a cell or a row of an imported file is refused, and what to do. Its sender reads it; nothing stores it. */
/** The least and the most that is allowed. */
type Limits = { readonly from: number; readonly to: number; readonly unit: string }

export type CellFault = { readonly reason: string; readonly do: string }

const thenImport = 'Correct it in the file and import the file again.'

/** What a number is in, where its row says it. */
export const unitBeside = 'the unit beside it'

export const cellWords = {
  tooMany: (most: number): CellFault => ({
    reason: `There are more than ${most} in the cell.`,
    do: `Keep ${most} of them, with semicolons between. ${thenImport}`,
  }),
  noPlace: (names: readonly string[]): CellFault => ({
    reason: 'The shop has no place of this name.',
    do: `Write ${names.join(' or ')}. ${thenImport}`,
  }),
  noLabelPressure: {
    reason: 'This is no pressure as a label prints it without psi.',
    do: `Write 2.3 bar or 230 kPa, or leave the cell empty where the label prints psi. ${thenImport}`,
  },
  noMonth: {
    reason: 'This is no month.',
    do: `Write year and month, as 2025-08. ${thenImport}`,
  },
  empty: { reason: 'The cell is empty.', do: `Fill it in. ${thenImport}` },
  tooLong: (most: number): CellFault => ({
    reason: `The text is longer than ${most} characters.`,
    do: `Shorten it. ${thenImport}`,
  }),
  controlCharacter: {
    reason: 'The text holds a character that cannot be printed.',
    do: `Type the text again. ${thenImport}`,
  },
  decimalComma: {
    reason: 'The number has a comma.',
    do: `Write a point before the decimals and nothing between thousands. ${thenImport}`,
  },
  noNumber: { reason: 'This is not a number.', do: `Write digits and at most one point. ${thenImport}` },
  noWholeNumber: { reason: 'This is not a whole number.', do: `Write digits only. ${thenImport}` },
  outside: ({ from, to, unit, other }: Limits & { readonly other?: Limits }, value: number): CellFault => ({
    reason: `Allowed is ${`${from} to ${to} ${unit}`.trim()}.${
      other && value >= other.from && value <= other.to ? ` Is it ${value} ${other.unit}?` : ''
    }`,
    do: `Check the number and its unit. ${thenImport}`,
  }),
  noAmount: {
    reason: 'This is not an amount of money.',
    do: `Write dollars as 12.50, without a sign for the currency. ${thenImport}`,
  },
  amountOutside: ({ fromCents, toCents }: { fromCents: number; toCents: number }): CellFault => ({
    reason: `Allowed is ${(fromCents / 100).toFixed(2)} to ${(toCents / 100).toFixed(2)}.`,
    do: `Check the amount. ${thenImport}`,
  }),
  noneOf: (choices: readonly string[]): CellFault => ({
    reason: `This is none of the words of this column.`,
    do: `Write one of: ${choices.join(', ')}. ${thenImport}`,
  }),
  someOf: (choices: readonly string[]): CellFault => ({
    reason: 'The cell holds none of the words of this column, another one, or one twice.',
    do: `Write one or more of: ${choices.join(', ')}; with semicolons between. ${thenImport}`,
  }),
  noDay: { reason: 'This is not a day.', do: `Write year, month and day as 2026-01-12. ${thenImport}` },
} as const

export const sheetRowWords = {
  partOf: (first: string): CellFault => ({
    reason: `The cell is empty, and other cells of the same figure (from ${first} on) are not.`,
    do: `Fill it in, or empty the whole figure. ${thenImport}`,
  }),
  missing: { reason: 'The cell is empty.', do: `Fill it in. ${thenImport}` },
  unlikely: (doubt: string): CellFault => ({
    reason: doubt,
    do: `Read the source again. If the figure is right as it is, write yes under unlikely_read_twice. ${thenImport}`,
  }),
  notTaken: (allowed: string): CellFault => ({ reason: `Allowed is ${allowed}.`, do: thenImport }),
  sequence: (allowed: string, next: string): CellFault => ({
    reason: `Allowed is ${allowed}.`,
    do: `${next} ${thenImport}`,
  }),
} as const

/** Why a row of a file of people, places, texts or tablets is refused. */
export const registerRowWords = {
  cannotBe: (allowed: string | null): CellFault => ({
    reason: allowed === null ? 'The cell does not have the form of this column.' : `Allowed is ${allowed}.`,
    do: thenImport,
  }),
  askedOnThePage: (usual: string): CellFault => ({
    reason: `This is likely a slip: ${usual}.`,
    do: 'Correct it in the file; if it is right, enter it on its page, which asks.',
  }),
  takesNone: (kind: string): CellFault => ({
    reason: `With ${kind} under overrun this figure counts for nothing.`,
    do: `Empty the cell, or correct the word under overrun. ${thenImport}`,
  }),
  noHours: {
    reason: 'These are no opening hours.',
    do: `Write when it opens and closes, as 07:30-17:30, or leave the cell empty where it is closed. ${thenImport}`,
  },
  lastOwner: {
    reason: 'After this file nobody who works here would be an owner.',
    do: `Leave one person with the role owner and yes under works_here. ${thenImport}`,
  },
  noSuchTablet: {
    reason: 'The shop has no tablet of this id.',
    do: 'Leave the row out. A tablet is added with a code from the desk; a file renames and moves those that are there.',
  },
  tabletSays: (stored: string): CellFault => ({
    reason: `The shop says ${stored}, and no file changes that.`,
    do: `Write ${stored}; a tablet is put out on its page. ${thenImport}`,
  }),
  noSuchText: (names: readonly string[]): CellFault => ({
    reason: 'The shop has no text of this name.',
    do: `Write one of: ${names.join(', ')}. ${thenImport}`,
  }),
} as const

export const rowWords = {
  noSuchPrice: {
    reason: 'The price book has no such item.',
    do: `Write an item as an export names it; fees, discounts and seasons are new under fees., discounts. or seasons. ${thenImport}`,
  },
  notAllowed: (allowed: string): CellFault => ({
    reason: `Allowed is ${allowed}.`,
    do: `Correct the row. ${thenImport}`,
  }),
  askedOnThePage: (usual: string): CellFault => ({
    reason: `This is unusual: ${usual}.`,
    do: 'Correct it, or change it on the page of the prices, which asks you and takes your answer.',
  }),
  cellCount: (found: number, wanted: number): CellFault => ({
    reason: `The row has ${found} cells and the header ${wanted}.`,
    do: `Look for a separator that is missing or too many; put texts that hold one in quotation marks. ${thenImport}`,
  }),
  sameAs: (row: number): CellFault => ({
    reason: `Row ${row} is about the same record.`,
    do: `Keep one of the two rows. ${thenImport}`,
  }),
} as const
