import * as z from 'zod/mini'

/**
 * A figure as a person entered it or as a label prints it, with its unit.
 * The entered figure is kept for good; other units are computed from it for showing only.
 */
const quantity = <const Units extends [string, ...string[]]>(
  units: Units,
  minimum: number,
  maximum: number,
) =>
  z.strictObject({
    value: z.number().check(z.gte(minimum), z.lte(maximum)),
    unit: z.enum(units),
  })

/** Gauge pressure. Bounds are of what can be typed at all; what is merely implausible is a finding. */
export const Pressure = quantity(['psi', 'kPa', 'bar'], -140, 2_800)
export type Pressure = z.infer<typeof Pressure>

/** Tightening torque: wheel fasteners in lbf·ft or N·m, sensor nuts, screws and valve cores in lbf·in or N·m. */
export const Torque = quantity(['lbf·ft', 'lbf·in', 'N·m'], 0, 2_000)
export type Torque = z.infer<typeof Torque>

export const Temperature = quantity(['F', 'C'], -150, 600)
export type Temperature = z.infer<typeof Temperature>

export const Distance = quantity(['mi', 'km'], 0, 2_000_000)
export type Distance = z.infer<typeof Distance>

/**
 * A placard pressure as printed, in both units; neither is ever derived from the other. `typed`: the label prints no psi,
 * but this, and `psi` is computed from it (`printedFrom`).
 */
export const PrintedPressure = z.strictObject({
  psi: z.number().check(z.gte(10), z.lte(120)),
  kPa: z.nullable(z.number().check(z.gte(70), z.lte(830))),
  typed: z.optional(z.strictObject({ value: z.number().check(z.gt(0)), unit: z.enum(['kPa', 'bar']) })),
})
export type PrintedPressure = z.infer<typeof PrintedPressure>
