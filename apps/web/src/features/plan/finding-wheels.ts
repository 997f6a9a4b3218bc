import type { Finding, Reason } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { Evidence, WheelEvidence } from '@bayledger/reckoning/evidence/evidence'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import { observations } from '@bayledger/wording/en/observations'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { observedWords } from '@bayledger/wording/observations'
import type { PlanLine, PlanMark, PlanWheel } from './plan-wheel.ts'

/** Words that are too long for a cell. */
const shortWords: Readonly<Record<string, string>> = {
  'Do not open the tire': 'Do not open',
  'Repair before release': 'Repair first',
  'For information': 'Information',
}

/**
 * The wheels of the evidence as a finding sees them: those that it concerns are marked by shape and word and show
 * the figures that it rests on; the others show their gauge, small.
 */
export const findingWheels = (
  finding: Finding,
  evidence: Evidence,
  { word, isCause }: { readonly word: string; readonly isCause: boolean },
): Partial<Record<WheelPosition, PlanWheel>> => {
  const shape = shapeOf(finding.kind, isCause)
  return Object.fromEntries(
    readingOrder
      .filter(
        (wheel) => wheel !== 'SP' || (evidence.wheels?.SP ?? null) !== null || finding.wheels.includes(wheel),
      )
      .map((wheel) => {
        const reasons = finding.because.filter(({ field }) => field.split('.').includes(wheel))
        const gauged = gaugeLine(evidence.wheels?.[wheel], evidence.units.pressure)
        if (!finding.wheels.includes(wheel)) {
          const lines = reasons.length === 0 ? [gauged] : linesOf(reasons, gauged)
          return [wheel, { lines, state: 'none', label: labelOf(wheel, lines, null) }]
        }
        const lines = linesOf(reasons, gauged)
        const mark: PlanMark = { shape, word: shortWords[word] ?? word }
        return [wheel, { lines, state: 'none', mark, label: labelOf(wheel, lines, word) }]
      }),
  )
}

/** The shapes of findings, as in the list. */
const shapeOf = (kind: Finding['kind'], isCause: boolean): PlanMark['shape'] => {
  if (kind === 'stop') return 'bar'
  if (kind === 'ask') return 'dashed'
  return isCause ? 'thick' : 'thin'
}

const labelOf = (wheel: WheelPosition, lines: readonly PlanLine[], word: string | null): string =>
  `${wheelNames[wheel]}: ${[...(word === null ? [] : [word]), ...lines.map(({ text, unit }) => (unit ? `${text} ${unit}` : text))].join(', ')}`

const gaugeLine = (wheel: WheelEvidence | null | undefined, unit: string): PlanLine => {
  const gauge = wheel?.gauge ?? null
  return gauge === null ? { text: 'not gauged' } : { text: figureText(gauge, unit), unit }
}

/** The first measured figure large, the next reason in few words below it. */
const linesOf = (reasons: readonly Reason[], gauged: PlanLine): PlanLine[] => {
  const lines = reasons.map(lineOf)
  const figure = lines.find(({ isFigure }) => isFigure)
  const words = lines.filter((line) => line !== figure)
  if (figure) return [figure, ...words.slice(0, 1)]
  return words.length === 0 ? [gauged] : words.slice(0, 2)
}

const lineOf = ({ field, value, unit }: Reason): PlanLine => {
  const member = field.split('.').at(-1) ?? ''
  if (typeof value === 'number')
    return { text: figureText(value, unit), unit: unitOf(unit, member), isFigure: true }
  if (value === null) return { text: 'not read' }
  if (typeof value === 'boolean') return { text: `${plain[member] ?? member}: ${value ? 'yes' : 'no'}` }
  return {
    text:
      /^id/.test(member) || field.includes('.ids.')
        ? `…${value.slice(-4).toUpperCase()}`
        : observedWords(observations, value),
  }
}

const plain: Readonly<Record<string, string>> = { followsPressure: 'follows', sealantSeen: 'sealant' }

const unitsOfCounts: Readonly<Record<string, string>> = {
  tries: 'tries',
  tireAgeYears: 'years',
  sensorAgeMonths: 'months',
  treadDepth32nds: '/32 in',
  learnRefusals: 'refusals',
}

const unitOf = (unit: string | null, member: string): string =>
  unit === null ? (unitsOfCounts[member] ?? '') : unit === 'F' || unit === 'C' ? `°${unit}` : unit

const figureText = (value: number, unit: string | null): string =>
  unit === 'psi' ? String(Math.round(value * 10) / 10).replace(/^(-?\d+)$/, '$1.0') : String(value)
