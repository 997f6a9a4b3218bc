import { AppError } from '../../core/app-error.ts'
import type { CalledFrom } from '../../core/called-from.ts'

/** @throws FIRST_PAGE_ELSEWHERE unless a browser on the machine itself asks */
export const refuseUnlessHere = ({ isThisMachine, addressHere }: CalledFrom): void => {
  if (!isThisMachine) throw new AppError({ code: 'FIRST_PAGE_ELSEWHERE', address: `${addressHere}/desk` })
}
