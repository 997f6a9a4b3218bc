import type { OrderState } from '@bayledger/ledger/order-state'
import { type WheelPosition, wheelNames } from '@bayledger/reckoning/wheels'
import { type Pace, type Thing, thingAfter, thingsLeft } from '../../../features/arrival/things.ts'
import { GaugeForm } from './gauge-form.tsx'
import { LightForm } from './light-form.tsx'
import { ModuleForm } from './module-form.tsx'
import { SensorForm } from './sensor-form.tsx'
import { SurroundingsForm } from './surroundings-form.tsx'
import { TireForm } from './tire-form.tsx'
import { WheelTabs } from './wheel-tabs.tsx'

type ArrivalStepProps = {
  state: OrderState
  thing: Thing
  pace: Pace
  onOpen: (thing: Thing) => void
  /** Recorded: whatever is next comes up by itself. */
  onDone: (done: Thing) => void
}

/** The pad of one thing of the arrival check. */
export function ArrivalStep({ state, thing, pace, onOpen, onDone }: ArrivalStepProps) {
  const done = () => onDone(thing)
  if (!('wheel' in thing)) {
    if (thing.what === 'surroundings') return <SurroundingsForm state={state} onDone={done} />
    if (thing.what === 'warning-light')
      return (
        <LightForm
          state={state}
          phase="arrival"
          stepKey={null}
          title="Watch the warning light"
          onDone={done}
        />
      )
    return (
      <ModuleForm
        state={state}
        phase="arrival"
        stepKey={null}
        title="Read what the vehicle stored"
        how="Read first, clear nothing: what is cleared now is lost for the findings."
        onDone={done}
      />
    )
  }
  const { wheel } = thing
  const tabs = <WheelTabs state={state} wheel={wheel} at={thing.what} onOpen={onOpen} />
  const nextWords = wordsOfNext(state, thing, pace)
  if (thing.what === 'gauge')
    return (
      <GaugeForm key={wheel} state={state} wheel={wheel} tabs={tabs} nextWords={nextWords} onDone={done} />
    )
  if (thing.what === 'sensor')
    return (
      <SensorForm
        key={wheel}
        state={state}
        wheel={wheel}
        phase="arrival"
        stepKey={null}
        title={`Ask the ${wheelNames[wheel]} sensor`}
        beside={tabs}
        nextWords={nextWords}
        onDone={done}
      />
    )
  return <TireForm key={wheel} state={state} wheel={wheel} tabs={tabs} onDone={done} />
}

const wordsOfNext = (
  state: OrderState,
  thing: Extract<Thing, { wheel: WheelPosition }>,
  pace: Pace,
): string | null => {
  const left = thingsLeft(state, pace).filter(
    (other) => !('wheel' in other && other.wheel === thing.wheel && other.what === thing.what),
  )
  const next = thingAfter(left, thing, pace)
  if (next === null) return null
  return 'wheel' in next ? (next.wheel === thing.wheel ? next.what : next.wheel) : nextNames[next.what]
}

const nextNames = {
  surroundings: 'temperatures',
  'warning-light': 'warning light',
  'control-module': 'stored IDs',
} as const
