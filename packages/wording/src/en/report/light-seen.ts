import type { LightSeen } from '../../report/arrival.ts'
import { reportCells } from './cells.ts'

const lamp = { lights: 'it lights', dark: 'it stays dark' } as const

/** The lamp check and then the engine running: "at key-on it lights; with the engine running stays off". */
export const lightSeen = ({ lampCheck, behavior }: LightSeen): string =>
  `at key-on ${lampCheck === null ? reportCells.notChecked : lamp[lampCheck]}; with the engine running ${behavior ?? reportCells.notChecked}`
