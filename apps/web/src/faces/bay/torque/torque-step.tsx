import { sealsOf } from '@bayledger/ledger/questions/gates'
import type { PayloadOf } from '@bayledger/ledger/registry'
import type { OrderState } from '@bayledger/ledger/state'
import { studsOf } from '@bayledger/reckoning/sheet'
import type { Step } from '@bayledger/reckoning/step'
import { roundTorque } from '@bayledger/reckoning/torque/rounds'
import { tighteningOrder } from '@bayledger/reckoning/torque/star-sequence'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { steps } from '@bayledger/wording/en/steps'
import { useState } from 'react'
import { StudCircle } from '../../../features/torque/stud-circle.tsx'
import { type Wrench, wrenchUsed } from '../../../features/torque/wrench-fit.ts'
import { HoldButton } from '../../../ui/hold-button.tsx'
import { StartsWatch } from '../clock/starts-watch.tsx'
import { useWatch } from '../clock/use-watch.ts'
import { useDraft } from '../form/draft-store.ts'
import { StepScreen } from '../form/step-screen.tsx'
import { useRecord } from '../record/use-record.ts'
import { useSignedIn } from '../session/signed-in.ts'
import { hasTorqued } from '../work/choose-step.ts'
import { FigureStandingLine } from '../work/figure-standing.tsx'
import { cautionWords, howWords, stepTitle } from '../work/step-words.ts'
import { movedWords, type RoundAtHand, roundHow, sealWords } from './round-words.ts'
import { SealCheck, useCheckers } from './seal-check.tsx'
import { TorqueFigure } from './torque-figure.tsx'
import { WrenchInHand } from './wrench-in-hand.tsx'
import './torque-step.css'

type TorqueSealed = PayloadOf<'torque.checked'>
type TorqueStepProps = { state: OrderState; step: Step; wheel: WheelPosition; onDone: () => void }

/** One round of a wheel, sealed at once; a single nut is tapped only if it moved. */
export function TorqueStep({ state, step, wheel, onDone }: TorqueStepProps) {
  const { record, busy, problem } = useRecord(state.orderId)
  const key = `${state.orderId}/${step.stepKey}`
  const { draft: moved, change, discard } = useDraft<readonly number[]>(key, [])
  const form = { key, content: moved }
  const [sealing, setSealing] = useState<Omit<TorqueSealed, 'checkedBy'> | null>(null)
  const person = useSignedIn()
  const checkers = useCheckers(state, wheel)
  const watchKey = `${key}/${lastSealOf(state, wheel)}`
  const { stop } = useWatch(watchKey)
  const sheet = state.sheet?.sheet
  if (!sheet) return <StepScreen title={stepTitle(step)} how="The order has no specification sheet." />
  const studs = studsOf(sheet)
  if (!studs) return <StepScreen title={stepTitle(step)} how={howWords(step)} />
  const { count, fastener, torque, makersSequence, lockingFastener } = studs
  const order = tighteningOrder(studs)
  const round: RoundAtHand = step.closedBy === 'torque.checked' ? 'check' : (step.round ?? 'full')
  const figure = round === 'half' ? roundTorque(round, torque) : torque
  const reference = sheet.sources.studTorque?.reference ?? ''
  const seal = sealWords(round, figure, count, moved)

  const isDoer = hasTorqued(state, wheel, person?.staffId ?? '')
  const shut =
    round === 'check' && checkers.length === 0
      ? 'Everybody here who could check this wheel has torqued it. It takes one more person.'
      : undefined

  const done = () => {
    discard()
    onDone()
  }
  const onHeld = async (wrench: Wrench) => {
    const sealed = {
      stepKey: step.stepKey,
      wheel,
      figure,
      wrench: wrenchUsed(wrench),
      clicked: count,
      total: count,
      moved: [...moved],
      timed: stop(),
    }
    if (round === 'check') setSealing(sealed)
    else if (await record('studs.torqued', { ...sealed, round }, `${wheel} round`, form)) done()
  }

  if (sealing !== null)
    return (
      <SealCheck
        state={state}
        wheel={wheel}
        title={stepTitle(step)}
        round={sealing}
        form={form}
        onBack={() => setSealing(null)}
        onSealed={done}
      />
    )
  return (
    <WrenchInHand figure={figure} round={round === 'check' ? 'full' : round}>
      {(wrench, changeWrench) => (
        <StepScreen
          title={stepTitle(step)}
          beside={changeWrench}
          problem={problem}
          figure={
            <>
              <TorqueFigure
                torque={figure}
                of="wheel"
                source={round === 'half' ? steps.halfOf(reference) : reference}
              />
              <FigureStandingLine state={state} figure="studTorque" />
            </>
          }
          caution={cautionWords(step)}
          drawing={
            <StudCircle
              count={count}
              order={order}
              moved={moved}
              fastener={fastener}
              onTap={
                round === 'half'
                  ? undefined
                  : (stud) =>
                      change(
                        moved.includes(stud)
                          ? moved.filter((one) => one !== stud)
                          : [...moved, stud].sort((one, other) => one - other),
                      )
              }
            />
          }
          pad={
            <HoldButton
              label={`${seal} · hold to seal`}
              busy={busy}
              onHeld={() => void onHeld(wrench)}
              {...(shut === undefined ? {} : { whyNot: shut })}
            />
          }
        >
          <StartsWatch watchKey={watchKey} />
          <div className="torque-words">
            <p role="status">{movedWords(round, moved, fastener) ?? roundHow(round, fastener, isDoer)}</p>
            {makersSequence === null ? null : <p>In the maker's own order.</p>}
            {lockingFastener ? <p>The locking {fastener} too, with its key.</p> : null}
          </div>
        </StepScreen>
      )}
    </WrenchInHand>
  )
}

/** The entry that sealed the newest round of a wheel: each round is timed for itself. */
const lastSealOf = (state: OrderState, wheel: WheelPosition): string => {
  const work = state.work[wheel]
  const seals = [...sealsOf(work), ...(work?.earlierFittings ?? []), ...(work?.checked ? [work.checked] : [])]
  const newest = seals.toSorted((one, other) => one.written.seq - other.written.seq).at(-1)
  return newest?.written.entryId ?? 'first'
}
