import { Torque } from '@bayledger/reckoning/quantity'
import { StepKey } from '@bayledger/reckoning/step'
import { torqueRounds } from '@bayledger/reckoning/torque/torque-rounds'
import { WheelPosition } from '@bayledger/reckoning/wheels'
import * as z from 'zod/mini'
import { earlierVersion, kind } from '../../kind.ts'
import { bayRoles } from '../../role.ts'
import { SecondPerson } from '../../second-person.ts'
import { Day, Id, plainText } from '../../text.ts'
import { Timed, untimed } from '../../timed.ts'

/** A torque wrench as the technician knew it when the round was sealed; figures in the wrench's own unit. */
export const WrenchUsed = z.strictObject({
  instrumentId: Id,
  code: plainText(20),
  dueOn: Day,
  cyclesBefore: z.int().check(z.gte(0)),
  rangeLow: z.number(),
  rangeHigh: z.number(),
  rangeUnit: z.enum(['lbf·ft', 'lbf·in', 'N·m']),
})
export type WrenchUsed = z.infer<typeof WrenchUsed>

export const TorqueRound = z.enum(torqueRounds)

const stud = z.int().check(z.gte(1), z.lte(10))
const round = {
  stepKey: StepKey,
  wheel: WheelPosition,
  figure: Torque,
  wrench: WrenchUsed,
  clicked: z.int().check(z.gte(0), z.lte(10)),
  total: z.int().check(z.gte(3), z.lte(10)),
  /** Studs (1 is nearest the valve, counted clockwise) whose nut turned before the click. */
  moved: z.array(stud),
}

export const torqueKinds = {
  /** `timed`: from the moment when the round came up on the tablet until it was sealed. */
  'studs.torqued': kind(z.strictObject({ ...round, round: TorqueRound, timed: Timed }), {
    earlier: [earlierVersion(z.strictObject({ ...round, round: TorqueRound }), untimed)],
    roles: bayRoles,
    strikable: 'second-person',
  }),
  /**
   * The second person's own round, at the full figure. `checkedBy` went round and sealed it with their PIN, on whichever
   * tablet; `null` in earlier versions, where it was whoever wrote the entry.
   */
  'torque.checked': kind(z.strictObject({ ...round, timed: Timed, checkedBy: z.nullable(SecondPerson) }), {
    earlier: [
      earlierVersion(z.strictObject(round), untimed),
      earlierVersion(z.strictObject({ ...round, timed: Timed }), (payload) => ({
        ...payload,
        checkedBy: null,
      })),
    ],
    roles: bayRoles,
    agreedBy: bayRoles,
    strikable: 'second-person',
  }),
}
