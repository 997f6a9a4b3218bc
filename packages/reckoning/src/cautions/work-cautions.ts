/** A caution as a technician reads it on a step. Its words change only with its version. */
export type WorkCaution = { readonly number: string; readonly version: number; readonly words: string }

/**
 * Cautions of the bay. They are the usual ones of the trade; the vehicle maker's instructions, the machine
 * maker's, local codes and the shop's own training govern.
 */
export const workCautions = {
  lift: {
    number: 'CW-01',
    version: 1,
    words:
      "Use the vehicle maker's lift points. Never work under a vehicle that only a jack holds. Switch off air suspension first; on an electric or hybrid vehicle make it ready-off and keep pads off the battery.",
  },
  open: {
    number: 'CW-02',
    version: 1,
    words:
      'Take the core out and let all air off before the bead is broken. Treat every tire as if it held burnable gas: no flame, no spark, no plug before it is off the rim.',
  },
  seat: {
    number: 'CW-03',
    version: 2,
    words:
      "Stand aside and use a clip-on chuck. Never over 40 psi to seat a bead, nor over the tire maker's own limit where it is lower: let the air off, lubricate again, try again.",
  },
  torque: {
    number: 'CW-04',
    version: 1,
    words:
      "Clean, dry threads; nothing on them unless the vehicle maker says so. The vehicle maker's figure governs. Never tighten finally with an impact gun. A nut that resists by hand is cross-threaded: stop.",
  },
  stem: {
    number: 'CW-05',
    version: 1,
    words:
      "The sensor maker's figure governs and is in lbf·in or N·m, not lbf·ft. Torque in one pull; never tighten again later.",
  },
  pressure: {
    number: 'CW-06',
    version: 1,
    words:
      "The door label's pressure governs, cold. Never let air out of a warm tire and never fill above the sidewall's maximum.",
  },
  road: {
    number: 'CW-07',
    version: 1,
    words:
      'Drive only with every wheel torqued and checked by a second person. Obey the road; let nobody read the tablet while driving.',
  },
  torqueAgain: {
    number: 'CW-08',
    version: 1,
    words:
      "Cold wheels only, never after hard braking. Do not loosen first. The vehicle maker's figure governs, with a wrench in calibration.",
  },
  repair: {
    number: 'CW-09',
    version: 1,
    words:
      "The tire maker's own rules of repair govern, above all for tires that run flat or carry sealant. A tire that was run low can burst while it is filled: when in doubt it is not repaired.",
  },
} as const satisfies Record<string, WorkCaution>

export type WorkCautionName = keyof typeof workCautions

export const workCautionByNumber = (number: string): WorkCaution | undefined =>
  Object.values(workCautions).find((caution) => caution.number === number)
