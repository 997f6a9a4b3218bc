import type { OrderState } from '@bayledger/ledger/state'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { lazy, memo, Suspense, useRef, useState } from 'react'
import { type ArrivalTask, isSameTask, nextTask, tasksLeft } from '../../../features/arrival/arrival-tasks.ts'
import { OwnFinding } from '../../../features/findings/own-finding.tsx'
import { useStaffNames } from '../../../features/people/queries.ts'
import type { ReadOrder } from '../../../ledger/order.ts'
import { afterAnswer } from '../../../ui/after-answer.ts'
import { Button } from '../../../ui/button.tsx'
import { ArrivalStep } from '../arrival/arrival-step.tsx'
import { BaySplit } from '../bay-split.tsx'
import { BayFindings } from '../findings/bay-findings.tsx'
import { FindingsStep } from '../findings/findings-step.tsx'
import { useFindings } from '../findings/use-diagnosis.ts'
import { StepScreen } from '../form/step-screen.tsx'
import { PhotoNotices } from '../photos/photo-notices.tsx'
import { StepPhoto } from '../photos/step-photo.tsx'
import { ClosedElsewhereNotices } from '../record/closed-elsewhere-notices.tsx'
import { HistoryScreen } from '../record/history-screen.tsx'
import { RefusedNotices } from '../record/refused-notices.tsx'
import { useSignedIn } from '../session/signed-in.ts'
import { FiguresScreen } from '../sheet/lazy-figures.tsx'
import { LoudBand } from '../vehicle/loud-band.tsx'
import { ParkedBand } from '../vehicle/parked-band.tsx'
import { StopBand } from '../vehicle/stop-band.tsx'
import { stopsToShow } from '../vehicle/stops-to-show.ts'
import { VehicleSide } from '../vehicle/vehicle-side.tsx'
import { NotRightForm } from '../work/not-right-form.tsx'
import { PlanScreen } from '../work/plan-screen.tsx'
import { SetAsideForm } from '../work/set-aside-form.tsx'
import { WorkStep } from '../work/work-step.tsx'
import { OrderActions } from './order-actions.tsx'
import { usePace } from './pace.ts'
import { type SelectedScreen, screenOfForm, stepShown, taskShown } from './selected-screen.ts'
import { stageOf } from './stage.ts'
import { Waiting } from './waiting.tsx'

/** Loaded when somebody looks at photos: the first screen does not need it. */
const PhotosScreen = lazy(async () => {
  const { PhotosScreen } = await import('../photos/photos-screen.tsx')
  return { default: PhotosScreen }
})

/** Few orders are comebacks. */
const ComebackScreen = lazy(async () => {
  const { ComebackScreen } = await import('./comeback-screen.tsx')
  return { default: ComebackScreen }
})

/** How a refused form is opened again, where a screen still has it. */
const formOpener =
  (state: OrderState, open: (screen: SelectedScreen) => void) =>
  (formKey: string): (() => void) | null => {
    const screen = screenOfForm(state, formKey)
    return screen && (() => open(screen))
  }

/** One vehicle in the bay: the drawing on the left, the current task or step on the right. */
export const OrderScreen = memo(function OrderScreen({ order }: { order: ReadOrder }) {
  const { state } = order
  const person = useSignedIn()
  const nameOf = useStaffNames()
  const [pace, setPace] = usePace()
  const [selected, setSelected] = useState<SelectedScreen | null>(null)
  const findings = useFindings(state, order.history)
  const stage = stageOf(state)
  const own = state.diagnosis?.confirmed
  const left = tasksLeft(state, pace)
  const task = taskShown(stage, selected, left)
  const step = stepShown(state, stage, selected, person?.staffId ?? '')

  const notRight = useRef<HTMLButtonElement>(null)

  const next = () => setSelected(null)
  /** Opened by a press. */
  const open = (screen: SelectedScreen) => afterAnswer(() => setSelected(screen))
  const openTask = (one: ArrivalTask, question?: string) =>
    open({ at: 'task', task: one, ...(question === undefined ? {} : { question }) })
  const openWheel = (wheel: WheelPosition) => {
    if (stage === 'work') return open({ at: 'wheel', wheel })
    openTask(left.find((one) => 'wheel' in one && one.wheel === wheel) ?? { what: 'gauge', wheel })
  }
  const openNextTask = (done: ArrivalTask) => {
    const following = nextTask(
      left.filter((one) => !isSameTask(one, done)),
      done,
      pace,
    )
    setSelected(following === null ? null : { at: 'task', task: following })
  }

  const current = task && 'wheel' in task ? task.wheel : (step?.wheel ?? null)

  const shown = () => {
    if (selected?.at === 'not-right')
      return (
        <NotRightForm
          orderId={order.orderId}
          stepKey={selected.stepKey}
          wheel={selected.wheel}
          onBack={() => {
            next()
            notRight.current?.focus()
          }}
          onDone={next}
        />
      )
    if (selected?.at === 'history') return <HistoryScreen order={order} onBack={next} />
    if (selected?.at === 'photos')
      return (
        <Suspense fallback={null}>
          <PhotosScreen order={order} onBack={next} />
        </Suspense>
      )
    if (selected?.at === 'comeback')
      return (
        <Suspense fallback={null}>
          <ComebackScreen order={order} onBack={next} />
        </Suspense>
      )
    if (selected?.at === 'figures')
      return (
        <Suspense fallback={null}>
          <FiguresScreen state={state} first={selected.figure} onBack={next} />
        </Suspense>
      )
    if (selected?.at === 'plan')
      return <PlanScreen state={state} onBack={next} onOpen={(stepKey) => open({ at: 'step', stepKey })} />
    if (selected?.at === 'findings' && state.diagnosis)
      return (
        <StepScreen title="Findings" beside={<Button onClick={next}>Back to the step</Button>}>
          {own && !own.agrees ? (
            <OwnFinding
              who={own.written.by.kind === 'staff' ? nameOf(own.written.by.staffId) : 'The shop'}
              ownFinding={own.ownFinding}
              reason={order.personalText(own.reason)}
            />
          ) : null}
          <BayFindings
            diagnosis={state.diagnosis.diagnosis}
            evidence={state.diagnosis.evidence}
            isOver={state.reports.length > 0 || state.ended !== null}
          />
        </StepScreen>
      )
    if (task !== null)
      return (
        <ArrivalStep
          state={state}
          task={task}
          question={selected?.at === 'task' ? (selected.question ?? null) : null}
          pace={pace}
          onOpen={openTask}
          onDone={openNextTask}
        />
      )
    if (stage === 'findings')
      return <FindingsStep state={state} history={order.history} onOpen={openTask} onDone={next} />
    if (step === null) return <Waiting state={state} />
    if (selected?.at === 'aside')
      return <SetAsideForm state={state} step={step} onDone={next} onBack={next} />
    return (
      <WorkStep
        key={step.stepKey}
        state={state}
        step={step}
        onDone={next}
        onFigure={(figure) => setSelected({ at: 'figures', figure })}
      />
    )
  }

  return (
    <BaySplit
      band={
        <>
          <LoudBand state={state} />
          <ParkedBand state={state} />
          <StopBand stops={stopsToShow(state, findings)} />
          <PhotoNotices />
          <ClosedElsewhereNotices order={order} onAgain={formOpener(state, setSelected)} />
          <RefusedNotices orderId={order.orderId} onAgain={formOpener(state, setSelected)} />
        </>
      }
      vehicle={
        <VehicleSide order={order} current={current} onWheel={openWheel}>
          <OrderActions stage={stage} state={state} step={step} pace={pace} onPace={setPace} onOpen={open} />
        </VehicleSide>
      }
      fixed={
        stage === 'waiting' && step === null && task === null ? null : (
          <>
            <Button
              ref={notRight}
              onClick={() => open({ at: 'not-right', stepKey: step?.stepKey ?? null, wheel: current })}
            >
              Not right
            </Button>
            {selected?.at === 'not-right' ? null : (
              <StepPhoto state={state} step={step} task={task} wheel={current} />
            )}
          </>
        )
      }
    >
      {shown()}
    </BaySplit>
  )
})
