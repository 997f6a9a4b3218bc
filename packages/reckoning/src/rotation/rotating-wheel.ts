import type { TireSize } from '../tire/tire-size.ts'

/** What moves together with a wheel. */
export type RotatingWheel = {
  /** Its sensor's ID; `null` where it has none or none was read. */
  readonly sensorId: string | null
  readonly tire: {
    readonly size: TireSize
    /** It carries an arrow and may roll one way only. */
    readonly directional: boolean
    /** A temporary spare: for the way to the shop, not for a rotation. */
    readonly temporary: boolean
    /** Tire identification number, as read. */
    readonly tin: string | null
    readonly treadDepth32nds: number | null
  }
  readonly notes: readonly string[]
}
