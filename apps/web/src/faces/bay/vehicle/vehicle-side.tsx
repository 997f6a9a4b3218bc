import type { OrderState } from '@bayledger/ledger/state'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { ReactNode } from 'react'
import { PlanDrawing } from '../../../features/plan/plan-drawing.tsx'
import type { ReadOrder } from '../../../ledger/order.ts'
import { planWheels } from './plan-wheels.ts'
import './vehicle-side.css'

type VehicleSideProps = {
  order: ReadOrder
  current: WheelPosition | null
  onWheel: (wheel: WheelPosition) => void
  /** Small buttons below the drawing, available everywhere in this order. */
  children: ReactNode
}

/** The left third of the screen: the vehicle from above, its name, and the other screens. */
export function VehicleSide({ order, current, onWheel, children }: VehicleSideProps) {
  return (
    <>
      <div className="vehicle-words">
        <p className="vehicle-plate">
          <span className="exact">{order.vehicle.plate ?? 'no plate'}</span>{' '}
          <span className="quiet">{order.number}</span>
        </p>
        <p>{vehicleWords(order)}</p>
      </div>
      <div className="vehicle-drawing">
        <PlanDrawing wheels={planWheels(order.state, current)} onOpen={onWheel} />
      </div>
      <nav className="vehicle-more" aria-label="More of this order">
        {children}
      </nav>
    </>
  )
}

const vehicleWords = ({ vehicle }: ReadOrder): string =>
  [vehicle.description, vehicle.color].filter((part) => part !== null).join(', ')

/** The status of a whole-vehicle part of the arrival check, for its small button. */
export const standOf = (
  state: OrderState,
  what: 'surroundings' | 'warning-light' | 'control-module',
): string => {
  const isDone =
    what === 'surroundings'
      ? state.surroundings
      : what === 'warning-light'
        ? state.arrival.telltale
        : state.arrival.module
  return isDone ? 'done' : 'to do'
}
