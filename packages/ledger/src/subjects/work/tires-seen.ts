import { WheelPosition } from '@bayledger/reckoning/wheels'
import * as z from 'zod/mini'
import { plainText } from '../../text.ts'

/**
 * What a person saw of the tires before a rotation. `arrows`: the places whose tires have an arrow and roll one way only.
 * `sizes`: as the tires say, where that is not what the sheet says and no earlier look has recorded it.
 */
export const TiresSeen = z.strictObject({
  arrows: z.array(WheelPosition).check(z.maxLength(5)),
  sizes: z.partialRecord(WheelPosition, plainText(40)),
})
export type TiresSeen = z.infer<typeof TiresSeen>
