import { isStoredAt } from '@bayledger/ledger/questions/stored-id'
import type { OrderState, VehicleCheck, Written } from '@bayledger/ledger/state'
import { isSameFrequency } from '@bayledger/reckoning/sensor/frequency'
import { sensorOf } from '@bayledger/reckoning/sheet'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
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
import type { Spoken } from './spoken.ts'
import { expectsSensor, gaugeCell, wheelsOf, whyNot } from './wheel-lines.ts'

const says = ({ language }: Spoken) => language.report.readings
const cells = ({ language }: Spoken) => language.report.cells
const seen = ({ language }: Spoken) => language.report.seen

/** Gauge and sensor of every wheel, and what the vehicle had stored, before anything was touched or after. */
export const readingsSection = (
  state: OrderState,
  context: ReportContext,
  phase: 'arrival' | 'closing',
): Section => {
  const check = state[phase]
  if (phase === 'closing' && Object.keys(check.wheels).length === 0 && !check.module)
    return { title: says(context).titles.closing, blocks: [paragraph(says(context).noneAfter)] }
  return {
    title: says(context).titles[phase],
    blocks: [
      table(
        says(context).readings,
        readingShares,
        wheelsOf(state).map((wheel) => readingRow(state, context, phase, wheel)),
      ),
      whenTable(state, context, phase),
      ...(isCorrected(state, phase) ? [paragraph(says(context).gaugeCorrected)] : []),
      ...reasonBlocks(state, context, check),
      codesBlock(context, check),
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
    says(context).when,
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
          orNotChecked(context, gauged, ({ instrument, asRead }) =>
            words(
              asRead
                ? says(context).gaugeRead(instrument.code, figureWords(pressure(asRead)))
                : instrument.code,
            ),
          ),
          orNotChecked(context, gauged, taken),
          readings?.sensor || expectsSensor(state, wheel) !== false
            ? orNotChecked(context, readings?.sensor, taken)
            : words(cells(context).noneExpected),
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

const readingRow = (
  state: OrderState,
  context: Spoken,
  phase: 'arrival' | 'closing',
  wheel: WheelPosition,
): Row => {
  const check = state[phase]
  const set = phase === 'closing' ? setInstead(state, wheel) : null
  const readings = check.wheels[wheel]
  const reading = readings?.sensor?.reading
  const answered = reading?.answer === 'answered' ? reading : null
  const because = whyNot(readings, 'answer')
  const ofSensor = <T>(value: T | null | undefined, cell: (value: T) => Cell): Cell => {
    if (answered) return orNotChecked(context, value, cell)
    if (reading?.answer === 'silent') return words(says(context).noAnswer)
    if (because !== null) return gap(cells(context).couldNotBeChecked)
    return expectsSensor(state, wheel) === false ? words(cells(context).noneExpected) : notChecked(context)
  }
  return {
    entry: readings?.sensor?.written.seq ?? readings?.gauge?.written.seq ?? null,
    cells: [
      words(wheel),
      set ? words(says(context).asSet(figureWords(pressure(set.asLeft)))) : gaugeCell(context, readings),
      ofSensor(answered?.pressure, pressure),
      ofSensor(answered?.temperature, temperature),
      ofSensor(answered?.battery, (battery) => batteryCell(context, battery)),
      ofSensor(answered?.frequencyMHz, (value) => frequencyCell(state, context, value)),
      answerCell(context, reading, because, expectsSensor(state, wheel)),
      ofSensor(answered?.id, (id) => ({ kind: 'id', text: lastFour(id) })),
      storedCell(context, check, wheel, answered?.id ?? null),
    ],
  }
}

/** The table says only that something could not be checked; here is why. */
const reasonBlocks = (state: OrderState, context: Spoken, check: VehicleCheck): Block[] => {
  const reasons = wheelsOf(state).flatMap((wheel) =>
    (check.wheels[wheel]?.notPossible ?? []).map(({ field, why }) =>
      says(context).field(fieldWords(context.language, `wheels.${wheel}.${field}`), why),
    ),
  )
  return reasons.length === 0 ? [] : [paragraph(says(context).notPossible(reasons))]
}

const batteryCell = (context: Spoken, battery: 'ok' | 'low' | 'not-reported'): Cell =>
  battery === 'ok' ? good(says(context).battery.ok) : words(says(context).battery[battery])

/** Another frequency than the one the vehicle listens to cannot be heard by it. */
const frequencyCell = (state: OrderState, context: Spoken, value: number): Cell => {
  const text = `${number(value)} MHz`
  const wanted = sensorOf(state.sheet?.sheet)?.frequencyMHz
  if (wanted === undefined) return words(text)
  return isSameFrequency(value, wanted)
    ? good(text)
    : words(says(context).otherFrequency(text, `${number(wanted)} MHz`))
}

type Reading = NonNullable<NonNullable<VehicleCheck['wheels'][WheelPosition]>['sensor']>['reading']

const answerCell = (
  context: Spoken,
  reading: Reading | undefined,
  because: string | null,
  expected: boolean | null,
): Cell => {
  if (reading?.answer === 'answered') return good(says(context).answers)
  if (reading?.answer === 'silent') return words(cells(context).silent(reading.tries))
  if (because !== null) return gap(cells(context).couldNotBeChecked)
  return expected === false ? words(cells(context).noneExpected) : notChecked(context)
}

const storedCell = (context: Spoken, check: VehicleCheck, wheel: WheelPosition, id: string | null): Cell => {
  const module = check.module
  if (!module) return notChecked(context)
  if (module.state === 'unreadable') return gap(cells(context).couldNotBeChecked)
  const stored = module.ids[wheel]
  if (!stored)
    return words(module.state === 'blank' ? says(context).stored.nothing : says(context).stored.none)
  if (id === null) return words(says(context).stored.id(lastFour(stored)))
  return isStoredAt(module, wheel, id)
    ? good(says(context).stored.same)
    : words(says(context).stored.other(lastFour(stored)))
}

const codesBlock = (context: Spoken, check: VehicleCheck): Block => {
  const module = check.module
  const entry = module?.written.seq ?? null
  if (!module) return paragraph(says(context).codesNotChecked, entry)
  if (module.state === 'unreadable')
    return paragraph(says(context).codesUnreadable(module.why || null), entry)
  const codes = module.codes.map(({ text, class: group, wheel }) =>
    says(context).code({
      text: text || null,
      class: seen(context).codes[group],
      wheel: wheel ? context.language.wheels.names[wheel] : null,
    }),
  )
  return paragraph(says(context).codes(codes), entry)
}
