import type { WorkCautionsWording } from '../work-cautions.ts'

export const workCautions: WorkCautionsWording = {
  'CW-01': {
    1: "Use the vehicle maker's lift points. Never work under a vehicle that only a jack holds. Switch off air suspension first; on an electric or hybrid vehicle make it ready-off and keep pads off the battery.",
    2: "Only the vehicle maker's lift points, with the right pads. Air suspension in its jack mode first; an electric or hybrid vehicle ready-off, its key away, no pad under the battery. Lift a little and shake it before anyone goes under. Never work under a vehicle that only a jack holds.",
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
  'CW-10': {
    1: 'Nobody and nothing under the vehicle, doors shut, hands and feet clear. Every wheel that came off is on, with every fastener started by hand and snug.',
  },
  'CW-11': {
    1: 'Sealant may leave gas that burns. Outdoors only, away from drains; no flame, no spark, no hot work; nobody near who is not needed. A second person knows of it before you begin. Follow local rules for what comes out.',
  },
  'CW-12': {
    1: "This tire was run low and may burst while it is filled. No air before the look inside; not even for a leak search. Damage inside: the tire is done. The tire maker's own rules govern.",
  },
  'CW-13': {
    1: "In a restraining device, with a remote valve and a clip-on chuck, nobody in the line of a sidewall. Stop at 20 psi, look and listen: snapping, a bulge or a ripple means let the air off from where you stand and scrap the tire. The tire maker's own rules govern.",
  },
  'CW-15': {
    1: "A temporary spare has its own pressure and its own limits of speed and distance on its sidewall; they and the vehicle maker's rules govern. Only one on a vehicle. Fasteners and seats must suit its wheel. A spare with damage, or worn out, is not fitted.",
  },
  'CW-14': {
    1: "Stand aside, clip-on chuck, never over the sidewall's maximum. The door label's pressure governs, cold.",
  },
}
