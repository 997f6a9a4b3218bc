import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState } from '../state.ts'

/** The wheels that a finding concerns now; none where it is not found, or concerns the vehicle. */
export const wheelsOfFinding = ({ diagnosis }: OrderState, code: string): readonly WheelPosition[] =>
  diagnosis?.diagnosis.findings.find((finding) => finding.code === code)?.wheels ?? []
