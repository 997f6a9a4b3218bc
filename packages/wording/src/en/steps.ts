import type { StepsWording } from '../steps.ts'
import { doubts, patterns } from './rotation.ts'
import { stepHows } from './step-hows.ts'

export const steps: StepsWording = {
  does: {
    'confirm-placard': 'Confirm the door label pressures',
    'confirm-stud-torque': 'Confirm the wheel torque',
    'confirm-frequency': 'Confirm the sensor frequency',
    'lift-vehicle': 'Lift the vehicle',
    'lower-to-touching': 'Lower it until the tires just hold',
    'lower-fully': 'Lower it onto its wheels',
    'find-leak': 'Find where the air goes',
    'find-leak-after-look': 'Sound inside: find where the air goes',
    'match-tire': 'Match the new tire, read its number',
    'match-sensor': 'Draw the sensor, match it by scan',
    'program-sensor': ({ values }) =>
      values.identity === 'copy' ? "Program with the old sensor's ID" : 'Program with a new ID',
    'read-other-wheel': "Read the other set's wheel",
    'check-tires-for-rotation': 'See that the tires allow the rotation',
    'take-spare-out': 'Take the spare out',
    'take-sound-spare-out': 'Take the spare out, see that it is sound',
    'stow-spare': 'Stow the new spare',
    'put-spare-back': 'Stow the spare again',
    'take-wheel-off': 'Take the wheel off',
    'repair-fastener': 'Renew the damaged studs or nuts',
    'purge-sealant': 'Outdoors: purge the sealant gas, four times',
    'purge-in-restraint': 'Outdoors, in restraint: purge the gas, four times',
    'open-tire': 'Let the air off, break the bead',
    'look-inside': 'Look inside the tire',
    'judge-leak': 'Say what closes the leak',
    'repair-leak': 'Repair what leaks',
    'fit-sensor': 'Old sensor out, new one in',
    'renew-stem': 'Renew the stem parts',
    'read-in-rim': 'Read the sensor before the tire goes on',
    'seat-tire': 'Mount the tire, seat the beads',
    'seat-in-restraint': 'Mount it, seat the beads in restraint',
    'torque-core': 'Torque the new valve core',
    'put-core-back': 'Put the valve core back, torque it',
    'inflate-tire': 'Fill to the working pressure',
    'inflate-in-restraint': 'In restraint: fill to the working pressure',
    'check-leaks': 'Check stem, core and beads for leaks',
    'balance-wheel': 'Balance the wheel',
    'put-wheel-on': ({ values }) =>
      `Wheel on, every ${values.fastener === 'missing' ? 'fastener' : values.fastener} by hand`,
    'torque-studs': ({ round }) => {
      if (round === 'half') return 'Round at half the figure'
      return round === 'full' ? 'Round at the figure' : 'Once more round at the figure'
    },
    'torque-after-miles': 'Check the torque after the miles',
    'check-torque': 'Second person checks the torque',
    'set-pressure': 'Set the pressure',
    relearn: ({ values }) => relearnTitles[values.method],
    'learning-drive': 'One drive: the vehicle learns, the light is proven',
    'confirm-learned': 'See that the vehicle learned its sensors',
    'read-sensor': 'Read the sensor again',
    'compare-stored': 'Compare what the vehicle stored',
    'proof-drive': 'Proof drive',
    'see-light': 'See the light come on and go out',
    'last-look': 'Last look around the vehicle',
  },
  how: stepHows,
  patterns,
  doubts,
  sources: {
    'stem-nut': "stem nut, sensor maker's sheet",
    'stem-screw': "stem screw, sensor maker's sheet",
    'valve-core': "valve core, sensor maker's sheet",
    'federal-rule': '49 CFR 571.138 S4.2',
  },
  halfOf: (reference) => `about half of the figure; the figure: ${reference}`,
  minutes: { driving: 'min driven', 'time-limit': 'min limit', 'proof-drive': 'min' },
}

const relearnTitles = {
  automatic: 'Let the vehicle learn its sensors',
  stationary: 'Make the vehicle learn its sensors',
  connector: 'Send the sensor IDs to the vehicle',
  reset: 'Tell the vehicle its tires are right',
} as const
