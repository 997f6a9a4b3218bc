import { WheelPosition } from '@bayledger/reckoning/wheels'
import type { WheelsWording } from '../wheels.ts'

/** Feminine, as "rueda" and "llanta" are: every sentence says a wheel's name behind one of these two words. */
export const wheelNames: Readonly<Record<WheelPosition, string>> = {
  LF: 'delantera izquierda',
  RF: 'delantera derecha',
  RR: 'trasera derecha',
  LR: 'trasera izquierda',
  SP: 'de repuesto',
}

export const wheels: WheelsWording = {
  names: wheelNames,
  allFour: 'las cuatro',
  and: 'y',
}

/** The name of a wheel that a figure of a finding names; what is no wheel stays as it is. */
export const spanishWheel = (value: unknown): string => {
  const wheel = WheelPosition.safeParse(value)
  return wheel.success ? wheelNames[wheel.data] : String(value)
}
