import { holdingFinding, type WorkGate } from '@bayledger/ledger/questions/finding-holds'
import { roadGate } from '@bayledger/ledger/questions/gates'
import type { OrderState } from '@bayledger/ledger/state'
import type { Step } from '@bayledger/reckoning/step'

/** Why a step may not be done yet though its turn has come, with what settles it; `null` when it may. */
export const heldBy = (state: OrderState, step: Step): string | null => {
  for (const gate of gatesOf(step)) {
    const finding = holdingFinding(state, gate, step.wheel)
    if (finding) return `Not yet: ${finding.code.replaceAll('-', ' ')} must be settled first. ${finding.next}`
  }
  const goesOut = step.closedBy === 'drive.done'
  return goesOut ? (roadGate(state)[0]?.words ?? null) : null
}

const gatesOf = ({ closedBy, stepKey }: Step): readonly WorkGate[] => {
  if (closedBy === 'wheel.removed') return ['wheel-removal']
  if (closedBy === 'pressure.set') return ['pressure-setting', 'inflation']
  if (closedBy === 'relearn.done') return ['relearn']
  return stepKey.endsWith('.tire.open') ? ['bead-break'] : []
}
