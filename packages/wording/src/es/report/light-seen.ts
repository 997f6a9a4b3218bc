import type { LightSeen } from '../../report/arrival.ts'
import { reportCells } from './cells.ts'

const lamp = { lights: 'se enciende', dark: 'se queda apagada' } as const

/** The lamp check and then the engine running: "al encender el auto se enciende; con el motor en marcha se queda apagada". */
export const lightSeen = ({ lampCheck, behavior }: LightSeen): string =>
  `al encender el auto ${lampCheck === null ? reportCells.notChecked : lamp[lampCheck]}; con el motor en marcha ${behavior ?? reportCells.notChecked}`
