/**
 * Limits that the words of a step name. The makers' own limits govern where they are lower.
 */
export const workLimits = {
  /** psi, cold, up to which rubber stems are usual. Source: an industry bulletin on valves. */
  rubberStemPsi: 65,
  /** The largest hole that is repaired. Source: a trade association's guidance on puncture repair, from memory. */
  largestHole: { inches: '1/4', millimeters: 6 },
  /** Tread that must be left around a repair. Source: the same guidance, from memory. */
  leastTread32nds: 2,
  /** Feet between a sensor that is programmed and every other one. Common practice, no source. */
  programmingDistanceFeet: 5,
  /** Times that a tire with sealant is let down and filled with air. Source: a trade association's advice, from memory. */
  purgeTimes: 4,
  /**
   * psi at which the filling of a tire that was run low stops, to look and listen. Source: a trade association's advice
   * on sidewalls that burst along the cords, from memory. Such a tire is also purged at no more than this, our own choice.
   */
  restraintStopPsi: 20,
  /** psi, at most, to seat a bead. Common practice, no source. */
  seatingPsi: 40,
  /** Minutes for which soapy water is watched. Common practice, no source. */
  leakCheckMinutes: 2,
  /** psi between a closing reading and the gauge. Common practice, no source. */
  closingReadPsi: 2,
} as const
