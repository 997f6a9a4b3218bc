import type { WorkCautionsWording } from '../work-cautions.ts'

export const workCautions: WorkCautionsWording = {
  'CW-01': {
    1: "Use the vehicle maker's lift points. Never work under a vehicle that only a jack holds. Switch off air suspension first; on an electric or hybrid vehicle make it ready-off and keep pads off the battery.",
  },
  'CW-02': {
    1: 'Take the core out and let all air off before the bead is broken. Treat every tire as if it held burnable gas: no flame, no spark, no plug before it is off the rim.',
  },
  'CW-03': {
    1: 'Stand aside and use a clip-on chuck. Never over 40 psi to seat a bead: let the air off, lubricate again, try again.',
    2: "Stand aside and use a clip-on chuck. Never over 40 psi to seat a bead, nor over the tire maker's own limit where it is lower: let the air off, lubricate again, try again.",
  },
  'CW-04': {
    1: "Clean, dry threads; nothing on them unless the vehicle maker says so. The vehicle maker's figure governs. Never tighten finally with an impact gun. A nut that resists by hand is cross-threaded: stop.",
  },
  'CW-05': {
    1: "The sensor maker's figure governs and is in lbf·in or N·m, not lbf·ft. Torque in one pull; never tighten again later.",
  },
  'CW-06': {
    1: "The door label's pressure governs, cold. Never let air out of a warm tire and never fill above the sidewall's maximum.",
  },
  'CW-07': {
    1: 'Drive only with every wheel torqued and checked by a second person. Obey the road; let nobody read the tablet while driving.',
  },
  'CW-08': {
    1: "Cold wheels only, never after hard braking. Do not loosen first. The vehicle maker's figure governs, with a wrench in calibration.",
  },
  'CW-09': {
    1: "The tire maker's own rules of repair govern, above all for tires that run flat or carry sealant. A tire that was run low can burst while it is filled: when in doubt it is not repaired.",
  },
}
