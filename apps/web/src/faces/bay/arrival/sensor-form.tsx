import type { OrderState } from '@bayledger/ledger/state'
import { sensorOf } from '@bayledger/reckoning/sheet'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { type ComponentProps, type ComponentType, type ReactNode, useState } from 'react'
import { tellScan } from '../../../features/scanning/scan-notice.tsx'
import { partMissing } from '../../../features/scanning/scan-words.ts'
import { expectedIds, knownIds } from '../../../features/sensor-ids/known-ids.ts'
import { Button } from '../../../ui/button.tsx'
import { RowForm } from '../form/row-form.tsx'
import { useRecord } from '../record/use-record.ts'
import { partNumbers, useStock } from '../work/stock-here.ts'
import type { AllWheelsForm } from './all-wheels-form.tsx'
import { cannotBeAsked, rowsAsHeard, sensorAnswerOf, sensorRows } from './sensor-rows.ts'
import { likelyTemperatures } from './temperatures.ts'
import { wheelsAsked } from './wheels-asked.ts'

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
  const stock = useStock(state.locationId)
  const [AllWheels, setAllWheels] = useState<ComponentType<ComponentProps<typeof AllWheelsForm>> | null>(null)
  const known = knownIds(state, wheel)
  const question = {
    listedParts: partNumbers(stock),
    known,
    expected: expectedIds(state, wheel).slice(0, 2),
    temperatures: likelyTemperatures(state, phase),
    mayBeExcused: phase === 'arrival',
    asked: row,
  }
  const before = state[phase].wheels[wheel]?.sensor?.reading
  const heard = before?.answer === 'answered' && row !== undefined ? before : null
  const silentTries = before?.answer === 'silent' ? before.tries : 0
  const sensor = sensorOf(state.sheet?.sheet)
  const mayBeRead = wheelsAsked(state, phase).length
  if (AllWheels !== null)
    return <AllWheels state={state} phase={phase} onDone={onDone} onLeave={() => setAllWheels(null)} />
  // Few tablets read all wheels from one text: that part of the program is loaded when it is asked for.
  const openAllWheels = () =>
    import('./all-wheels-form.tsx').then(
      (loaded) => setAllWheels(() => loaded.AllWheelsForm),
      () => tellScan(partMissing),
    )
  return (
    <RowForm
      draftKey={`${state.orderId}/${stepKey ?? `sensor/${wheel}`}`}
      title={title}
      beside={
        <>
          {beside}
          {mayBeRead > 1 ? (
            <Button
              className={phase === 'closing' ? 'step-beside-alone' : ''}
              onClick={() => void openAllWheels()}
            >
              All at once
            </Button>
          ) : null}
        </>
      }
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
