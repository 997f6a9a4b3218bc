import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { useState } from 'react'
import { isSameThing, type Thing, thingAfter, thingsLeft } from '../../../features/arrival/things.ts'
import { OwnFinding } from '../../../features/findings/own-finding.tsx'
import type { ReadOrder } from '../../../features/ledger/order-query.ts'
import { useStaffNames } from '../../../features/people/queries.ts'
import { Button } from '../../../ui/button.tsx'
import { ArrivalStep } from '../arrival/arrival-step.tsx'
import { BaySplit } from '../bay-split.tsx'
import { BayFindings } from '../findings/bay-findings.tsx'
import { FindingsStep } from '../findings/findings-step.tsx'
import { useDiagnosis } from '../findings/use-diagnosis.ts'
import { StepScreen } from '../form/step-screen.tsx'
import { WrittenScreen } from '../record/written-screen.tsx'
import { useSignedIn } from '../session/signed-in.ts'
import { LoudBand } from '../vehicle/loud-band.tsx'
import { StopBand } from '../vehicle/stop-band.tsx'
import { stopsToShow } from '../vehicle/stops-to-show.ts'
import { VehicleSide } from '../vehicle/vehicle-side.tsx'
import { PlanScreen } from '../work/plan-screen.tsx'
import { SetAsideForm } from '../work/set-aside-form.tsx'
import { WorkStep } from '../work/work-step.tsx'
import { More } from './more.tsx'
import { type Opened, stepShown, thingShown } from './opened.ts'
import { usePace } from './pace.ts'
import { stageOf } from './stage.ts'
import { Waiting } from './waiting.tsx'

/** One vehicle in the bay: the drawing at the left, at the right the one thing to do. */
export function OrderScreen({ order }: { order: ReadOrder }) {
  const { state } = order
  const person = useSignedIn()
  const nameOf = useStaffNames()
  const [pace, setPace] = usePace()
  const [opened, setOpened] = useState<Opened | null>(null)
  const computed = useDiagnosis(state, order.history)
  const stage = stageOf(state)
  const own = state.diagnosis?.confirmed
  const left = thingsLeft(state, pace)
  const thing = thingShown(stage, opened, left)
  const step = stepShown(state, stage, opened, person?.staffId ?? '')

  const next = () => setOpened(null)
  const openThing = (one: Thing, question?: string) =>
    setOpened({ at: 'thing', thing: one, ...(question === undefined ? {} : { question }) })
  const openWheel = (wheel: WheelPosition) => {
    if (stage === 'work') return setOpened({ at: 'wheel', wheel })
    openThing(left.find((one) => 'wheel' in one && one.wheel === wheel) ?? { what: 'gauge', wheel })
  }
  const afterThing = (done: Thing) => {
    const following = thingAfter(
      left.filter((one) => !isSameThing(one, done)),
      done,
      pace,
    )
    setOpened(following === null ? null : { at: 'thing', thing: following })
  }

  const shown = () => {
    if (opened?.at === 'written') return <WrittenScreen order={order} onBack={next} />
    if (opened?.at === 'plan')
      return (
        <PlanScreen state={state} onBack={next} onOpen={(stepKey) => setOpened({ at: 'step', stepKey })} />
      )
    if (opened?.at === 'findings' && state.diagnosis)
      return (
        <StepScreen title="Findings" beside={<Button onClick={next}>Back to the step</Button>}>
          {own && !own.agrees ? (
            <OwnFinding
              who={own.written.by.kind === 'staff' ? nameOf(own.written.by.staffId) : 'The shop'}
              ownFinding={own.ownFinding}
              reason={order.wordsOf(own.reason)}
            />
          ) : null}
          <BayFindings
            diagnosis={state.diagnosis.diagnosis}
            evidence={state.diagnosis.evidence}
            isOver={state.reports.length > 0 || state.ended !== null}
          />
        </StepScreen>
      )
    if (thing !== null)
      return (
        <ArrivalStep
          state={state}
          thing={thing}
          question={opened?.at === 'thing' ? (opened.question ?? null) : null}
          pace={pace}
          onOpen={openThing}
          onDone={afterThing}
        />
      )
    if (stage === 'findings')
      return <FindingsStep state={state} computed={computed} onOpen={openThing} onDone={next} />
    if (step === null) return <Waiting state={state} />
    if (opened?.at === 'aside') return <SetAsideForm state={state} step={step} onDone={next} onBack={next} />
    return <WorkStep key={step.stepKey} state={state} step={step} onDone={next} />
  }

  return (
    <BaySplit
      band={
        <>
          <LoudBand state={state} />
          <StopBand stops={stopsToShow(state, computed?.diagnosis ?? null)} />
        </>
      }
      vehicle={
        <VehicleSide
          order={order}
          current={thing && 'wheel' in thing ? thing.wheel : (step?.wheel ?? null)}
          onWheel={openWheel}
        >
          <More stage={stage} state={state} step={step} pace={pace} onPace={setPace} onOpen={setOpened} />
        </VehicleSide>
      }
    >
      {shown()}
    </BaySplit>
  )
}
