import type { OrderState } from '@bayledger/ledger/state'
import { cameFrom, type Moves, movedPlaces, wentTo } from '@bayledger/reckoning/rotation/moves'
import { patternMoves, type RotationPattern } from '@bayledger/reckoning/rotation/rotation-pattern'
import { placardOf } from '@bayledger/reckoning/sheet'
import { axleOf, readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import { wheelNames } from '@bayledger/wording/en/wheels'
import type { PlanWheel } from './plan-wheel.ts'

type Wheels = Partial<Record<WheelPosition, PlanWheel>>

/** A rotation as it is drawn: each wheel where it is and where it goes, then each place with the wheel that came to it. */
export type DrawnRotation = { readonly moves: Moves; readonly before: Wheels; readonly after: Wheels }

/** What moves with a wheel is drawn with it: its tread and its sensor's ID. What belongs to the place is the label's pressure. */
export const rotationWheels = (state: OrderState, pattern: RotationPattern): DrawnRotation => {
  const moves = patternMoves(pattern)
  const shown = readingOrder.filter((place) => place !== 'SP' || movedPlaces(moves).includes('SP'))
  const draw = (wheelAt: (place: WheelPosition) => PlanWheel): Wheels =>
    Object.fromEntries(shown.map((place) => [place, wheelAt(place)]))
  return {
    moves,
    before: draw((place) => {
      const to = wentTo(moves, place)
      const tread = treadOf(state, place)
      const id = idOf(state, place)
      return {
        state: 'none',
        lines: [
          tread === null ? { text: 'no tread read' } : { text: tread, unit: '/32 in', isFigure: true },
          { text: to === place ? 'stays' : `to ${to}` },
          ...(id === null ? [] : [{ text: id }]),
        ],
        label: words(wheelNames[place], [
          to === place ? 'stays' : `goes to ${wheelNames[to]}`,
          tread === null ? 'no tread read' : `tread ${tread}/32 in`,
          ...(id === null ? [] : [`sensor ${id}`]),
        ]),
      }
    }),
    after: draw((place) => {
      const from = cameFrom(moves, place)
      const tread = treadOf(state, from)
      const label = state.sheet && placardOf(state.sheet.sheet)?.[axleOf(place)]
      return {
        state: 'none',
        lines: [
          { text: from, isFigure: true },
          { text: tread === null ? 'no tread read' : `${tread}/32 in` },
          ...(label ? [{ text: `${label.psi} psi` }] : []),
        ],
        label: words(wheelNames[place], [
          from === place ? 'its own wheel' : `the wheel from ${wheelNames[from]}`,
          tread === null ? 'no tread read' : `tread ${tread}/32 in`,
          ...(label ? [`label ${label.psi} psi`] : []),
        ]),
      }
    }),
  }
}

const words = (name: string, facts: readonly string[]): string => `${name}: ${facts.join(', ')}`

const treadOf = (state: OrderState, wheel: WheelPosition): string | null => {
  const depth = state.arrival.tires[wheel]?.treadDepth32nds ?? null
  return depth === null ? null : String(depth)
}

/** Its last four digits, as the wheel's sensor answered or the vehicle has it stored. */
const idOf = (state: OrderState, wheel: WheelPosition): string | null => {
  const reading = state.arrival.wheels[wheel]?.sensor?.reading
  const id =
    state.work[wheel]?.fitted?.sensorId ??
    (reading?.answer === 'answered' ? reading.id : null) ??
    state.arrival.module?.ids[wheel] ??
    null
  return id === null ? null : `…${id.slice(-4)}`
}
