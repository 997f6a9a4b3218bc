import type { Step } from '@bayledger/reckoning/step'

/** How long a practiced technician takes for a step, with what is walked and fetched for it; common practice, no source. */
const usual: Partial<Readonly<Record<Step['code'], number>>> = {
  'confirm-stud-torque': 150,
  'match-sensor': 150,
  'match-tire': 90,
  'program-sensor': 80,
  'read-other-wheel': 35,
  'check-tires-for-rotation': 180,
  'lift-vehicle': 160,
  'take-wheel-off': 95,
  'take-spare-out': 240,
  'open-tire': 200,
  'look-inside': 70,
  'purge-sealant': 420,
  'find-leak': 260,
  'judge-leak': 90,
  'repair-leak': 720,
  'fit-sensor': 170,
  'renew-stem': 120,
  'read-in-rim': 40,
  'seat-tire': 220,
  'torque-core': 30,
  'put-core-back': 25,
  'inflate-tire': 70,
  'check-leaks': 60,
  'balance-wheel': 210,
  'repair-fastener': 900,
  'put-wheel-on': 100,
  'lower-to-touching': 45,
  'lower-fully': 50,
  'torque-studs': 40,
  'torque-after-miles': 55,
  'check-torque': 90,
  'stow-spare': 200,
  'put-spare-back': 200,
  'set-pressure': 50,
  'last-look': 60,
  relearn: 210,
  'read-sensor': 30,
  'proof-drive': 1_560,
  'learning-drive': 1_680,
  'confirm-learned': 60,
  'compare-stored': 70,
  'see-light': 150,
}

/** The usual seconds of a step; a minute where nothing is said of it. A drive lasts at least as long as its figure. */
export const usualSeconds = (step: Step): number => {
  const seconds = usual[step.code as Step['code']] ?? 60
  return step.figure?.kind === 'minutes' && step.closedBy === 'drive.done'
    ? Math.max(seconds, step.figure.minutes * 60 + 240)
    : seconds
}
