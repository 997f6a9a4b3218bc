/** No road tire of the shop's vehicles is filled beyond this, in psi: more is a slip of a finger (common practice, no source). */
export const highestTirePsi = 150
