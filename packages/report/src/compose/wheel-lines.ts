import { pressureAsLeft } from '@bayledger/ledger/questions/as-left'
import { severityOf } from '@bayledger/ledger/questions/severity'
import type { OrderState, WheelReadings } from '@bayledger/ledger/state'
import { placardOf } from '@bayledger/reckoning/sheet'
import { axleOf, roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import { capitalized } from '@bayledger/wording/capitalized'
import type { Cell, WheelLine } from '../content.ts'
import { figureWords, gap, labelPressure, lastFour, notChecked, pressure, words } from './figures.ts'
import type { Spoken } from './spoken.ts'

const says = ({ language }: Spoken) => language.report.readings
const cells = ({ language }: Spoken) => language.report.cells
const seen = ({ language }: Spoken) => language.report.seen

/** The wheels a report speaks of: the four, and the spare unless the sheet says there is none. */
export const wheelsOf = (state: OrderState): readonly WheelPosition[] =>
  state.sheet?.sheet.spare === 'none' ? roadPositions : [...roadPositions, 'SP']

export const wheelLines = (state: OrderState, context: Spoken): WheelLine[] =>
  wheelsOf(state).map((wheel) => ({
    position: wheel,
    name: context.language.wheels.names[wheel],
    marked: markedAs(state, context, wheel),
    before: gaugeCell(context, state.arrival.wheels[wheel]),
    after: afterCell(state, context, wheel),
    label: labelCell(state, context, wheel),
    sensorBefore: sensorCell(state, context, wheel, 'arrival'),
    sensorAfter: sensorCell(state, context, wheel, 'closing'),
  }))

/** A stop or the primary cause that names this wheel: a damaged tire by its damage, all else by its grade. */
const markedAs = (state: OrderState, context: Spoken, wheel: WheelPosition): WheelLine['marked'] => {
  const diagnosis = state.diagnosis?.diagnosis
  const naming = (diagnosis?.findings ?? []).filter(({ wheels }) => wheels.includes(wheel))
  const stop = naming.find(({ kind }) => kind === 'stop')
  if (stop) {
    const severity = severityOf(stop, diagnosis?.primary ?? null)
    const [damage] = state.arrival.tires[wheel]?.tireDamage ?? []
    const isDamaged = stop.code === 'tire-unsafe' && damage
    const word = isDamaged
      ? capitalized(seen(context).tireDamage[damage])
      : context.language.severities[severity]
    return { severity, word }
  }
  const cause = naming.find(({ code }) => code === diagnosis?.primary)
  if (!cause) return null
  const severity = severityOf(cause, diagnosis?.primary ?? null)
  return { severity, word: context.language.severities[severity] }
}

/** Why a field of one check could not be had, or `null`. */
export const whyNot = (readings: WheelReadings | undefined, field: string): string | null =>
  readings?.notPossible.find((entry) => entry.field === field)?.why ?? null

export const gaugeCell = (context: Spoken, readings: WheelReadings | undefined): Cell => {
  if (readings?.gauge) return pressure(readings.gauge.pressure)
  return whyNot(readings, 'gauge') === null ? notChecked(context) : gap(cells(context).couldNotBeChecked)
}

const afterCell = (state: OrderState, context: Spoken, wheel: WheelPosition): Cell => {
  const left = pressureAsLeft(state, wheel)
  if (left) return pressure(left)
  return gaugeCell(context, state.closing.wheels[wheel])
}

export const isLabelVerified = (state: OrderState): boolean =>
  state.figures.placard !== undefined || (state.sheet?.sheet.sources.placard?.verifiedBy ?? null) !== null

export const labelCell = (state: OrderState, context: Spoken, wheel: WheelPosition): Cell => {
  const placard = placardOf(state.sheet?.sheet)?.[axleOf(wheel)]
  if (!placard) return notChecked(context)
  const figure = labelPressure(placard.psi)
  return isLabelVerified(state) ? figure : gap(says(context).labelNotVerified(figureWords(figure)))
}

/** Whether a sensor is expected in a wheel; `null` if the sheet does not say. */
export const expectsSensor = (state: OrderState, wheel: WheelPosition): boolean | null => {
  const sheet = state.sheet?.sheet
  if (!sheet || sheet.system === 'unknown') return null
  return sheet.system === 'direct' && (wheel !== 'SP' || sheet.spareMonitored)
}

const sensorCell = (
  state: OrderState,
  context: Spoken,
  wheel: WheelPosition,
  phase: 'arrival' | 'closing',
): Cell => {
  const readings = state[phase].wheels[wheel]
  const reading = readings?.sensor?.reading
  if (reading?.answer === 'answered')
    return words(says(context).answersAs(reading.id ? lastFour(reading.id) : null))
  if (reading?.answer === 'silent') return words(cells(context).silent(reading.tries))
  if (whyNot(readings, 'answer') !== null) return gap(cells(context).couldNotBeChecked)
  return expectsSensor(state, wheel) === false ? words(cells(context).noneExpected) : notChecked(context)
}
