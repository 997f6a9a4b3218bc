import { isStoredAt } from '@bayledger/ledger/questions/stored-id'
import type { OrderState, VehicleCheck, Written } from '@bayledger/ledger/state'
import { isSameFrequency } from '@bayledger/reckoning/sensor/frequency'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { english } from '@bayledger/wording/en/english'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { fieldWords } from '@bayledger/wording/fields'
import type { Block, Cell, Row, Section } from '../content.ts'
import { type ReportContext, writtenMoment } from './context.ts'
import {
  figureWords,
  gap,
  good,
  lastFour,
  listed,
  notChecked,
  number,
  orNotChecked,
  plural,
  pressure,
  temperature,
  words,
} from './figures.ts'
import { authorName } from './people.ts'
import { expectsSensor, gaugeCell, wheelsOf, whyNot } from './wheel-lines.ts'

/** Gauge and sensor of every wheel, and what the vehicle had stored, before anything was touched or after. */
export const readingsSection = (
  state: OrderState,
  context: ReportContext,
  phase: 'arrival' | 'closing',
): Section => {
  const check = state[phase]
  if (phase === 'closing' && Object.keys(check.wheels).length === 0 && !check.module)
    return {
      title: 'Readings as left',
      blocks: [{ kind: 'paragraph', text: 'No sensor was read again after the work.', entry: null }],
    }
  return {
    title: phase === 'arrival' ? 'Readings as received' : 'Readings as left',
    blocks: [
      {
        kind: 'table',
        caption: 'Pressures and sensors',
        columns: [
          { title: 'Wheel', share: 9 },
          { title: 'Gauge', share: 12.5 },
          { title: 'Sensor', share: 12.5 },
          { title: 'Sensor temp.', share: 11 },
          { title: 'Battery', share: 12 },
          { title: 'Frequency', share: 18 },
          { title: 'Answer', share: 13 },
          { title: 'ID, last 4', share: 11 },
          { title: 'Stored in vehicle', share: 14 },
        ],
        rows: wheelsOf(state).map((wheel) => readingRow(state, phase, wheel)),
      },
      whenTable(state, context, phase),
      ...reasonBlocks(state, check),
      codesBlock(check),
    ],
  }
}

/** When each reading was taken, with which gauge, and by whom. */
const whenTable = (state: OrderState, context: ReportContext, phase: 'arrival' | 'closing'): Block => ({
  kind: 'table',
  caption: 'When, with what and by whom',
  columns: [
    { title: 'Wheel', share: 9 },
    { title: 'Gauge', share: 15 },
    { title: 'Gauged', share: 38 },
    { title: 'Sensor read', share: 38 },
  ],
  rows: wheelsOf(state).map((wheel): Row => {
    const readings = state[phase].wheels[wheel]
    const set = phase === 'closing' ? setInstead(state, wheel) : null
    const gauged = set ?? readings?.gauge ?? null
    const taken = ({ written }: { readonly written: Written }): Cell =>
      words(`${authorName(context, written.by)}, ${writtenMoment(context, written)}`)
    return {
      entry: gauged?.written.seq ?? readings?.sensor?.written.seq ?? null,
      cells: [
        words(wheel),
        orNotChecked(gauged, ({ instrument }) => words(instrument.code)),
        orNotChecked(gauged, taken),
        readings?.sensor || expectsSensor(state, wheel) !== false
          ? orNotChecked(readings?.sensor, taken)
          : words('none expected'),
      ],
    }
  }),
})

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
    if (reading?.answer === 'silent') return words('no answer')
    if (because !== null) return gap('could not be checked')
    return expectsSensor(state, wheel) === false ? words('none expected') : notChecked
  }
  return {
    entry: readings?.sensor?.written.seq ?? readings?.gauge?.written.seq ?? null,
    cells: [
      words(wheel),
      set ? words(`${figureWords(pressure(set.asLeft))}, as set`) : gaugeCell(readings),
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
    (check.wheels[wheel]?.notPossible ?? []).map(
      ({ field, why }) => `${fieldWords(english, `wheels.${wheel}.${field}`)} (${why})`,
    ),
  )
  return reasons.length === 0
    ? []
    : [{ kind: 'paragraph', text: `Could not be checked: ${listed(reasons)}.`, entry: null }]
}

const batteryCell = (battery: 'ok' | 'low' | 'not-reported'): Cell => {
  if (battery === 'ok') return good('ok')
  return words(battery === 'low' ? 'low' : 'not reported')
}

/** Another frequency than the one the vehicle listens to cannot be heard by it. */
const frequencyCell = (state: OrderState, value: number): Cell => {
  const text = `${number(value)} MHz`
  const wanted = state.sheet?.sheet.sensor?.frequencyMHz
  if (wanted === undefined) return words(text)
  return isSameFrequency(value, wanted) ? good(text) : words(`${text}, not ${number(wanted)} MHz`)
}

type Reading = NonNullable<NonNullable<VehicleCheck['wheels'][WheelPosition]>['sensor']>['reading']

const answerCell = (reading: Reading | undefined, because: string | null, expected: boolean | null): Cell => {
  if (reading?.answer === 'answered') return good('answers')
  if (reading?.answer === 'silent') return words(`silent, ${plural(reading.tries, 'try', 'tries')}`)
  if (because !== null) return gap('could not be checked')
  return expected === false ? words('none expected') : notChecked
}

const storedCell = (check: VehicleCheck, wheel: WheelPosition, id: string | null): Cell => {
  const module = check.module
  if (!module) return notChecked
  if (module.state === 'unreadable') return gap('could not be checked')
  const stored = module.ids[wheel]
  if (!stored) return words(module.state === 'blank' ? 'no, nothing stored' : 'no ID stored')
  if (id === null) return words(`stored ${lastFour(stored)}`)
  return isStoredAt(module, wheel, id) ? good('yes') : words(`no, ${lastFour(stored)}`)
}

const codesBlock = (check: VehicleCheck): Block => {
  const module = check.module
  const entry = module?.written.seq ?? null
  if (!module) return { kind: 'paragraph', text: 'Codes stored in the vehicle: not checked.', entry }
  if (module.state === 'unreadable')
    return {
      kind: 'paragraph',
      text: `Codes stored in the vehicle: could not be checked${module.why ? `: ${module.why}` : ''}.`,
      entry,
    }
  const codes = module.codes.map((code) => {
    const where = code.wheel ? `, ${wheelNames[code.wheel]}` : ''
    return `${code.text ? `${code.text} ` : ''}(${code.class.replaceAll('-', ' ')}${where})`
  })
  return {
    kind: 'paragraph',
    text:
      codes.length === 0
        ? 'Codes stored in the vehicle: none.'
        : `Codes stored in the vehicle: ${listed(codes)}.`,
    entry,
  }
}
