import type { Step } from '@bayledger/reckoning/step'

const seatingCodes: ReadonlySet<Step['code']> = new Set(['seat-tire', 'seat-in-restraint'])

/** Whether a step mounts the tire and seats its beads with air. */
export const isSeating = ({ code }: Step): boolean => seatingCodes.has(code)
