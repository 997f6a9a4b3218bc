import type { OrderState } from '@bayledger/ledger/state'
import type { Step } from '@bayledger/reckoning/step'
import { steps } from '@bayledger/wording/en/steps'
import { Figure } from '../../../ui/figure.tsx'
import { TorqueFigure } from '../torque/torque-figure.tsx'
import { FigureStandingLine, sheetFigureOf } from './figure-standing.tsx'
import { sourceWords } from './step-words.ts'

/** The one figure of a step, with whose it is and what it is worth. */
export function StepFigureView({ state, step }: { state: OrderState; step: Step }) {
  const rests = sheetFigureOf(step)
  return (
    <>
      <FigureAlone step={step} />
      {rests === null ? null : <FigureStandingLine state={state} figure={rests} />}
    </>
  )
}

function FigureAlone({ step }: { step: Step }) {
  const { figure } = step
  if (figure === null) return null
  if (figure.kind === 'torque')
    return (
      <TorqueFigure
        torque={figure.torque}
        source={sourceWords(step)}
        of={step.closedBy === 'studs.torqued' || step.closedBy === 'torque.checked' ? 'wheel' : 'sensor'}
      />
    )
  const shown =
    figure.kind === 'placard'
      ? { value: figure.psi, unit: 'psi' }
      : figure.kind === 'pressure'
        ? figure.pressure
        : figure.kind === 'frequency'
          ? { value: figure.megahertz, unit: 'MHz' }
          : { value: figure.minutes, unit: steps.minutes[figure.of] }
  return (
    <>
      <Figure {...shown} size="step" />
      <span className="step-source">{sourceWords(step)}</span>
    </>
  )
}
