import type { Distance } from '@bayledger/reckoning/quantity'

/** A reading of the odometer; an unlikely one says that it was read a second time. */
export const odometerWords = ({ value, unit }: Distance, confirmed: boolean): string =>
  `${value.toLocaleString('en-US')} ${unit}${confirmed ? ' (unlikely, read twice)' : ''}`
