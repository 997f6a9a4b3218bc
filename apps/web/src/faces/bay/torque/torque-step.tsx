import { sealsOf } from '@bayledger/ledger/questions/gates'
import type { OrderState } from '@bayledger/ledger/state'
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
import { isPinFresh } from '../session/lock-store.ts'
import { PinAgain } from '../session/pin-again.tsx'
import { cautionWords, stepTitle } from '../work/step-words.ts'
import { movedWords, type RoundAtHand, sealWords } from './round-words.ts'
import { TorqueFigure } from './torque-figure.tsx'
import { WrenchInHand } from './wrench-in-hand.tsx'
import './torque-step.css'

type TorqueStepProps = { state: OrderState; step: Step; wheel: WheelPosition; onDone: () => void }

/** One round of a wheel, sealed at once; a single nut is tapped only if it moved. */
export function TorqueStep({ state, step, wheel, onDone }: TorqueStepProps) {
  const { record, busy, problem } = useRecord(state.orderId)
  const {
    draft: moved,
    change,
    discard,
  } = useDraft<readonly number[]>(`${state.orderId}/${step.stepKey}`, [])
  const [sealing, setSealing] = useState<Wrench | null>(null)
  const watchKey = `${state.orderId}/${step.stepKey}/${lastSealOf(state, wheel)}`
  const { stop } = useWatch(watchKey)
  const sheet = state.sheet?.sheet
  if (!sheet) return <StepScreen title={stepTitle(step)} how="The order has no specification sheet." />
  const { count, fastener, torque, makersSequence, lockingFastener } = sheet.studs
  const order = tighteningOrder(sheet.studs)
  const round: RoundAtHand = step.closedBy === 'torque.checked' ? 'check' : (step.round ?? 'full')
  const figure = round === 'half' ? roundTorque(round, torque) : torque
  const { reference } = sheet.sources.studTorque
  const seal = sealWords(round, figure, count, moved)

  const onHeld = (wrench: Wrench) => {
    stop()
    if (round === 'check' && !isPinFresh()) setSealing(wrench)
    else void write(wrench)
  }
  const write = async (wrench: Wrench) => {
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
    const taken =
      round === 'check'
        ? await record('torque.checked', sealed, `${wheel} check`)
        : await record('studs.torqued', { ...sealed, round }, `${wheel} round`)
    if (taken) {
      discard()
      onDone()
    }
  }

  if (sealing !== null)
    return (
      <PinAgain
        title={stepTitle(step)}
        onBack={() => setSealing(null)}
        onProven={() => {
          setSealing(null)
          void write(sealing)
        }}
      />
    )
  return (
    <WrenchInHand figure={torque}>
      {(wrench, changeWrench) => (
        <StepScreen
          title={stepTitle(step)}
          beside={changeWrench}
          problem={problem}
          figure={
            <TorqueFigure
              torque={figure}
              of="wheel"
              source={round === 'half' ? steps.halfOf(reference) : reference}
            />
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
          pad={<HoldButton label={`${seal} · hold to seal`} busy={busy} onHeld={() => onHeld(wrench)} />}
        >
          <StartsWatch watchKey={watchKey} />
          <div className="torque-words">
            <p role="status">
              {movedWords(round, moved, fastener) ?? roundHow[round].replaceAll('{fastener}', fastener)}
            </p>
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

const roundHow: Readonly<Record<RoundAtHand, string>> = {
  half: 'About half, to draw the wheel flat. It is not tight yet.',
  full: 'Pull smoothly, one click, stop. Tap a {fastener} only if it moved late.',
  again: 'Every {fastener} clicks without turning. Tap one that turned.',
  check: 'Go round yourself with the wrench. Tap a {fastener} that turned.',
}
