import type { StaffActor } from './actor.ts'
import { AppError } from './app-error.ts'

/** Long enough for an afternoon's change of prices, too short for a desk that somebody left. */
const provenMs = 10 * 60_000

/** @throws PROOF_NEEDED unless whoever calls has proven within the last ten minutes that it is them */
export const refuseUnlessProven = ({ provenAt }: Pick<StaffActor, 'provenAt'>, now: Date): void => {
  if (now.getTime() - provenAt.getTime() > provenMs) throw new AppError({ code: 'PROOF_NEEDED' })
}
