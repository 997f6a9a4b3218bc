import type { Millimeters, NewtonMeters, Newtons, SquareMillimeters } from '../units/measured.ts'
import { type Megapascals, megapascals, newtons } from '../units/measured.ts'

/** How a thread was found: published wheel torques are for clean, dry threads. */
export type ThreadSurface = 'dry' | 'lubricated'

/** A force with the spread that tightening by torque leaves. */
export type ClampForce = { readonly low: Newtons; readonly nominal: Newtons; readonly high: Newtons }

/**
 * What a torque does to a stud, as an explanation of why threads are kept dry and why the maker's figure is not to be
 * exceeded. It goes from a torque to a force and never back: no function here gives a torque for a force.
 *
 * @formula F = T / (K · D); K is 0.20 dry, 0.15 lubricated.
 * @units T in N·m, D (outer diameter) in mm, F in N. 108.5 N·m on a dry 12 mm stud is 45.2 kN.
 * @limits The spread is 30 % each way; show it with `clampForceCaution`.
 * @source K: a hardware maker's table of strengths, read online in 2026. The spread of 25 to 30 %: from memory.
 */
export const clampForce = (
  torque: NewtonMeters,
  diameter: Millimeters,
  surface: ThreadSurface,
): ClampForce => {
  const nominal = torque / (nutFactors[surface] * (diameter / 1_000))
  return {
    low: newtons(nominal * (1 - scatter)),
    nominal: newtons(nominal),
    high: newtons(nominal * (1 + scatter)),
  }
}

/**
 * The tension that a clamp force makes in a stud.
 *
 * @formula F / As.
 * @units N and mm² to MPa. 45.2 kN in a stud of M12×1.5 is 513 MPa.
 * @source Definition of stress.
 */
export const studStress = (force: Newtons, area: SquareMillimeters): Megapascals => megapascals(force / area)

export type PropertyClass = '8.8' | '10.9' | '12.9'

/**
 * The stress up to which a stud springs back. Over it the stud stays stretched and is to be replaced.
 *
 * @units MPa. Class 10.9 has 830.
 * @limits Class 8.8 has 580 up to 16 mm and 600 over it.
 * @source ISO 898-1, derived from the proof loads of a fastener supplier's table, read online in 2026.
 */
export const proofStress = (propertyClass: PropertyClass, diameter: Millimeters): Megapascals =>
  megapascals(propertyClass === '8.8' && diameter > 16 ? 600 : proofStresses[propertyClass])

/**
 * How much of its proof stress a stud carries. Over 1 it is stretched for good.
 *
 * @formula stress / proof stress.
 * @units A share: 0.618 is 61.8 %.
 * @source Definition of the share.
 */
export const proofShare = (stress: Megapascals, proof: Megapascals): number => stress / proof

const nutFactors: Readonly<Record<ThreadSurface, number>> = { dry: 0.2, lubricated: 0.15 }

const scatter = 0.3

const proofStresses: Readonly<Record<PropertyClass, number>> = { '8.8': 580, '10.9': 830, '12.9': 970 }
