import { type Reading, type Refusal, refused, taken } from '../reading.ts'
import { millimeters } from '../units/measured.ts'
import { readSizeTail, type SizeTail, type TailFault } from './read-size-tail.ts'
import type { Construction, FlotationTireSize, MetricTireSize, SizePrefix, TireSize } from './tire-size.ts'

export type TireSizeFault = 'not-a-size' | 'width' | 'aspect' | 'diameter' | 'rim' | TailFault

/**
 * Reads a tire size as printed on a sidewall or a label: "P215/65R15XL 95H", "LT235/85R16 120/116R E",
 * "275/40ZR19 (101Y)", "31x10.5R15 LT". Small letters, blanks between the parts and a comma for the point are taken;
 * anything else there is refused, not skipped.
 *
 * @units width in mm, aspect in percent, rim in inches; flotation sizes in inches
 * @limits Metric: width 105 to 395 mm, ending in 5; aspect 20 to 100, in fives or 78 or 82; rim 10 to 30 in. Flotation:
 * diameter 22 to 46 in, width 7 to 18 in, and the LT it always carries. Rims in whole inches or halves.
 * @source the order of the parts: an owner handbook's samples (quoted), and common practice, no source; the limits are
 * this program's own rule
 */
export const readTireSize = (typed: string): Reading<TireSize, TireSizeFault> => {
  const text = typed.trim().toUpperCase().replace(/\s+/g, ' ').replaceAll('×', 'X').replaceAll(',', '.')
  const metric = metricHead.exec(text)
  if (metric) return metricSize(typed, metric)
  const flotation = flotationHead.exec(text)
  if (flotation) return flotationSize(typed, flotation)
  return refused('not-a-size', {
    found: typed,
    allowed: 'a size as 205/55R16 91V, LT235/85R16 120/116R E or 31x10.5R15LT',
    do: 'Read it off the sidewall or the label again, and enter the size alone.',
  })
}

const metricHead = /^(P|LT|T|ST)? ?(\d{3}) ?\/ ?(\d{2,3}) ?(Z?)([RDB]) ?(\d\d(?:\.\d)?)(.*)$/
const flotationHead = /^(\d\d(?:\.\d{1,2})?) ?X ?(\d{1,2}(?:\.\d{1,2})?) ?([RDB]) ?(\d\d(?:\.\d)?)(.*)$/

const metricSize = (typed: string, parts: RegExpExecArray): Reading<MetricTireSize, TireSizeFault> => {
  const prefix = (parts[1] ?? null) as SizePrefix | null
  const [width, aspectPercent, rimInches] = [Number(parts[2]), Number(parts[3]), Number(parts[6])]
  const zr = parts[4] === 'Z'
  if (width < 105 || width > 395 || width % 10 !== 5)
    return refused('width', {
      found: `${typed}: width ${width}`,
      allowed: 'a width of 105 to 395 mm that ends in 5',
      do: readAgain,
    })
  if (
    aspectPercent < 20 ||
    aspectPercent > 100 ||
    (aspectPercent % 5 !== 0 && !oddAspects.includes(aspectPercent))
  )
    return refused('aspect', {
      found: `${typed}: aspect ${aspectPercent}`,
      allowed: 'an aspect of 20 to 100, in steps of five, or 78 or 82',
      do: readAgain,
    })
  if (!isRim(rimInches)) return noRim(typed, rimInches)
  const tail = readSizeTail(typed, parts[7] ?? '', { kind: 'metric', prefix, zr })
  if (!tail.ok) return tail
  const { suffix, loadMark, service } = tail.value
  return taken({
    kind: 'metric',
    prefix,
    suffix,
    width: millimeters(width),
    aspectPercent,
    zr,
    construction: parts[5] as Construction,
    rimInches,
    loadMark,
    service,
  })
}

const flotationSize = (typed: string, parts: RegExpExecArray): Reading<FlotationTireSize, TireSizeFault> => {
  const [diameterInches, widthInches, rimInches] = [Number(parts[1]), Number(parts[2]), Number(parts[4])]
  if (diameterInches < 22 || diameterInches > 46 || diameterInches <= rimInches)
    return refused('diameter', {
      found: `${typed}: diameter ${diameterInches}`,
      allowed: 'an overall diameter of 22 to 46 in, more than that of the rim',
      do: readAgain,
    })
  if (widthInches < 7 || widthInches > 18)
    return refused('width', {
      found: `${typed}: width ${widthInches}`,
      allowed: 'a width of 7 to 18 in',
      do: readAgain,
    })
  if (!isRim(rimInches)) return noRim(typed, rimInches)
  const tail: Reading<SizeTail, TailFault> = readSizeTail(typed, parts[5] ?? '', { kind: 'flotation' })
  if (!tail.ok) return tail
  const { loadMark, service } = tail.value
  return taken({
    kind: 'flotation',
    diameterInches,
    widthInches,
    construction: parts[3] as Construction,
    rimInches,
    loadMark,
    service,
  })
}

const oddAspects: readonly number[] = [78, 82]

const isRim = (inches: number): boolean => inches >= 10 && inches <= 30 && inches % 0.5 === 0

const noRim = (typed: string, inches: number): Refusal<'rim'> =>
  refused('rim', {
    found: `${typed}: rim ${inches}`,
    allowed: 'a rim of 10 to 30 in, whole or half',
    do: readAgain,
  })

const readAgain = 'Read it off the sidewall or the label again.'
