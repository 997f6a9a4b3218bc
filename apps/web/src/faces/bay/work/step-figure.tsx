import type { Step } from '@bayledger/reckoning/step'
import { Figure } from '../../../ui/figure.tsx'
import { TorqueFigure } from '../torque/torque-figure.tsx'

/** The one figure of a step, with whose it is. */
export function StepFigureView({ step }: { step: Step }) {
  const { figure } = step
  if (figure === null) return null
  if (figure.kind === 'torque')
    return (
      <TorqueFigure
        torque={figure.torque}
        source={figure.source}
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
          : { value: figure.count, unit: figure.unit }
  return (
    <>
      <Figure {...shown} size="step" />
      <span className="step-source">{figure.source}</span>
    </>
  )
}
