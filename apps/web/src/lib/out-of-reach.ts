import { isCallProblem } from './problem.ts'

/** Whether no answer of the shop's server came: none at all, a failed server's, or that of something in between. */
export const isOutOfReach = (thrown: unknown): boolean => {
  if (!isCallProblem(thrown)) return true
  const { status, code } = thrown.body
  return status === 0 || status >= 500 || code === 'REPLY_UNREADABLE'
}
