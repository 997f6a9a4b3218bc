import type { FindingActions } from '../findings.ts'

export const findingActions: FindingActions = {
  'gauge-missing': 'Gauge it before anything else.',
  'light-not-witnessed': 'Key on, engine off: does it light? Then start and watch it for two minutes.',
  'retry-silent-wheel':
    'Turn the wheel a quarter, check vehicle selection and how its sensor wakes, try again by the stem.',
  'cross-read-suspected': 'Read these wheels again, 5 ft from the others or between drives.',
  'placard-unverified': "Photograph the label or the maker's table. Never go by the figure on the sidewall.",
  'system-unknown': 'Look for a reset switch, at the stems and at the specification sheet; then go on.',
  'reading-impossible': 'Read and enter it again.',
  'reading-stale': 'Gauge again, or mark the reading as not as received.',

  'run-low-damage-possible':
    'Do not bring it to working pressure before it was inspected inside. Light truck or unknown cord: restrain it, remote valve, stop at 20 psi, look and listen. Do not drive.',
  'sealant-inside':
    'No flame, spark, hot work, plug or reamer. Let down and refill with air four times outdoors before the bead is broken; then clean and judge the sensor.',
  'hot-corner':
    "Do not drive. Do not touch wheel or brake: measure by infrared or let it cool. Have that corner checked, brake first; do not set that tire's pressure hot.",
  'stem-leaking': 'Do not pull or bend it. Renew the stem, or the sensor it belongs to, before release.',
  'tire-unsafe':
    'Cord, bulge, cut or damage inside: do not drive; replace it. Worn out: replace before release, or record the refusal. A stowed spare: do not fit it.',
  'wheel-not-secure': "Do not drive. Repair it to the vehicle maker's instructions before release.",
  'puncture-not-repairable': 'Replace the tire. Nothing is plugged, from outside or inside.',

  'tire-low': 'Find the leak before only filling.',
  'cold-weather': 'Set these tires to the label figure, corrected for temperature.',
  'weather-and-seepage': 'Set these tires, and advise a check every month.',
  'slow-loss-suspected': 'Check tread, stem, core and bead for a leak.',
  'slow-leak': 'Find the leak: tread, stem, core, bead, wheel.',
  'axle-pressures-exchanged':
    'Set each axle to its own figure, then see whether the vehicle learned the new places.',
  'cold-morning-margin': 'Set the tires; the light then stays out on cold mornings.',
  'altitude-change': 'Set these tires here.',
  'spare-low': 'Set the spare to its own label figure, and find out why it was low.',
  'warm-tire-hides-low': 'Set to the target for this temperature, finish cold. Never bleed a warm tire.',
  'over-inflated':
    'Let down only when cold. Above the sidewall maximum: let down now, to the target for this temperature and never under it.',
  'no-warning-given':
    'Set the tire first. Watch the lamp check at key-on; only then drive 20 minutes and look again.',
  'warning-unexplained':
    'Gauge against the master, look at the spare, at stored places and at a reset; drive.',
  'under-placard': 'Set it to the label figure for the temperature of the day.',
  'puncture-found':
    'Leave the object in until the customer has decided. Then look inside, and repair it from inside.',
  'spare-under-label': 'Set the spare to its own label figure.',

  'set-then-reset': 'Set all tires, then reset the system.',
  'reset-only': 'Reset the system. There is no sensor to sell.',
  'wheel-speed-fault': 'Read the brake system; compare tire sizes and tread.',
  'no-monitoring-fitted': "Identify the lamp in the vehicle maker's instructions.",
  'equal-loss-unseen': 'Set all four, reset, and explain it.',
  'system-kind-contradicted': 'Settle which, before anything else.',
  'reset-and-recheck': 'Reset once, look at the pressures again in 7 days.',

  'sensor-silent': 'Replace it; look inside the tire while it is open.',
  'no-wheel-answers': 'Test the reader on a sensor known to be good; then decide.',
  'sensor-battery-low': 'Offer its replacement.',
  'sensor-reads-wrong': 'Verify with the master gauge, then replace the sensor.',
  'sensors-refer-to-sea-level': 'None; explain it.',
  'gauge-suspect': 'Take all readings again with the master gauge.',
  'sensor-temperature-impossible': 'Read it again; if it stays, replace it.',
  'frequency-wrong': 'Replace it; do not try to relearn it.',
  'protocol-wrong': 'Program it again for this vehicle, or replace it.',
  'sensor-does-not-follow': 'Demount; clean or replace it.',
  'stem-corroded': 'Offer it, and say first that the stem may break when touched.',
  'set-of-four-worth-offering': 'Offer one and four side by side.',
  'sensor-asleep': 'Lift the wheel and inflate it again from flat, or drive.',
  'no-sensor-on-arrival': 'Record it with a photo before any work.',
  'temporary-spare-fitted':
    'Mind the speed and distance limit on its sidewall; gauge and trigger the wheel in the trunk.',

  'id-not-stored': 'Relearn.',
  'stored-id-unheard': 'Settle it together with the sensor that answers there.',
  'other-wheel-set': 'Relearn this set.',
  'rotated-without-relearn':
    'Set pressures by position, then relearn; drive first where the vehicle locates its wheels by itself.',
  'id-duplicated':
    'Compare with the stored list which is the original; program the other as a new ID, relearn.',
  'wheel-from-another-vehicle': 'Check load index, offset, seat and hub bore too; then its sensor.',
  'id-known-elsewhere': "Open that vehicle's order.",
  'id-notation-differs': 'None; compare numbers, not their spelling.',
  'spare-rotated-without-relearn': 'Relearn all five positions.',

  'malfunction-unexplained':
    'Read codes, unplug added devices, drive 20 minutes, repeat; refer. Sell no part on a guess.',
  'receiver-fault': 'Refer it. No sensor cures this.',
  'code-old-or-intermittent': 'Note it, clear it, drive, look again.',
  'control-module-blank': 'Relearn all wheels.',
  'learn-mode-open': 'Finish or leave learn mode, then judge again.',
  'telltale-dark': 'Record it with a photo first and tell the customer. Do not repeat or extend it.',
  'collision-corner': 'Inspect that corner before ordering a sensor.',
  'not-driven-yet': 'Drive 20 minutes, then judge again.',

  'one-place-only': 'No work; note the place.',
  'interference-suspected': 'Take it out, drive, compare.',
  'aftermarket-wheels': 'Check that the sensor lies in the drop center and that the hole fits its stem.',
  'snow-or-chains': 'Clear the wheels and test again.',

  comeback: 'Join it to the earlier order; no charge until the lead has chosen its class.',
  'under-warranty': 'Write the line as warranty.',

  'tire-old': 'Advise, without alarm.',
  'sensors-near-usual-life': 'Advise it for the next tire change.',
  'tread-low-soon': 'Advise its replacement.',
  'nothing-found-today': 'Give the customer the watch-list: time, weather, place, passengers, devices.',
}
