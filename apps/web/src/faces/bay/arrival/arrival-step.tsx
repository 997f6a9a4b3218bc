import type { OrderState } from '@bayledger/ledger/state'
import { type WheelPosition, wheelNames } from '@bayledger/reckoning/wheels'
import { type Pace, type Thing, thingAfter, thingsLeft } from '../../../features/arrival/things.ts'
import { DoorLabelForm } from './door-label-form.tsx'
import { GaugeForm } from './gauge-form.tsx'
import { LightForm } from './light-form.tsx'
import { ModuleForm } from './module-form.tsx'
import { SensorForm } from './sensor-form.tsx'
import { SurroundingsForm } from './surroundings-form.tsx'
import { TireForm } from './tire-form.tsx'
import { ToldForm } from './told-form.tsx'
import { WheelTabs } from './wheel-tabs.tsx'

type ArrivalStepProps = {
  state: OrderState
  thing: Thing
  /** What the rules ask, in their words, where a fact of the customer's is to be got. */
  question: string | null
  pace: Pace
  onOpen: (thing: Thing) => void
  /** Recorded: whatever is next comes up by itself. */
  onDone: (done: Thing) => void
}

/** The pad of one thing of the arrival check. */
export function ArrivalStep({ state, thing, question, pace, onOpen, onDone }: ArrivalStepProps) {
  const done = () => onDone(thing)
  const { row } = thing
  if (!('wheel' in thing)) {
    if (thing.what === 'told')
      return (
        <ToldForm
          key={thing.event}
          state={state}
          event={thing.event}
          question={question ?? `Ask about: ${thing.event.replaceAll('-', ' ')}`}
          row={row}
          onDone={done}
        />
      )
    if (thing.what === 'door-label') return <DoorLabelForm state={state} onDone={done} />
    if (thing.what === 'surroundings') return <SurroundingsForm state={state} row={row} onDone={done} />
    if (thing.what === 'warning-light')
      return (
        <LightForm
          state={state}
          phase="arrival"
          stepKey={null}
          title="Watch the warning light"
          row={row}
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
        row={row}
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
        row={row}
        onDone={done}
      />
    )
  return <TireForm key={wheel} state={state} wheel={wheel} tabs={tabs} row={row} onDone={done} />
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

const nextNames: Readonly<Record<Exclude<Thing, { wheel: WheelPosition }>['what'], string>> = {
  'door-label': 'door label',
  told: 'what happened lately',
  surroundings: 'temperatures',
  'warning-light': 'warning light',
  'control-module': 'stored IDs',
}
