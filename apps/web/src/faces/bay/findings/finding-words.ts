import type { Finding, Stop } from '@bayledger/reckoning/diagnosis/diagnosis'
import { readingOrder, wheelNames } from '@bayledger/reckoning/wheels'
import type { Severity } from '../../../features/findings/severity-mark.tsx'

const severities: Readonly<Record<Finding['kind'], Severity>> = {
  stop: 'do-not-drive',
  cause: 'cause',
  also: 'also-found',
  note: 'for-information',
  ask: 'not-checked',
}

const stopWords: Readonly<Record<Stop, string>> = {
  'do-not-drive': 'Do not drive',
  'do-not-open-the-tire': 'Do not open the tire',
  'repair-before-release': 'Repair before it leaves',
}

export const severityOf = ({ kind }: Finding): Severity => severities[kind]

/** The word in place of the usual one, where another is truer. */
export const severityWordOf = ({ kind, stop }: Finding): string | undefined =>
  kind === 'ask' ? 'To be asked' : stop === undefined ? undefined : stopWords[stop]

/** "Sensor silent: left front, right rear" */
export const findingTitle = ({ code, wheels }: Finding): string => {
  const name = code.replaceAll('-', ' ')
  const title = name.charAt(0).toUpperCase() + name.slice(1)
  const road = wheels.filter((wheel) => wheel !== 'SP')
  if (wheels.length === 0) return title
  const where = road.length === 4 ? 'all four' : null
  return `${title}: ${where ?? wheels.map((wheel) => wheelNames[wheel]).join(', ')}`
}

/** The order in which findings are read: what stops the vehicle, the cause, the rest. */
export const inWeightOrder = (findings: readonly Finding[]): Finding[] => {
  const weight = ['stop', 'cause', 'also', 'ask', 'note']
  return [...findings].sort((one, other) => weight.indexOf(one.kind) - weight.indexOf(other.kind))
}

/** A reason with the wheel it was read at, where a finding rests on several: "right rear: silent at 3 tries". */
export const reasonWords = ({ wheels }: Finding, { field, says }: Finding['because'][number]): string => {
  const wheel = readingOrder.find((position) => field.startsWith(`wheels.${position}.`))
  return wheel === undefined || wheels.length < 2 ? says : `${wheelNames[wheel]}: ${says}`
}
