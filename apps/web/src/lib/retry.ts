import { isCallProblem } from './problem.ts'

/** Retrying helps if the server did not answer or failed, never if it answered with a reason. */
export const retryWhenOutOfReach = (failures: number, thrown: unknown): boolean =>
  failures < 2 && isCallProblem(thrown) && (thrown.body.status === 0 || thrown.body.status >= 500)
