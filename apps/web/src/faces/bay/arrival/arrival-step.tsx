import type { OrderState } from '@bayledger/ledger/state'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { fields } from '@bayledger/wording/en/fields'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { Suspense } from 'react'
import { type ArrivalTask, nextTask, type Pace, tasksLeft } from '../../../features/arrival/arrival-tasks.ts'
import { EnterFigure } from '../sheet/lazy-figures.tsx'
import { DoorLabelForm } from './door-label-form.tsx'
import { EventForm } from './event-form.tsx'
import { GaugeForm } from './gauge-form.tsx'
import { LightForm } from './light-form.tsx'
import { ModuleForm } from './module-form.tsx'
import { SensorForm } from './sensor-form.tsx'
import { SurroundingsForm } from './surroundings-form.tsx'
import { TireForm } from './tire-form.tsx'
import { WheelTabs } from './wheel-tabs.tsx'

type ArrivalStepProps = {
  state: OrderState
  task: ArrivalTask
  /** The rules' question, where the customer has to be asked for a fact. */
  question: string | null
  pace: Pace
  onOpen: (task: ArrivalTask) => void
  /** Called once the task is recorded; the next one then opens. */
  onDone: (done: ArrivalTask) => void
}

/** The pad of one task of the arrival check. */
export function ArrivalStep({ state, task, question, pace, onOpen, onDone }: ArrivalStepProps) {
  const done = () => onDone(task)
  const { row } = task
  if (!('wheel' in task)) {
    if (task.what === 'event')
      return (
        <EventForm
          key={task.event}
          state={state}
          event={task.event}
          question={question ?? `Ask about: ${fields.events[task.event]}`}
          row={row}
          onDone={done}
        />
      )
    if (task.what === 'door-label') return <DoorLabelForm state={state} onDone={done} />
    if (task.what === 'sensor-kind')
      return (
        <Suspense fallback={null}>
          <EnterFigure state={state} figure="frequency" onDone={done} />
        </Suspense>
      )
    if (task.what === 'surroundings') return <SurroundingsForm state={state} row={row} onDone={done} />
    if (task.what === 'warning-light')
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
  const { wheel } = task
  const tabs = <WheelTabs state={state} wheel={wheel} at={task.what} onOpen={onOpen} />
  const nextWords = nextTaskWords(state, task, pace)
  if (task.what === 'gauge')
    return <GaugeForm state={state} wheel={wheel} tabs={tabs} nextWords={nextWords} onDone={done} />
  if (task.what === 'sensor')
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
  return (
    <TireForm
      key={`${wheel} ${row}`}
      state={state}
      wheel={wheel}
      tabs={tabs}
      row={row}
      nextWords={nextWords}
      onDone={done}
    />
  )
}

const nextTaskWords = (
  state: OrderState,
  task: Extract<ArrivalTask, { wheel: WheelPosition }>,
  pace: Pace,
): string | null => {
  const left = tasksLeft(state, pace).filter(
    (other) => !('wheel' in other && other.wheel === task.wheel && other.what === task.what),
  )
  const next = nextTask(left, task, pace)
  if (next === null) return null
  return 'wheel' in next ? (next.wheel === task.wheel ? next.what : next.wheel) : nextNames[next.what]
}

const nextNames: Readonly<Record<Exclude<ArrivalTask, { wheel: WheelPosition }>['what'], string>> = {
  'door-label': 'door label',
  'sensor-kind': 'sensors of this kind',
  event: 'what happened lately',
  surroundings: 'temperatures',
  'warning-light': 'warning light',
  'control-module': 'stored IDs',
}
