import type { RotationRefused } from '@bayledger/ledger/questions/rotating-tires'
import type { RotationRefusal } from '@bayledger/reckoning/rotation/rotation-refusals'
import { tireSizeText } from '@bayledger/reckoning/tire/tire-size'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { capitalized } from '../capitalized.ts'
import { wheelList } from '../wheels.ts'
import { patterns } from './rotation.ts'
import { wheels } from './wheels.ts'

type Of<Fault extends RotationRefusal['fault']> = Extract<RotationRefusal, { fault: Fault }>
type Refusals = readonly RotationRefusal[]

const ofFault = <Fault extends RotationRefusal['fault']>(refusals: Refusals, fault: Fault): Of<Fault>[] =>
  refusals.filter((refusal): refusal is Of<Fault> => refusal.fault === fault)

/** "The left front and left rear tires", "All four tires" */
const tires = (places: readonly WheelPosition[]): string => {
  const [only, ...others] = new Set(places)
  const named = wheelList(wheels, [...new Set(places)])
  const noun = only !== undefined && others.length === 0 ? 'tire' : 'tires'
  return named === wheels.allFour ? `${capitalized(named)} ${noun}` : `The ${named} ${noun}`
}

const arrows = (refusals: Refusals): string[] => {
  const found = ofFault(refusals, 'directional')
  if (found.length === 0) return []
  const isOne = found.length === 1
  const withSpare = found.some(({ from, to }) => from === 'SP' || to === 'SP')
  return [
    `${tires(found.map(({ from }) => from))} ${isOne ? 'has' : 'have'} an arrow: ${isOne ? 'it rolls one way only and stays on its side' : 'they roll one way only and stay on their side'} of the vehicle${withSpare ? ', out of the spare’s place' : ''}.`,
  ]
}

const temporary = (refusals: Refusals): string[] =>
  [...new Set(ofFault(refusals, 'temporary-spare').map(({ place }) => place))].map((place) =>
    place === 'SP'
      ? 'The spare is a temporary one and takes no part.'
      : `The ${wheels.names[place]} wheel is a temporary spare and takes no part.`,
  )

const unknown = (refusals: Refusals): string[] => {
  const found = ofFault(refusals, 'size-not-known').map(({ place }) => place)
  return found.length === 0
    ? []
    : [`Read the size on each tire: not known of ${wheelList(wheels, [...new Set(found)])}.`]
}

/** One sentence for all tires of a size that go where another was. */
const sizes = (refusals: Refusals): string[] => {
  const bySizes = new Map<string, (Of<'size-differs'> | Of<'load-lower'>)[]>()
  for (const refusal of [...ofFault(refusals, 'size-differs'), ...ofFault(refusals, 'load-lower')]) {
    const key = [refusal.fault, tireSizeText(refusal.goes), tireSizeText(refusal.stood)].join('|')
    bySizes.set(key, [...(bySizes.get(key) ?? []), refusal])
  }
  return [...bySizes.values()].flatMap((alike) => {
    const [first] = alike
    if (first === undefined) return []
    const [goes, stood] = [tireSizeText(first.goes), tireSizeText(first.stood)]
    const isOne = alike.length === 1
    const subject = `${tires(alike.map(({ from }) => from))} ${isOne ? 'is' : 'are'} ${goes}: ${isOne ? 'it' : 'they'}`
    return first.fault === 'size-differs'
      ? [`${subject} may not go where ${stood} was.`]
      : [`${subject} may not take the load of ${stood}, which was there.`]
  })
}

/** What the tires refuse, a sentence for each reason with its wheels. */
export const tiresRefuse = (refusals: Refusals): string =>
  [...arrows(refusals), ...temporary(refusals), ...sizes(refusals), ...unknown(refusals)].join(' ')

/** The patterns that are left, as the desk offers them. */
export const stillAllowed = (allowed: RotationRefused['allowed']): string =>
  allowed.length === 0
    ? 'No other pattern is allowed either: every wheel stays where it is.'
    : `Still allowed: ${allowed.map((pattern) => patterns[pattern]).join('; ')}.`
