import { type FindingSeverity, severityOf } from '@bayledger/ledger/questions/severity'
import type { Finding, Hold, Reason } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { Pressure } from '@bayledger/reckoning/quantity'
import { inReadingOrder } from '@bayledger/reckoning/wheels'
import { capitalized } from '@bayledger/wording/capitalized'
import { fields } from '@bayledger/wording/en/fields'
import { findingTitles } from '@bayledger/wording/en/finding-titles'
import { observations } from '@bayledger/wording/en/observations'
import { severities } from '@bayledger/wording/en/severities'
import { wheels as wheelsWording } from '@bayledger/wording/en/wheels'
import { seenWords } from '@bayledger/wording/fields'
import { observedWords } from '@bayledger/wording/observations'
import { pressureText } from '../../lib/format.ts'
import type { Severity } from './severity-mark.tsx'

/** The shape of each weight, of the six that there are. */
const shapes: Readonly<Record<FindingSeverity, Severity>> = {
  'do-not-drive': 'do-not-drive',
  'do-not-open-the-tire': 'do-not-drive',
  'repair-before-release': 'do-not-drive',
  cause: 'cause',
  'also-found': 'also-found',
  unexplained: 'not-checked',
  'not-checked': 'not-checked',
  'for-information': 'for-information',
}

export const shapeOf = (finding: Finding, primary: string | null): Severity =>
  shapes[severityOf(finding, primary)]

/** The word that is always printed with the shape. */
export const wordOf = (finding: Finding, primary: string | null): string =>
  severities[severityOf(finding, primary)]

/** "Sensor does not answer: left front, right rear" */
export const headlineOf = ({ code, wheels }: Finding): string => {
  const title = findingTitles[code]
  const road = wheels.filter((wheel) => wheel !== 'SP')
  const allFour = /all four/i.test(title) ? [] : ['all four']
  const places = [
    ...(road.length === 4 ? allFour : inReadingOrder(road).map((wheel) => wheelsWording.names[wheel])),
    ...(wheels.includes('SP') ? [wheelsWording.names.SP] : []),
  ]
  return places.length === 0 ? title : `${title}: ${places.join(', ')}`
}

/** The measured figure that proves a finding, where a figure does. */
export const proofOf = ({ because }: Finding): Reason | null =>
  because.find(({ value, unit }) => typeof value === 'number' && unit !== null) ?? null

/** A reason's value in words, a pressure to a tenth: "22.0 psi"; observations and answers read "yes" or "no". */
export const valueWords = ({ value, unit, field }: Reason): string => {
  if (value === null) return 'not read'
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (typeof value === 'string') return isId(field) ? value.toUpperCase() : observedWords(observations, value)
  return unit === null ? String(value) : `${figureText(value, unit)} ${unitWords(unit)}`
}

/** What a reason was read at, as a title: "Right rear sensor". */
export const reasonTitle = ({ field }: Reason): string =>
  capitalized(seenWords({ fields, wheels: wheelsWording }, field))

const isId = (field: string): boolean => /(^|\.)ids?(\.|$)|^strayIds/.test(field)

/** With at least the decimals that its unit is read to. */
export const figureText = (value: number, unit: string | null): string =>
  (isPressureUnit(unit) ? pressureText({ value, unit }) : String(value)).replace('-', '−')

const isPressureUnit = (unit: string | null): unit is Pressure['unit'] =>
  unit === 'psi' || unit === 'kPa' || unit === 'bar'

export const unitWords = (unit: string | null): string =>
  unit === 'F' || unit === 'C' ? `°${unit}` : (unit ?? '')

/** What may not be done until the finding is settled. */
export const holdWords: Readonly<Record<Hold, string>> = {
  'wheel-removal': 'no wheel comes off',
  inflation: 'no air goes in',
  'bead-break': 'the tire is not opened',
  'pressure-setting': 'no pressure is set',
  relearn: 'no relearn',
  road: 'not driven on the road',
  'hand-back': 'the keys stay here',
}
