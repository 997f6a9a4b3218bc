import { SafetyFigure, type SpecificationSheet } from '@bayledger/reckoning/sheet'
import { type Appliers, recorded } from '../../fold/foldable.ts'
import { sheetFigureDigest } from '../../sheet-agreement.ts'
import type { OrderState } from '../../state.ts'
import type { openingKinds } from './kinds.ts'

export const applyOpening: Appliers<keyof typeof openingKinds> = {
  'order.opened': (state, entry) => ({
    ...state,
    opened: recorded({ ...entry.payload, orderNumber: entry.given.orderNumber ?? null }, entry),
    locationId: entry.payload.locationId,
    promises:
      entry.payload.promisedAt === null ? [] : [recorded({ promisedAt: entry.payload.promisedAt }, entry)],
  }),
  'complaint.recorded': (state, entry) => ({ ...state, complaint: recorded(entry.payload, entry) }),
  'authority.given': (state, entry) => {
    const given = recorded(entry.payload, entry)
    return {
      ...state,
      authority: {
        look: entry.payload.to.includes('look') ? given : state.authority.look,
        drive: entry.payload.to.includes('drive') ? given : state.authority.drive,
      },
    }
  },
  'sheet.chosen': (state, entry) => ({
    ...state,
    sheet: recorded(entry.payload, entry),
    figures: state.sheet ? stillConfirmed(state, state.sheet.sheet, entry.payload.sheet) : state.figures,
  }),
  'surroundings.recorded': (state, entry) => {
    const before = state.surroundings
    const now = entry.payload
    return {
      ...state,
      surroundings: recorded(
        {
          surroundings: {
            ...now.surroundings,
            overnightLow: now.surroundings.overnightLow ?? before?.surroundings.overnightLow ?? null,
            tire: now.surroundings.tire ?? before?.surroundings.tire ?? null,
          },
          minutesDriven: now.minutesDriven ?? before?.minutesDriven ?? null,
          lastSet: now.lastSet ?? before?.lastSet ?? null,
        },
        entry,
      ),
    }
  },
  'order.assigned': (state, entry) => ({ ...state, assigned: recorded(entry.payload, entry) }),
  'wait.set': (state, entry) => ({ ...state, wait: recorded(entry.payload, entry) }),
  'stay.changed': (state, entry) =>
    state.opened
      ? {
          ...state,
          opened: { ...state.opened, ...entry.payload },
          promises:
            entry.payload.promisedAt === state.opened.promisedAt
              ? state.promises
              : [...state.promises, recorded({ promisedAt: entry.payload.promisedAt }, entry)],
        }
      : state,
  'odometer.read': (state, entry) => {
    const { when, odometer, confirmed } = entry.payload
    if (when === 'leaving') return { ...state, odometerLeaving: recorded({ odometer, confirmed }, entry) }
    return state.opened
      ? { ...state, opened: { ...state.opened, odometer, odometerConfirmed: confirmed } }
      : state
  },
  'order.moved': (state, entry) => ({ ...state, locationId: entry.payload.locationId }),
}

/** A second person confirmed a figure as it was: of another figure on another sheet nothing is confirmed. */
const stillConfirmed = (
  { figures }: Pick<OrderState, 'figures'>,
  before: SpecificationSheet,
  after: SpecificationSheet,
): OrderState['figures'] =>
  Object.fromEntries(
    SafetyFigure.options.flatMap((figure) => {
      const confirmed = figures[figure]
      return confirmed && sheetFigureDigest(before, figure) === sheetFigureDigest(after, figure)
        ? [[figure, confirmed]]
        : []
    }),
  )
