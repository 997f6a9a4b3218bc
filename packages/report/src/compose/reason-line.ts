import type { Reason } from '@bayledger/reckoning/diagnosis/diagnosis'
import { capitalized } from '@bayledger/wording/capitalized'
import { seenWords } from '@bayledger/wording/fields'
import { reasonWords } from '@bayledger/wording/reasons'
import { number } from './figures.ts'
import { unitWords } from './proof-figure.ts'
import type { Spoken } from './spoken.ts'

/** A reason of a finding with its value: "Right front sensor frequency 315 MHz: the vehicle listens on 433.92 MHz". */
export const reasonLine = (context: Spoken, reason: Reason): string => {
  const value =
    typeof reason.value === 'number'
      ? `${number(reason.value, reason.unit ?? '')} ${unitWords(context, reason)}`.trim()
      : plainValue(context, reason)
  const shows = reasonWords(context.language, reason)
  // "Left front damage to the tire: a bulge" says it once; so does a yes before what was seen.
  const isSaidThere =
    value === '' || reason.value === true || (typeof reason.value !== 'number' && shows.includes(value))
  return capitalized(
    `${seenWords(context.language, reason.field)}${isSaidThere ? '' : ` ${value}`}: ${shows}`,
  )
}

/** A sensor's ID is shortened here too: this is the customer's copy. */
const plainValue = (context: Spoken, { value, field }: Reason): string => {
  const { values } = context.language.report.findings
  if (value === null) return values['not-checked']
  if (typeof value === 'boolean') return values[value ? 'yes' : 'no']
  const text = String(value)
  if (/(^|\.)ids?(\.|$)|strayIds/.test(field)) return `…${text.slice(-4)}`
  return Object.hasOwn(values, text) ? values[text as keyof typeof values] : text
}
