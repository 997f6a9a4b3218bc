import { isStoredAt } from '@bayledger/ledger/questions/stored-id'
import type { OrderState, VehicleCheck, Written } from '@bayledger/ledger/state'
import { isSameFrequency } from '@bayledger/reckoning/sensor/frequency'
import { sensorOf } from '@bayledger/reckoning/sheet'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { english } from '@bayledger/wording/en/english'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { fieldWords } from '@bayledger/wording/fields'
import type { Block, Cell, Row, Section } from '../content.ts'
import { paragraph, table } from './blocks.ts'
import { type ReportContext, writtenMoment } from './context.ts'
import {
  figureWords,
  gap,
  good,
  lastFour,
  notChecked,
  number,
  orNotChecked,
  pressure,
  temperature,
  words,
} from './figures.ts'
import { authorName } from './people.ts'
import { expectsSensor, gaugeCell, wheelsOf, whyNot } from './wheel-lines.ts'

const { readings: says, cells, seen } = english.report

/** Gauge and sensor of every wheel, and what the vehicle had stored, before anything was touched or after. */
export const readingsSection = (
  state: OrderState,
  context: ReportContext,
  phase: 'arrival' | 'closing',
): Section => {
  const check = state[phase]
  if (phase === 'closing' && Object.keys(check.wheels).length === 0 && !check.module)
    return { title: says.titles.closing, blocks: [paragraph(says.noneAfter)] }
  return {
    title: says.titles[phase],
    blocks: [
      table(
        says.readings,
        readingShares,
        wheelsOf(state).map((wheel) => readingRow(state, phase, wheel)),
      ),
      whenTable(state, context, phase),
      ...(isCorrected(state, phase) ? [paragraph(says.gaugeCorrected)] : []),
      ...reasonBlocks(state, check),
      codesBlock(check),
    ],
  }
}

const readingShares = {
  wheel: 9,
  gauge: 12.5,
  sensor: 12.5,
  temperature: 11,
  battery: 12,
  frequency: 18,
  answer: 13,
  id: 11,
  stored: 14,
} as const

const isCorrected = (state: OrderState, phase: 'arrival' | 'closing'): boolean =>
  wheelsOf(state).some(
    (wheel) =>
      (phase === 'closing' ? setInstead(state, wheel) : null)?.asRead ??
      state[phase].wheels[wheel]?.gauge?.asRead,
  )

/** When each reading was taken, with which gauge, and by whom. */
const whenTable = (state: OrderState, context: ReportContext, phase: 'arrival' | 'closing'): Block =>
  table(
    says.when,
    { wheel: 8, gauge: 22, gauged: 35, sensorRead: 35 },
    wheelsOf(state).map((wheel): Row => {
      const readings = state[phase].wheels[wheel]
      const set = phase === 'closing' ? setInstead(state, wheel) : null
      const gauged = set ?? readings?.gauge ?? null
      const taken = ({ written }: { readonly written: Written }): Cell =>
        words(`${authorName(context, written.by)}, ${writtenMoment(context, written)}`)
      return {
        entry: gauged?.written.seq ?? readings?.sensor?.written.seq ?? null,
        cells: [
          words(wheel),
          orNotChecked(gauged, ({ instrument, asRead }) =>
            words(asRead ? says.gaugeRead(instrument.code, figureWords(pressure(asRead))) : instrument.code),
          ),
          orNotChecked(gauged, taken),
          readings?.sensor || expectsSensor(state, wheel) !== false
            ? orNotChecked(readings?.sensor, taken)
            : words(cells.noneExpected),
        ],
      }
    }),
  )

/** A tire that was not gauged again after it was set holds what it was set to. */
const setInstead = (state: OrderState, wheel: WheelPosition) => {
  const set = state.work[wheel]?.pressure ?? null
  const gauge = state.closing.wheels[wheel]?.gauge
  return set && !(gauge && gauge.written.seq > set.written.seq) ? set : null
}

const readingRow = (state: OrderState, phase: 'arrival' | 'closing', wheel: WheelPosition): Row => {
  const check = state[phase]
  const set = phase === 'closing' ? setInstead(state, wheel) : null
  const readings = check.wheels[wheel]
  const reading = readings?.sensor?.reading
  const answered = reading?.answer === 'answered' ? reading : null
  const because = whyNot(readings, 'answer')
  const ofSensor = <T>(value: T | null | undefined, cell: (value: T) => Cell): Cell => {
    if (answered) return orNotChecked(value, cell)
    if (reading?.answer === 'silent') return words(says.noAnswer)
    if (because !== null) return gap(cells.couldNotBeChecked)
    return expectsSensor(state, wheel) === false ? words(cells.noneExpected) : notChecked
  }
  return {
    entry: readings?.sensor?.written.seq ?? readings?.gauge?.written.seq ?? null,
    cells: [
      words(wheel),
      set ? words(says.asSet(figureWords(pressure(set.asLeft)))) : gaugeCell(readings),
      ofSensor(answered?.pressure, pressure),
      ofSensor(answered?.temperature, temperature),
      ofSensor(answered?.battery, batteryCell),
      ofSensor(answered?.frequencyMHz, (value) => frequencyCell(state, value)),
      answerCell(reading, because, expectsSensor(state, wheel)),
      ofSensor(answered?.id, (id) => ({ kind: 'id', text: lastFour(id) })),
      storedCell(check, wheel, answered?.id ?? null),
    ],
  }
}

/** The table says only that something could not be checked; here is why. */
const reasonBlocks = (state: OrderState, check: VehicleCheck): Block[] => {
  const reasons = wheelsOf(state).flatMap((wheel) =>
    (check.wheels[wheel]?.notPossible ?? []).map(({ field, why }) =>
      says.field(fieldWords(english, `wheels.${wheel}.${field}`), why),
    ),
  )
  return reasons.length === 0 ? [] : [paragraph(says.notPossible(reasons))]
}

const batteryCell = (battery: 'ok' | 'low' | 'not-reported'): Cell =>
  battery === 'ok' ? good(says.battery.ok) : words(says.battery[battery])

/** Another frequency than the one the vehicle listens to cannot be heard by it. */
const frequencyCell = (state: OrderState, value: number): Cell => {
  const text = `${number(value)} MHz`
  const wanted = sensorOf(state.sheet?.sheet)?.frequencyMHz
  if (wanted === undefined) return words(text)
  return isSameFrequency(value, wanted)
    ? good(text)
    : words(says.otherFrequency(text, `${number(wanted)} MHz`))
}

type Reading = NonNullable<NonNullable<VehicleCheck['wheels'][WheelPosition]>['sensor']>['reading']

const answerCell = (reading: Reading | undefined, because: string | null, expected: boolean | null): Cell => {
  if (reading?.answer === 'answered') return good(says.answers)
  if (reading?.answer === 'silent') return words(cells.silent(reading.tries))
  if (because !== null) return gap(cells.couldNotBeChecked)
  return expected === false ? words(cells.noneExpected) : notChecked
}

const storedCell = (check: VehicleCheck, wheel: WheelPosition, id: string | null): Cell => {
  const module = check.module
  if (!module) return notChecked
  if (module.state === 'unreadable') return gap(cells.couldNotBeChecked)
  const stored = module.ids[wheel]
  if (!stored) return words(module.state === 'blank' ? says.stored.nothing : says.stored.none)
  if (id === null) return words(says.stored.id(lastFour(stored)))
  return isStoredAt(module, wheel, id) ? good(says.stored.same) : words(says.stored.other(lastFour(stored)))
}

const codesBlock = (check: VehicleCheck): Block => {
  const module = check.module
  const entry = module?.written.seq ?? null
  if (!module) return paragraph(says.codesNotChecked, entry)
  if (module.state === 'unreadable') return paragraph(says.codesUnreadable(module.why || null), entry)
  const codes = module.codes.map(({ text, class: group, wheel }) =>
    says.code({
      text: text || null,
      class: seen.codes[group],
      wheel: wheel ? wheelNames[wheel] : null,
    }),
  )
  return paragraph(says.codes(codes), entry)
}
