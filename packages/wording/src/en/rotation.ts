import type { StepsWording } from '../steps.ts'

export const patterns: StepsWording['patterns'] = {
  'front-to-back': 'front to back, each side by itself',
  'rearward-cross': 'rear wheels straight forward, front wheels crossed to the rear',
  'forward-cross': 'front wheels straight back, rear wheels crossed to the front',
  cross: 'crossed at both axles',
  'side-to-side': 'left and right exchanged',
  'five-rearward-cross': 'five wheels, rear wheels straight forward, the spare to the right rear',
  'five-forward-cross': 'five wheels, left front straight back, the spare to the right rear',
}

export const doubts: StepsWording['doubts'] = {
  'other-set-in-same-order': 'The other set goes on in the same order.',
  'two-patterns': 'Two patterns are authorized.',
  'axles-differ': 'The sheet has other tires in front than behind: no wheel leaves its axle.',
  'no-spare': 'The sheet has no spare.',
  'spare-temporary': "The sheet's spare is a temporary one.",
  'spare-size-differs': "The sheet's spare is not of the size that is on the hubs.",
  'tires-not-on-sheet': 'Nobody has entered the tires of the door label yet.',
}
