import type { OrderState } from '@bayledger/ledger/state'
import { moveArrows } from '@bayledger/reckoning/plan-drawing/move-arrows'
import type { Moves } from '@bayledger/reckoning/rotation/moves'
import type { RotationPattern } from '@bayledger/reckoning/rotation/rotation-pattern'
import { PlanDrawing } from './plan-drawing.tsx'
import { rotationWheels } from './rotation-wheels.ts'
import './rotation-drawing.css'

type RotationDrawingProps = { state: OrderState; pattern: RotationPattern }

/** The vehicle before a rotation, with the way of each wheel, and after it, with the place that each wheel came from. */
export function RotationDrawing({ state, pattern }: RotationDrawingProps) {
  const { moves, before, after } = rotationWheels(state, pattern)
  return (
    <div className="rotation-drawing">
      <figure>
        <figcaption>Before</figcaption>
        <PlanDrawing wheels={before} over={<Ways moves={moves} />} />
      </figure>
      <figure>
        <figcaption>After: the wheel from</figcaption>
        <PlanDrawing wheels={after} />
      </figure>
    </div>
  )
}

function Ways({ moves }: { moves: Moves }) {
  return moveArrows(moves).map(({ from, line, head }) => (
    <g key={from} className="plan-way">
      <line x1={line.from.x} y1={line.from.y} x2={line.to.x} y2={line.to.y} />
      <polygon points={head.map(({ x, y }) => `${x},${y}`).join(' ')} />
    </g>
  ))
}
