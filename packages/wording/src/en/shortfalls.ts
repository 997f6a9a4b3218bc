import type { ShortfallsWording } from '../shortfalls.ts'

export const shortfalls: ShortfallsWording = {
  lacks: (psi) => `When it is cold, this tire has ${psi} psi less than it should.`,
  colder: (psi) => `Colder air took ${psi} psi.`,
  warmer: (psi) => `It is warmer than when the tire was set, and that added ${psi} psi.`,
  lower: (psi) => `The lower altitude took ${psi} psi.`,
  higher: (psi) => `The higher altitude added ${psi} psi.`,
  lost: (psi) => `${psi} psi of air got out, if the tire was set to the door label.`,
  setHigher: (psi) => `The tire was set higher than the door label, or air was added: ${psi} psi.`,
  withinError: (most) =>
    `The rest is less than gauges can be off by (${most} psi), so this shows no lost air.`,
  notKnown: {
    'outdoor-not-known':
      'How much of that is colder air is not known: the outdoor temperature was not noted.',
    'setting-not-known':
      'How much of that is colder air is not known: nobody could say how warm it was when the tire was last set.',
  },
}
