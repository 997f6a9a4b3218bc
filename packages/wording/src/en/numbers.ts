import type { BundleTitle } from '@bayledger/reckoning/estimate'
import type { TimedCode } from '@bayledger/reckoning/ready/step-seconds'

/** Kinds of jobs, without their wheels. */
const bundles: Readonly<Record<BundleTitle, string>> = {
  look: 'Inspection',
  sensor: 'New sensor',
  'set-of-four': 'New sensors in all wheels',
  stem: 'Valve stem',
  leak: 'Leak found and repaired',
  'leak-search': 'Leak search',
  puncture: 'Puncture',
  tire: 'New tire',
  fastener: 'Studs or nuts',
  season: 'Change of season',
  rotation: 'Rotation',
  'torque-again': 'Torque again',
  pressures: 'Pressures',
  relearn: 'Relearn',
  reset: 'Pressures and reset',
  tires: 'New tires, sensors kept',
  spare: 'Spare wheel',
  'outside-work': 'Outside work',
  'by-hand': 'Added by hand',
  'if-stem-breaks': 'Only if a stem breaks',
}

/** Kinds of steps, without wheel and figure. */
const steps: Readonly<Record<TimedCode, string>> = {
  'confirm-placard': 'Door label confirmed',
  'confirm-stud-torque': 'Torque figure confirmed',
  'confirm-frequency': 'Frequency confirmed',
  'lift-vehicle': 'Vehicle lifted',
  'lower-to-touching': 'Lowered until tires hold',
  'lower-fully': 'Lowered onto its wheels',
  'find-leak': 'Leak searched',
  'find-leak-after-look': 'Leak searched, sound inside',
  'match-tire': 'Tire matched',
  'match-sensor': 'Sensor drawn and matched',
  'program-sensor': 'Sensor programmed',
  'read-other-wheel': 'Other set’s wheel read',
  'check-tires-for-rotation': 'Tires checked for rotation',
  'take-spare-out': 'Spare taken out',
  'take-sound-spare-out': 'Sound spare taken out',
  'stow-spare': 'New spare stowed',
  'put-spare-back': 'Spare stowed again',
  'take-wheel-off': 'Wheel taken off',
  'repair-fastener': 'Studs or nuts renewed',
  'purge-sealant': 'Sealant gas purged',
  'purge-in-restraint': 'Gas purged in restraint',
  'open-tire': 'Bead broken',
  'look-inside': 'Tire looked at inside',
  'judge-leak': 'Leak judged',
  'repair-leak': 'Leak repaired',
  'fit-sensor': 'Sensor fitted',
  'renew-stem': 'Stem parts renewed',
  'read-in-rim': 'Sensor read in the rim',
  'seat-tire': 'Tire mounted, beads seated',
  'seat-in-restraint': 'Mounted in restraint',
  'torque-core': 'New core torqued',
  'put-core-back': 'Core put back',
  'inflate-tire': 'Filled',
  'inflate-in-restraint': 'Filled in restraint',
  'check-leaks': 'Checked for leaks',
  'balance-wheel': 'Balanced',
  'put-wheel-on': 'Wheel put on',
  'torque-studs': 'Torque round',
  'torque-after-miles': 'Torque after the miles',
  'check-torque': 'Second check of the torque',
  'set-pressure': 'Pressure set',
  relearn: 'Relearn',
  'learning-drive': 'Learning drive',
  'confirm-learned': 'Learning confirmed',
  'read-sensor': 'Sensor read again',
  'compare-stored': 'Stored IDs compared',
  'proof-drive': 'Proof drive',
  'see-light': 'Light watched',
  'last-look': 'Last look',
  other: 'Step of an earlier plan',
}

const offBy = [
  'over 60 min early',
  '16 to 60 min early',
  'within 15 min',
  '16 to 60 min late',
  'over 60 min late',
]
const ages = [
  'under 1 year',
  '1 to 3 years',
  '4 to 6 years',
  '7 to 10 years',
  'over 10 years',
  'age not known',
]

/** What the owner's page calls what it counts: staff only, so in English only. */
export const numbers = {
  bundles,
  steps,
  noCause: 'No cause was confirmed',
  causeNotRecorded: 'Not recorded',
  lookOnly: 'Work without an answered bundle',
  promises: {
    first: 'Ready by the first promise',
    later: 'Ready by a later promise',
    late: 'Later than promised',
    none: 'No promise was made',
    order: [
      'Ready by the first promise',
      'Ready by a later promise',
      'Later than promised',
      'No promise was made',
    ],
  },
  offBy: {
    order: offBy,
    /** `minutes` after what was estimated; below 0 before it. */
    label: (minutes: number): string => {
      const place = minutes < -60 ? 0 : minutes < -15 ? 1 : minutes <= 15 ? 2 : minutes <= 60 ? 3 : 4
      return offBy[place] ?? ''
    },
  },
  age: {
    order: ages,
    label: (months: number | null): string => {
      if (months === null) return 'age not known'
      const years = months / 12
      const place = years < 1 ? 0 : years < 4 ? 1 : years < 7 ? 2 : years <= 10 ? 3 : 4
      return ages[place] ?? ''
    },
  },
  lot: (isOurs: boolean, lot: string | null): string =>
    lot === null ? (isOurs ? 'Fitted here, no lot on record' : 'Not fitted here') : `Lot ${lot}`,
} as const
