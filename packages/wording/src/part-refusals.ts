import type { PartRefusal } from '@bayledger/reckoning/sensor/part-match'

/** What speaks against a sensor that somebody wants to fit. */
export type PartRefusalsWording = (refusal: PartRefusal) => string
