import * as z from 'zod/mini'

/** What the register keeps of a torque wrench beside its row: its range, both ends included. */
export const WrenchBody = z.object({
  rangeLow: z.number(),
  rangeHigh: z.number(),
  rangeUnit: z.enum(['lbf·ft', 'lbf·in', 'N·m']),
})

/** What the register keeps of a gauge beside its row: psi that it shows more than the master gauge. */
export const GaugeBody = z.object({ correctionPsi: z.number() })
