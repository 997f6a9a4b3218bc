import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { WheelsWording } from '../wheels.ts'

export const wheelNames: Readonly<Record<WheelPosition, string>> = {
  LF: 'left front',
  RF: 'right front',
  RR: 'right rear',
  LR: 'left rear',
  SP: 'spare',
}

export const wheels: WheelsWording = {
  names: wheelNames,
  allFour: 'all four',
  and: 'and',
}
