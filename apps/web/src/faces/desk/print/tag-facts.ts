import { authorizedWorks } from '@bayledger/ledger/questions/authorized-works'
import type { OrderState } from '@bayledger/ledger/state'
import { wentTo } from '@bayledger/reckoning/rotation/moves'
import { patternMoves } from '@bayledger/reckoning/rotation/rotation-pattern'
import { placardOf, studsOf } from '@bayledger/reckoning/sheet'
import { axleOf, readingOrder, roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import { seen } from '@bayledger/wording/en/report/seen'

/** What the tag of one wheel says; `null` where nobody knows it. */
export type TagFacts = {
  readonly from: WheelPosition
  /** Where it goes; the same place where it is not rotated. */
  readonly to: WheelPosition
  readonly torque: { readonly figure: string; readonly source: string } | null
  readonly sensorId: string | null
  /** As the door label prints it for the place where the wheel goes, cold. */
  readonly pressurePsi: number | null
}

/** One tag for each road wheel, and for the spare where it goes on the road. */
export const tagsOf = (state: OrderState): TagFacts[] => {
  const rotation = authorizedWorks(state).flatMap(({ work }) =>
    work.kind === 'rotate' ? work.pattern : [],
  )[0]
  const moves = rotation === undefined ? {} : patternMoves(rotation)
  const takesSpare = wentTo(moves, 'SP') !== 'SP'
  return readingOrder
    .filter((place) => takesSpare || roadPositions.some((road) => road === place))
    .map((from) => {
      const to = wentTo(moves, from)
      return {
        from,
        to,
        torque: to === 'SP' ? null : torqueOf(state),
        sensorId: sensorOf(state, from),
        pressurePsi: pressureOf(state, to),
      }
    })
}

const torqueOf = (state: OrderState): TagFacts['torque'] => {
  const sheet = state.sheet?.sheet
  const torque = sheet && studsOf(sheet)?.torque
  if (!sheet || !torque) return null
  const source = sheet.sources.studTorque
  return {
    figure: `${torque.value} ${torque.unit}`,
    source: source === null ? 'no source named' : `${seen.sources[source.kind]}, ${source.reference}`,
  }
}

const sensorOf = (state: OrderState, wheel: WheelPosition): string | null => {
  const reading = state.arrival.wheels[wheel]?.sensor?.reading
  return (
    state.work[wheel]?.fitted?.sensorId ??
    (reading?.answer === 'answered' ? reading.id : null) ??
    state.arrival.module?.ids[wheel] ??
    null
  )
}

const pressureOf = (state: OrderState, place: WheelPosition): number | null => {
  const label = state.sheet && placardOf(state.sheet.sheet)
  return label?.[axleOf(place)]?.psi ?? null
}
