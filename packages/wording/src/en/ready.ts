import type { ReadyWording } from '../ready.ts'

export const ready: ReadyWording = {
  about: (when) => `We expect it to be ready by about ${when}.`,
  afterPart: ({ when, part }) =>
    `We are waiting for a part that should come by ${part}. We expect the vehicle to be ready by about ${when}.`,
  partWithoutDate: 'We are waiting for a part and do not know yet when it comes. We will tell you.',
  later: ({ vehicle, when, promised }) =>
    `Your ${vehicle} will be ready later than we said: by about ${when} instead of ${promised}. We are sorry.`,
}
