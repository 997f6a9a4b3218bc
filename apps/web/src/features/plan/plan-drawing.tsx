import { planCells, planOutline, planRules, planView } from '@bayledger/reckoning/plan-drawing/plan-geometry'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { ReactNode } from 'react'
import { PlanCellFace } from './plan-cell-face.tsx'
import type { PlanWheel } from './plan-wheel.ts'
import './plan-drawing.css'

type PlanDrawingProps = {
  /** A wheel that is absent has no cell: a vehicle without a spare is drawn without one. */
  wheels: Readonly<Partial<Record<WheelPosition, PlanWheel>>>
  /** Drawn over it, in the units of its view box. */
  over?: ReactNode
  /** Makes every cell a button. */
  onOpen?: (position: WheelPosition) => void
}

/** The vehicle from above, nose up: the one drawing of all faces. */
export function PlanDrawing({ wheels, over, onOpen }: PlanDrawingProps) {
  const shown = readingOrder.flatMap((position) => {
    const wheel = wheels[position]
    return wheel === undefined ? [] : [{ position, wheel }]
  })
  // Parts that stick out of the drawing are drawn last, over its rules.
  const drawn = [...shown].sort((a, b) => Number(a.wheel.state !== 'none') - Number(b.wheel.state !== 'none'))
  const height = wheels.SP === undefined ? planView.height - planCells.SP.box.height - 12 : planView.height
  return (
    <div className="plan">
      <svg viewBox={`0 0 ${planView.width} ${height}`} className="plan-svg" aria-hidden="true">
        <path d={planOutline} className="plan-outline" />
        {planRules
          .filter((rule) => rule.to.y <= height - 2)
          .map(({ from, to }) => (
            <line
              key={`${from.x} ${from.y} ${to.y}`}
              x1={from.x}
              y1={from.y}
              x2={to.x}
              y2={to.y}
              className="plan-rule"
            />
          ))}
        {drawn.map(({ position, wheel }) => (
          <PlanCellFace key={position} position={position} wheel={wheel} />
        ))}
        {over}
      </svg>
      {onOpen === undefined ? (
        <ul className="for-screen-readers">
          {shown.map(({ position, wheel }) => (
            <li key={position}>{wheel.label}</li>
          ))}
        </ul>
      ) : (
        shown.map(({ position, wheel }) => (
          <button
            key={position}
            type="button"
            className="plan-button"
            aria-label={wheel.label}
            aria-current={wheel.state === 'current' ? 'step' : undefined}
            style={placeOf(position, wheel, height)}
            onClick={() => onOpen(position)}
          />
        ))
      )}
    </div>
  )
}

/** A cell's place over the drawing, as fractions: a real button is there, so that the browser handles focus and touch. */
function placeOf(position: WheelPosition, wheel: PlanWheel, height: number) {
  const box = wheel.state === 'none' ? planCells[position].box : planCells[position].boxAtWork
  const share = (length: number, of: number) => `${(100 * length) / of}%`
  return {
    left: share(box.x, planView.width),
    top: share(box.y, height),
    width: share(box.width, planView.width),
    height: share(box.height, height),
  }
}
