import type { OrderState } from '@bayledger/ledger/state'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { ReactNode } from 'react'
import { expectedIds, knownIds } from '../../../features/sensor-ids/known-ids.ts'
import { RowForm } from '../form/row-form.tsx'
import { useRecord } from '../record/use-record.ts'
import { cannotBeAsked, rowsAsHeard, sensorAnswerOf, sensorRows } from './sensor-rows.ts'
import { likelyTemperatures } from './temperatures.ts'

type SensorFormProps = {
  state: OrderState
  wheel: WheelPosition
  phase: 'arrival' | 'closing'
  stepKey: string | null
  title: string
  beside: ReactNode
  nextWords: string | null
  /** One more row is to be read of a sensor that answered; the earlier readings are filled in. */
  row?: string | undefined
  onDone: () => void
}

/** One wheel's sensor, triggered with the shop's reader. */
export function SensorForm({
  state,
  wheel,
  phase,
  stepKey,
  title,
  beside,
  nextWords,
  row,
  onDone,
}: SensorFormProps) {
  const { record, busy, problem } = useRecord(state.orderId)
  const known = knownIds(state, wheel)
  const question = {
    known,
    expected: expectedIds(state, wheel).slice(0, 2),
    temperatures: likelyTemperatures(state, phase),
    mayBeExcused: phase === 'arrival',
    asked: row,
  }
  const before = state[phase].wheels[wheel]?.sensor?.reading
  const heard = before?.answer === 'answered' && row !== undefined ? before : null
  const silentTries = before?.answer === 'silent' ? before.tries : 0
  const sensor = state.sheet?.sheet.sensor
  return (
    <RowForm
      draftKey={`${state.orderId}/${stepKey ?? `sensor/${wheel}`}`}
      title={title}
      beside={beside}
      how={
        silentTries > 0
          ? `Silent so far, asked ${silentTries} times.`
          : wakeWords[sensor?.wokenBy ?? 'unknown']
      }
      rows={(values) => sensorRows(values, question)}
      blank={heard ? rowsAsHeard(heard) : {}}
      firstRow={row}
      recordsItself
      recordWord={nextWords === null ? 'Record' : `Record · next ${nextWords}`}
      busy={busy}
      problem={problem}
      onRecord={async (values, form) => {
        if (values.answer === cannotBeAsked) {
          const excused = await record(
            'wheel.checked',
            {
              phase,
              stepKey,
              wheel,
              mounted: null,
              gauge: null,
              sensor: null,
              notPossible: [{ field: 'answer', why: (values.why ?? '').trim() }],
            },
            `${wheel} cannot be asked`,
            form,
          )
          if (excused) onDone()
          return excused
        }
        const reading = sensorAnswerOf(values, known, heard ? heard.tries - 1 : silentTries)
        if (reading === null) return false
        const taken = await record(
          'wheel.checked',
          { phase, stepKey, wheel, mounted: null, gauge: null, sensor: reading, notPossible: [] },
          `${wheel} sensor`,
          form,
        )
        if (taken) onDone()
        return taken
      }}
    />
  )
}

const wakeWords = {
  'low-frequency-field': 'Hold the reader at the stem: its field wakes the sensor.',
  'pressure-drop': 'This one wakes when a little air is let off.',
  magnet: 'This one wakes by a magnet at the stem.',
  unknown: 'The sheet does not say how this sensor is woken.',
} as const
