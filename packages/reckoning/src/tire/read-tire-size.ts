import { type Reading, type Refusal, refused, taken } from '../reading.ts'
import { millimeters } from '../units/measured.ts'
import { tireSizeWords } from '../words/typed-tire.ts'
import { readSizeTail, type SizeTail, type TailFault } from './read-size-tail.ts'
import type {
  Construction,
  FlotationTireSize,
  HeightlessTireSize,
  MetricTireSize,
  SizePrefix,
  TireSize,
} from './tire-size.ts'

export type TireSizeFault = 'not-a-size' | 'width' | 'aspect' | 'diameter' | 'rim' | TailFault

/**
 * Reads a tire size as printed on a sidewall or a label: "P215/65R15XL 95H", "LT235/85R16 120/116R E",
 * "275/40ZR19 (101Y)", "HL275/35R21 103Y", "185R14C", "7.50R16LT", "31x10.5R15 LT", with RFT last or without. Small letters, blanks between the parts and a comma for the point are taken;
 * anything else there is refused, not skipped.
 *
 * @units width in mm, aspect in percent, rim in inches; flotation sizes in inches
 * @limits Metric: width 105 to 395 mm, ending in 5; aspect 20 to 100, in fives or 78 or 82; rim 10 to 30 in. Flotation:
 * diameter 22 to 46 in, width 7 to 18 in, and the LT it always carries. Without a height: a metric width, or 4.50 to 13
 * in with LT or C. Rims in whole inches or halves.
 * @source the order of the parts: an owner handbook's samples (quoted), and common practice, no source; the limits are
 * this program's own rule
 */
export const readTireSize = (typed: string): Reading<TireSize, TireSizeFault> => {
  const text = typed.trim().toUpperCase().replace(/\s+/g, ' ').replaceAll('×', 'X').replaceAll(',', '.')
  const metric = metricHead.exec(text)
  if (metric) return metricSize(typed, metric)
  const flotation = flotationHead.exec(text)
  if (flotation) return flotationSize(typed, flotation)
  const heightless = heightlessHead.exec(text)
  if (heightless) return heightlessSize(typed, heightless)
  return refused('not-a-size', typed, tireSizeWords.notASize)
}

const metricHead = /^(P|HL|LT|T|ST)? ?(\d{3}) ?\/ ?(\d{2,3}) ?(Z?)([RDB]) ?(\d\d(?:\.\d)?)(.*)$/
const flotationHead = /^(\d\d(?:\.\d{1,2})?) ?X ?(\d{1,2}(?:\.\d{1,2})?) ?([RDB]) ?(\d\d(?:\.\d)?)(.*)$/

/** In inches the letters after the rim must be there, or it would be the width of any rim. */
const heightlessHead = /^(?:(\d{3})|(\d{1,2}\.\d\d)(?=.*(?:LT|C))) ?([RDB]) ?(\d\d(?:\.\d)?)(.*)$/

const metricSize = (typed: string, parts: RegExpExecArray): Reading<MetricTireSize, TireSizeFault> => {
  const prefix = (parts[1] ?? null) as SizePrefix | null
  const [width, aspectPercent, rimInches] = [Number(parts[2]), Number(parts[3]), Number(parts[6])]
  const zr = parts[4] === 'Z'
  if (!isMetricWidth(width))
    return refused('width', `${typed}: ${tireSizeWords.part.width(width)}`, tireSizeWords.metricWidth)
  if (
    aspectPercent < 20 ||
    aspectPercent > 100 ||
    (aspectPercent % 5 !== 0 && !oddAspects.includes(aspectPercent))
  )
    return refused('aspect', `${typed}: ${tireSizeWords.part.aspect(aspectPercent)}`, tireSizeWords.aspect)
  if (!isRim(rimInches)) return noRim(typed, rimInches)
  const tail = readSizeTail(typed, parts[7] ?? '', { kind: 'metric', prefix, zr })
  if (!tail.ok) return tail
  return taken({
    kind: 'metric',
    prefix,
    ...tail.value,
    width: millimeters(width),
    aspectPercent,
    zr,
    construction: parts[5] as Construction,
    rimInches,
  })
}

const flotationSize = (typed: string, parts: RegExpExecArray): Reading<FlotationTireSize, TireSizeFault> => {
  const [diameterInches, widthInches, rimInches] = [Number(parts[1]), Number(parts[2]), Number(parts[4])]
  if (diameterInches < 22 || diameterInches > 46 || diameterInches <= rimInches)
    return refused(
      'diameter',
      `${typed}: ${tireSizeWords.part.diameter(diameterInches)}`,
      tireSizeWords.diameter,
    )
  if (widthInches < 7 || widthInches > 18)
    return refused(
      'width',
      `${typed}: ${tireSizeWords.part.width(widthInches)}`,
      tireSizeWords.flotationWidth,
    )
  if (!isRim(rimInches)) return noRim(typed, rimInches)
  const tail: Reading<SizeTail, TailFault> = readSizeTail(typed, parts[5] ?? '', { kind: 'flotation' })
  if (!tail.ok) return tail
  const { suffix: _, ...rest } = tail.value
  return taken({
    kind: 'flotation',
    diameterInches,
    widthInches,
    construction: parts[3] as Construction,
    rimInches,
    ...rest,
  })
}

/** The diameter of such a tire is not known from its size. */
const heightlessSize = (
  typed: string,
  parts: RegExpExecArray,
): Reading<HeightlessTireSize, TireSizeFault> => {
  const width =
    parts[1] === undefined
      ? ({ value: Number(parts[2]), unit: 'in' } as const)
      : ({ value: Number(parts[1]), unit: 'mm' } as const)
  const rimInches = Number(parts[4])
  if (width.unit === 'mm' && !isMetricWidth(width.value))
    return refused('width', `${typed}: ${tireSizeWords.part.width(width.value)}`, tireSizeWords.metricWidth)
  if (width.unit === 'in' && (width.value < 4.5 || width.value > 13))
    return refused(
      'width',
      `${typed}: ${tireSizeWords.part.width(width.value)}`,
      tireSizeWords.heightlessInches,
    )
  if (!isRim(rimInches)) return noRim(typed, rimInches)
  const tail = readSizeTail(typed, parts[5] ?? '', { kind: 'heightless' })
  if (!tail.ok) return tail
  return taken({
    kind: 'heightless',
    width,
    construction: parts[3] as Construction,
    rimInches,
    ...tail.value,
  })
}

const isMetricWidth = (width: number): boolean => width >= 105 && width <= 395 && width % 10 === 5

const oddAspects: readonly number[] = [78, 82]

const isRim = (inches: number): boolean => inches >= 10 && inches <= 30 && inches % 0.5 === 0

const noRim = (typed: string, inches: number): Refusal<'rim'> =>
  refused('rim', `${typed}: ${tireSizeWords.part.rim(inches)}`, tireSizeWords.rim)
