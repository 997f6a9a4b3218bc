import type { WheelsWording } from '../wheels.ts'

export const wheels: WheelsWording = {
  names: { LF: 'left front', RF: 'right front', RR: 'right rear', LR: 'left rear', SP: 'spare' },
  allFour: 'all four',
  and: 'and',
}
