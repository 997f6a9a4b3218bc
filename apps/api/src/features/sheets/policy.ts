import type { FieldProblem } from '@bayledger/contract/problem'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import { torqueDoubts } from '@bayledger/reckoning/torque/plausible-torque'
import { torqueDoubtWords } from '@bayledger/wording/en/torque-doubts'

/** What of a wheel's torque may be right and is likely a slip: one in another unit than its source prints. */
export const torqueDoubtsOf = (studs: SpecificationSheet['studs']): FieldProblem[] => {
  if (studs === 'missing') return []
  const { thread, torque } = studs
  return torqueDoubts(thread, torque)
    .filter(({ code }) => code !== 'usual-in-other-units')
    .map((doubt) => ({
      field: doubt.code === 'thread-unreadable' ? 'studs.thread' : 'studs.torque.value',
      found: doubt.code === 'thread-unreadable' ? thread : `${torque.value} ${torque.unit}`,
      allowed: torqueDoubtWords(doubt, torque, thread),
    }))
}
