import type { OrderState } from '../state.ts'
import { type Foldable, recorded } from './foldable.ts'

/** Closes the plan's step that the entry names; an entry that names no step closes none. */
export const closeStep = (state: OrderState, stepKey: string | null, entry: Foldable): OrderState =>
  stepKey === null
    ? state
    : {
        ...state,
        closed: {
          ...state.closed,
          [stepKey]: recorded(
            { kind: entry.kind, value: entry.kind === 'step.closed' ? entry.payload.value : null },
            entry,
          ),
        },
      }
