import type { ReadyWording } from '../ready.ts'

export const ready: ReadyWording = {
  about: (when) => `We expect it to be ready at about ${when}.`,
  afterPart: ({ when, part }) =>
    `We wait for a part that should come at ${part}. We expect the vehicle to be ready at about ${when}.`,
  partWithoutDate: 'We wait for a part and do not know yet when it comes. We will tell you.',
  later: ({ vehicle, when, promised }) =>
    `Your ${vehicle} will be ready later than we said: at about ${when} instead of ${promised}. We are sorry.`,
}
