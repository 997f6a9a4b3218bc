import type { Finding, Reason } from '@bayledger/reckoning/diagnosis/diagnosis'
import { capitalized } from '@bayledger/wording/capitalized'
import { fieldWords } from '@bayledger/wording/fields'
import { reasonWords } from '@bayledger/wording/reasons'
import type { FoundPart } from '../content.ts'
import { number } from './figures.ts'
import type { Spoken } from './spoken.ts'

/** The number among a finding's reasons that says most, with what it says: of several gauge readings the lowest. */
export const proofOfFinding = (context: Spoken, { because }: Finding): FoundPart['proof'] => {
  const numbers = because.flatMap((reason) =>
    typeof reason.value === 'number' ? [{ reason, value: reason.value }] : [],
  )
  const gauged = numbers.filter(({ reason }) => /^wheels\.\w+\.gauge$/.test(reason.field))
  const [lowest] = gauged.toSorted((one, other) => one.value - other.value)
  const shown = gauged.length > 1 && numbers[0] === gauged[0] ? lowest : numbers[0]
  if (!shown) return null
  const { reason, value } = shown
  const which =
    shown === lowest && gauged.length > 1 ? context.language.report.found.lowestOf(gauged.length) : ''
  return {
    figure: { kind: 'figure', value: number(value, reason.unit ?? ''), unit: unitWords(context, reason) },
    says: capitalized(
      `${fieldWords(context.language, reason.field)}${which}: ${reasonWords(context.language, reason)}`,
    ),
  }
}

/** A reason's unit as it is printed. */
export const unitWords = ({ language }: Spoken, { unit }: Reason): string => {
  if (unit === 'months' || unit === 'years') return language.report.findings.units[unit]
  return unit === 'F' || unit === 'C' ? `°${unit}` : (unit ?? '')
}
