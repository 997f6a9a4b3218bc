import type { Length } from '../units/length-units.ts'

/**
 * The depth at which the wear bars across the grooves come level with the tread, 2/32 (1/16) in: the tire is worn out.
 *
 * @units 1/32 in
 * @source 49 CFR 571.139 S5.4, tread wear indicators (quoted)
 */
export const wearBar = { value: 2, unit: '1/32 in' } as const satisfies Length

/**
 * The depth at which a tire is due soon, 4/32 in.
 *
 * @units 1/32 in
 * @source common practice, no source
 */
export const treadDueSoon = { value: 4, unit: '1/32 in' } as const satisfies Length
