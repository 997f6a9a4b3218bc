import type { OrderState } from '../state.ts'
import { type Foldable, recorded } from './foldable.ts'

/** Closes a plan's step by the entry that did it; an entry outside any step closes none. */
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
