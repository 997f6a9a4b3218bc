/**
 * What a puncture may be at most to be repaired, by plug and patch from inside.
 *
 * @source the tire trade association's puncture repair procedure for passenger and light-truck tires (from memory): crown
 * only, 1/4 in (6 mm), repairs do not overlap, more than 2/32 in of tread, sound inside
 */
export const punctureLimits = { widestMillimeters: 6 } as const
