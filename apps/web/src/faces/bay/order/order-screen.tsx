import { nextMoves } from '@bayledger/ledger/next-moves'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { useState } from 'react'
import {
  isSameThing,
  type Pace,
  type Thing,
  thingAfter,
  thingsLeft,
} from '../../../features/arrival/things.ts'
import type { ReadOrder } from '../../../features/ledger/order-query.ts'
import { Button } from '../../../ui/button.tsx'
import { ArrivalStep } from '../arrival/arrival-step.tsx'
import { BaySplit } from '../bay-split.tsx'
import { FindingsList } from '../findings/findings-list.tsx'
import { FindingsStep } from '../findings/findings-step.tsx'
import { useDiagnosis } from '../findings/use-diagnosis.ts'
import { StepScreen } from '../form/step-screen.tsx'
import { WrittenScreen } from '../record/written-screen.tsx'
import { useSignedIn } from '../session/signed-in.ts'
import { LoudBand } from '../vehicle/loud-band.tsx'
import { StopBand } from '../vehicle/stop-band.tsx'
import { standOf, VehicleSide } from '../vehicle/vehicle-side.tsx'
import { chooseStep } from '../work/choose-step.ts'
import { PlanScreen } from '../work/plan-screen.tsx'
import { WorkScreen } from '../work/work-screen.tsx'
import { usePace } from './pace.ts'
import { type Stage, stageOf } from './stage.ts'

/** What was opened by hand; `null`: whatever is next by itself. */
type Opened =
  | { readonly at: 'thing'; readonly thing: Thing }
  | { readonly at: 'step'; readonly wheel: WheelPosition | null; readonly stepKey: string | null }
  | { readonly at: 'plan' | 'written' | 'findings' }

/** One vehicle in the bay: the drawing at the left, at the right the one thing to do. */
export function OrderScreen({ order }: { order: ReadOrder }) {
  const { state } = order
  const person = useSignedIn()
  const [pace, setPace] = usePace()
  const [opened, setOpened] = useState<Opened | null>(null)
  const computed = useDiagnosis(state, order.history)
  const stage = stageOf(state)
  const staffId = person?.staffId ?? ''
  const left = thingsLeft(state, pace)
  const thing =
    opened?.at === 'thing' ? opened.thing : opened === null && stage === 'arrival' ? (left[0] ?? null) : null
  const step =
    stage === 'work' && (opened === null || opened.at === 'step')
      ? ((opened?.stepKey
          ? state.plan?.plan.steps.find(({ stepKey }) => stepKey === opened.stepKey && !state.closed[stepKey])
          : null) ?? chooseStep(state, staffId, opened?.wheel ?? null))
      : null
  const current = thing && 'wheel' in thing ? thing.wheel : (step?.wheel ?? null)

  const next = () => setOpened(null)
  const openWheel = (wheel: WheelPosition) => {
    if (stage === 'work') return setOpened({ at: 'step', wheel, stepKey: null })
    const missing = left.find((one) => 'wheel' in one && one.wheel === wheel)
    setOpened({ at: 'thing', thing: missing ?? { what: 'gauge', wheel } })
  }
  const afterThing = (done: Thing) => {
    const rest = left.filter((one) => !isSameThing(one, done))
    const following = thingAfter(rest, done, pace)
    setOpened(following === null ? null : { at: 'thing', thing: following })
  }

  return (
    <BaySplit
      band={
        <>
          <LoudBand state={state} />
          <StopBand diagnosis={computed?.diagnosis ?? null} />
        </>
      }
      vehicle={
        <VehicleSide order={order} current={current} onWheel={openWheel}>
          <More stage={stage} order={order} pace={pace} onPace={setPace} onOpen={setOpened} />
        </VehicleSide>
      }
    >
      {opened?.at === 'written' ? (
        <WrittenScreen order={order} onBack={next} />
      ) : opened?.at === 'plan' ? (
        <PlanScreen
          state={state}
          onBack={next}
          onOpen={(stepKey) => setOpened({ at: 'step', wheel: null, stepKey })}
        />
      ) : opened?.at === 'findings' && state.diagnosis ? (
        <StepScreen title="Findings" beside={<Button onClick={next}>Back to the step</Button>}>
          <FindingsList diagnosis={state.diagnosis.diagnosis} />
        </StepScreen>
      ) : thing !== null ? (
        <ArrivalStep
          state={state}
          thing={thing}
          pace={pace}
          onOpen={(one) => setOpened({ at: 'thing', thing: one })}
          onDone={afterThing}
        />
      ) : stage === 'findings' ? (
        <FindingsStep
          state={state}
          computed={computed}
          onOpen={(one) => setOpened({ at: 'thing', thing: one })}
          onDone={next}
        />
      ) : step !== null ? (
        <WorkScreen key={step.stepKey} state={state} step={step} onDone={next} />
      ) : (
        <Waiting order={order} />
      )}
    </BaySplit>
  )
}

type MoreProps = {
  stage: Stage
  order: ReadOrder
  pace: Pace
  onPace: (pace: Pace) => void
  onOpen: (opened: Opened) => void
}

function More({ stage, order, pace, onPace, onOpen }: MoreProps) {
  const { state } = order
  const whole = [
    { what: 'surroundings', name: 'Outdoors' },
    { what: 'warning-light', name: 'Light' },
    { what: 'control-module', name: 'Stored IDs' },
  ] as const
  const shown = whole.filter(
    ({ what }) => what !== 'control-module' || state.sheet?.sheet.system === 'direct',
  )
  return (
    <>
      {stage === 'arrival' || stage === 'findings'
        ? shown.map(({ what, name }) => (
            <Button key={what} onClick={() => onOpen({ at: 'thing', thing: { what } })}>
              {name} <small>{standOf(state, what)}</small>
            </Button>
          ))
        : null}
      {stage === 'work' ? <Button onClick={() => onOpen({ at: 'plan' })}>Job plan</Button> : null}
      {state.diagnosis && stage !== 'findings' && stage !== 'arrival' ? (
        <Button onClick={() => onOpen({ at: 'findings' })}>Findings</Button>
      ) : null}
      {stage === 'arrival' ? (
        <Button onClick={() => onPace(pace === 'task-by-task' ? 'wheel-by-wheel' : 'task-by-task')}>
          {pace === 'task-by-task' ? 'Task by task' : 'Wheel by wheel'}
        </Button>
      ) : null}
      <Button onClick={() => onOpen({ at: 'written' })}>Written</Button>
    </>
  )
}

/** Somebody else must act: says who and for what. */
function Waiting({ order }: { order: ReadOrder }) {
  const moves = nextMoves(order.state, new Date().toISOString())
  return (
    <StepScreen title="Nothing for the bay now">
      {moves.map((move) => (
        <p key={`${move.code} ${move.wheel}`} className="sentence">
          {move.sentence}
        </p>
      ))}
    </StepScreen>
  )
}
