import { holdingFinding, openStops, type WorkGate } from '@bayledger/ledger/questions/finding-holds'
import type { OrderState } from '@bayledger/ledger/state'
import type { Finding } from '@bayledger/reckoning/diagnosis/diagnosis'

const workGates: readonly WorkGate[] = [
  'wheel-removal',
  'inflation',
  'bead-break',
  'pressure-setting',
  'relearn',
]

/**
 * Findings that forbid something now. They show as soon as the readings imply them, confirmed or not; a confirmed
 * one stays until work or a recorded refusal settles it.
 */
export const stopsToShow = (state: OrderState, computed: readonly Finding[]): Finding[] => {
  const issued = state.diagnosis
  if (!issued || issued.outdated) return computed.filter(isStop)
  const open = new Set([...openStops(state, 'road'), ...openStops(state, 'hand-back')])
  return issued.diagnosis.findings
    .filter(isStop)
    .filter((finding) => open.has(finding.code) || isHolding(state, finding))
}

const isStop = ({ kind }: Finding): boolean => kind === 'stop'

const isHolding = (state: OrderState, { code, wheels }: Finding): boolean =>
  workGates.some((gate) =>
    (wheels.length === 0 ? [null] : wheels).some(
      (wheel) => holdingFinding(state, gate, wheel)?.code === code,
    ),
  )
