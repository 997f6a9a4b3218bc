import { Day } from '@bayledger/contract/identity'
import { type CellFault, cellWords } from '../../words/csv-words.ts'

/** How a cell's text becomes a value and back. A text that cannot be read says what is wrong and what to do. */
export type Cell<Value> = {
  readonly read: (text: string) => { readonly value: Value } | CellFault
  readonly write: (value: Value) => string
}

const cell = <Value>(read: Cell<Value>['read'], write: Cell<Value>['write']): Cell<Value> => ({
  read: (text) => read(text.trim()),
  write,
})

/** Some text of at most so many characters, without control characters but line breaks, which become line feeds. */
export const textCell = (most: number) =>
  cell<string>(
    (text) => {
      if (text === '') return cellWords.empty
      if (text.length > most) return cellWords.tooLong(most)
      return hasControlCharacter(text) ? cellWords.controlCharacter : { value: withLineFeeds(text) }
    },
    (value) => value,
  )

/** Text that may be empty. */
export const maybeTextCell = (most: number) =>
  cell<string>(
    (text) => {
      if (text.length > most) return cellWords.tooLong(most)
      return hasControlCharacter(text) ? cellWords.controlCharacter : { value: withLineFeeds(text) }
    },
    (value) => value,
  )

export type Limits = { readonly from: number; readonly to: number; readonly unit: string }

/**
 * A number within limits, with a decimal point; `unit` is said where it is wrong. `other`: a unit in which numbers beyond
 * the limits are usual, so that it is asked about.
 */
export const numberCell = (limits: Limits & { readonly other?: Limits }) =>
  cell<number>(
    (text) => {
      if (text === '') return cellWords.empty
      if (/^-?\d+,\d+$/.test(text)) return cellWords.decimalComma
      if (!/^[+-]?\d+(\.\d+)?$/.test(text)) return cellWords.noNumber
      const value = Number(text)
      return value < limits.from || value > limits.to ? cellWords.outside(limits, value) : { value }
    },
    (value) => String(value),
  )

/** A whole number within limits. */
export const wholeNumberCell = (limits: Limits) =>
  cell<number>(
    (text) => {
      if (text === '') return cellWords.empty
      if (!/^[+-]?\d+$/.test(text)) return cellWords.noWholeNumber
      const value = Number(text)
      return value < limits.from || value > limits.to ? cellWords.outside(limits, value) : { value }
    },
    (value) => String(value),
  )

/** Dollars with two decimals, kept as whole cents. */
export const centsCell = (limits: { readonly fromCents: number; readonly toCents: number }) =>
  cell<number>(
    (text) => {
      if (text === '') return cellWords.empty
      const found = /^(-?)(\d{1,9})(?:\.(\d\d))?$/.exec(text)
      if (!found) return cellWords.noAmount
      const cents = Number(`${found[1]}${found[2]}${found[3] ?? '00'}`)
      return cents < limits.fromCents || cents > limits.toCents
        ? cellWords.amountOutside(limits)
        : { value: cents }
    },
    (value) => `${value < 0 ? '-' : ''}${(Math.abs(value) / 100).toFixed(2)}`,
  )

/** One word of a list. */
export const choiceCell = <const Choice extends string>(choices: readonly Choice[]) =>
  cell<Choice>(
    (text) => {
      const value = choices.find((one) => one.toLowerCase() === text.toLowerCase())
      return value === undefined ? cellWords.noneOf(choices) : { value }
    },
    (value) => value,
  )

/** `yes` or `no`. */
export const yesNoCell = () =>
  cell<boolean>(
    (text) => {
      const word = text.toLowerCase()
      return word === 'yes' || word === 'no' ? { value: word === 'yes' } : cellWords.noneOf(['yes', 'no'])
    },
    (value) => (value ? 'yes' : 'no'),
  )

/** A day, as 2026-01-12. */
export const dayCell = () =>
  cell<string>(
    (text) => (Day.safeParse(text).success ? { value: text } : cellWords.noDay),
    (value) => value,
  )

/** A cell that may be empty, which is `null`. */
export const maybe = <Value>({ read, write }: Cell<Value>): Cell<Value | null> => ({
  read: (text) => (text.trim() === '' ? { value: null } : read(text)),
  write: (value) => (value === null ? '' : write(value)),
})

/** Several in one cell, with semicolons between. */
export const severalCell = (most: number): Cell<readonly string[]> => ({
  read: (text) => {
    const list = text
      .split(';')
      .map((one) => one.trim())
      .filter((one) => one !== '')
    return list.length > most ? cellWords.tooMany(most) : { value: list }
  },
  write: (list) => list.join('; '),
})

/** Some words of a list, one at least, each once, with semicolons between. */
export const choicesCell = <const Choice extends string>(
  choices: readonly Choice[],
): Cell<readonly Choice[]> => ({
  read: (text) => {
    const list = severalCell(choices.length).read(text)
    if (!('value' in list)) return list
    const found = list.value.map((one) => choices.find((choice) => choice === one.toLowerCase()))
    const known = found.filter((one) => one !== undefined)
    return known.length === 0 || known.length < found.length || new Set(known).size < known.length
      ? cellWords.someOf(choices)
      : { value: known }
  },
  write: (list) => list.join('; '),
})

const withLineFeeds = (text: string): string => text.replace(/\r\n?/g, '\n')

const hasControlCharacter = (text: string): boolean => /[^\P{Cc}\n\r\t]/u.test(text)
