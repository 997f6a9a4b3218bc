import type { Torque } from '@bayledger/reckoning/quantity'
import { type StemPart, type TorqueDoubt, torqueWords } from '@bayledger/reckoning/torque/plausible-torque'

export const stemParts: Readonly<Record<StemPart, string>> = {
  'stem-nut': 'stem nut',
  'stem-screw': 'stem screw',
  'valve-core': 'valve core',
}

/** What is odd about a torque, for whoever compares it with its source; `of` is "M12×1.5" or "a stem nut". */
export const torqueDoubtWords = (doubt: TorqueDoubt, torque: Torque, of: string): string => {
  switch (doubt.code) {
    case 'thread-unreadable':
      return `The thread "${doubt.refusal.found}" cannot be read: it needs ${doubt.refusal.allowed}. ${doubt.refusal.do}`
    case 'usual-in-other-units':
      return `${torque.value} is usual for ${of} in ${[torque.unit, ...doubt.units].join(' and in ')}: see which unit the source prints.`
    case 'outside-the-usual': {
      const { low, high, unit } = doubt.usual
      const meant = doubt.meant.map((other) => `${torque.value} ${other}`).join(' or ')
      return `${torqueWords(torque)} is outside the usual ${low} to ${high} ${unit} for ${of}. ${meant === '' ? 'Read the source again.' : `Is it ${meant}?`}`
    }
  }
}
