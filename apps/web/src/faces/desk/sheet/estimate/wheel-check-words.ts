import type { HubFit } from '@bayledger/reckoning/wheel/hub-fit'
import { type BalancedFor, type Imbalance, mostLeftGrams } from '@bayledger/reckoning/wheel/imbalance'
import type { OffsetShift } from '@bayledger/reckoning/wheel/offset-shift'
import type { Engagement } from '@bayledger/reckoning/wheel/thread-engagement'
import type { WheelFit, WheelGap, WheelRefusal } from '@bayledger/reckoning/wheel/wheel-fit'

const heads: Readonly<Record<WheelFit['outcome'], string>> = {
  refused: 'Do not fit it.',
  open: 'Nothing speaks against it so far. It is not all measured.',
  fits: 'Holes, hub, seats and turns agree.',
}

const refusals: Readonly<Record<WheelRefusal, string>> = {
  holes: 'It has another number of bolt holes.',
  'bolt-circle': 'Its bolt holes are on another circle.',
  hub: 'Its bore is smaller than the hub: it does not go on.',
  seat: 'The fasteners have another seat than the wheel: they work loose. Use fasteners with the wheel’s seat.',
  turns: 'The fasteners do not turn on far enough.',
}

const gaps: Readonly<Record<WheelGap, string>> = {
  holes: 'the number of holes',
  'bolt-circle': 'the bolt circle',
  hub: 'hub and bore',
  offset: 'width and offset',
  seat: 'the seats',
  turns: 'the turns by hand',
}

/** What the check says of another wheel, sentence by sentence. */
export const wheelFitWords = (fit: WheelFit): string[] => [
  heads[fit.outcome],
  ...fit.refusals.map((what) => refusals[what]),
  ...(fit.hub?.outcome === 'needs-ring' ? [ringWords(fit.hub)] : []),
  ...(fit.engagement === null ? [] : turnsWords(fit.engagement)),
  ...(fit.shift === null ? [] : shiftWords(fit.shift)),
  ...(fit.gaps.length === 0 ? [] : [`Not measured: ${fit.gaps.map((what) => gaps[what]).join(', ')}.`]),
  'The load that is stamped into the wheel has to carry the axle. The vehicle maker’s and the wheel maker’s pages govern.',
]

const ringWords = ({ apart }: HubFit): string =>
  `Its bore is ${apart.toFixed(1)} mm wider than the hub: it needs a centering ring, unless it is made to be centered by its nuts.`

const turnsWords = (engagement: Engagement): string[] => {
  if (engagement.outcome === 'unreadable-thread')
    return ['Type the thread as the sheet has it, as M12×1.5 or 1/2-20.']
  const { outcome, leastTurns, turnsOfOneDiameter } = engagement
  if (outcome === 'short-of-sheet') return ['The turns are fewer than the sheet says.']
  if (outcome === 'short-of-trade')
    return [`The trade takes at least ${turns(leastTurns)} turns on this thread.`]
  return outcome === 'under-one-diameter'
    ? [
        `The turns hold less than one diameter of the thread, which is ${turns(turnsOfOneDiameter)}: look at the maker’s figure.`,
      ]
    : []
}

const turns = (figure: number): string => figure.toFixed(1).replace('.0', '')

const shiftWords = ({ out, track, outerEdge, innerEdge }: OffsetShift): string[] => {
  if (out === 0 && outerEdge === 0) return ['The wheel comes to lie where the own one does.']
  return [
    out === 0
      ? 'Its middle stays where it is.'
      : `Its middle moves ${millimeters(out)} ${out > 0 ? 'out' : 'in'}: two of them make the track ${millimeters(track)} ${track > 0 ? 'wider' : 'narrower'}, and the scrub radius changes by as much as the middle moves.`,
    `The rim’s outer edge comes ${millimeters(outerEdge)} ${outerEdge >= 0 ? 'nearer to' : 'farther from'} the fender, its inner edge ${millimeters(innerEdge)} ${innerEdge >= 0 ? 'nearer to' : 'farther from'} strut and brake. Try it by hand with the steering turned fully.`,
  ]
}

const millimeters = (length: number): string => `${Math.abs(length).toFixed(1).replace('.0', '')} mm`

const newtonsPerPoundForce = 4.4482216152605

/** What is left on a wheel after balancing, and what it does at 60 mph. */
export const imbalanceWords = (left: Imbalance, on: BalancedFor): string[] => [
  `The heavier side has ${left.grams.toFixed(0)} g left. ${
    left.isOver
      ? `That is over the ${mostLeftGrams[on]} g that a side may have: balance it again.`
      : `A side may have ${mostLeftGrams[on]} g.`
  }`,
  `At 60 mph it pulls with up to ${(left.force / newtonsPerPoundForce).toFixed(1)} lbf (${left.force.toFixed(0)} N), ${left.hertz.toFixed(0)} times a second.`,
  'The balancer maker’s and the vehicle maker’s limit govern.',
]
