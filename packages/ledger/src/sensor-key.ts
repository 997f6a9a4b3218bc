/** IDs are numbers whatever their notation: leading zeros and letter case do not make another sensor. */
export const sensorKey = (id: string): string => id.toUpperCase().replace(/^0+(?=.)/, '')
