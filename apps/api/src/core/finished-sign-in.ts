import type { Awaited } from '@bayledger/contract/endpoint'
import type { StaffActor } from './actor.ts'
import { AppError } from './app-error.ts'

/** @throws SIGN_IN_UNFINISHED where whoever calls has to do something before anything but what is `open` to them */
export const refuseUnlessFinished = (
  { awaits }: Pick<StaffActor, 'awaits'>,
  open: readonly Awaited[] = [],
): void => {
  if (awaits !== null && !open.includes(awaits)) throw new AppError({ code: 'SIGN_IN_UNFINISHED', awaits })
}
