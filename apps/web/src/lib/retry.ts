import { isCallProblem } from './problem.ts'

/** Asking again helps when nobody answered or the server was out of order, never when it answered with a reason. */
export const retryWhenOutOfReach = (failures: number, thrown: unknown): boolean =>
  failures < 2 && isCallProblem(thrown) && (thrown.body.status === 0 || thrown.body.status >= 500)
