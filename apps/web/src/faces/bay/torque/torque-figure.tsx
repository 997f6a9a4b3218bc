import type { Torque } from '@bayledger/reckoning/quantity'
import { otherUnit } from '../../../features/torque/torque-words.ts'
import { Figure } from '../../../ui/figure.tsx'

type TorqueFigureProps = {
  torque: Torque
  source: string
  /** `sensor`: a stem nut or screw, in lbf·in or N·m. */
  of: 'wheel' | 'sensor'
}

/** A large torque figure in the unit of its source, with the other unit beside it. */
export function TorqueFigure({ torque, source, of }: TorqueFigureProps) {
  const other = otherUnit(torque, of)
  return (
    <>
      <Figure value={torque.value} unit={torque.unit} size="step" />
      <span className="torque-other">
        = <Figure value={other.value} unit={other.unit} size="large" />
      </span>
      <span className="step-source">{source}</span>
    </>
  )
}
