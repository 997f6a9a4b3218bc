import type { Millimeters } from '../units/measured.ts'
import type { SpeedSymbol } from './speed-symbol.ts'

/** How the cords run: radial, diagonal (bias) or bias with a belt. */
export type Construction = 'R' | 'D' | 'B'

/** The letters before a size: P passenger, LT light truck, T temporary spare, ST trailer; none on most others. */
export type SizePrefix = 'P' | 'LT' | 'T' | 'ST'

/** After the rim: C commercial, LT light truck. */
export type SizeSuffix = 'C' | 'LT'

export const loadLetters = ['B', 'C', 'D', 'E', 'F', 'G', 'H', 'J', 'L', 'M', 'N'] as const

/** SL standard load (also where nothing is printed), XL extra load, LL light load; or a load range letter. */
export type LoadMark = 'SL' | 'XL' | 'LL' | (typeof loadLetters)[number]

/** Load index, a second one for a tire beside another on one axle end, and speed symbol. */
export type ServiceDescription = {
  readonly loadIndex: number
  readonly dualLoadIndex: number | null
  readonly speed: SpeedSymbol
}

type AnySize = {
  readonly construction: Construction
  readonly rimInches: number
  readonly loadMark: LoadMark | null
  readonly service: ServiceDescription | null
}

/** P215/65R15 95H XL: width in mm over its sidewall as a percentage of it. */
export type MetricTireSize = AnySize & {
  readonly kind: 'metric'
  readonly prefix: SizePrefix | null
  readonly suffix: SizeSuffix | null
  readonly width: Millimeters
  readonly aspectPercent: number
  /** Z before the construction: made for more than 240 km/h (149 mph). */
  readonly zr: boolean
}

/** 31x10.5R15LT: overall diameter and width in inches, light truck always. */
export type FlotationTireSize = AnySize & {
  readonly kind: 'flotation'
  readonly diameterInches: number
  readonly widthInches: number
}

export type TireSize = MetricTireSize | FlotationTireSize

/**
 * A size as this program writes it; `readTireSize` reads the same size from it again.
 *
 * @formula metric: [P|LT|T|ST] width/aspect [Z]R|D|B rim [C|LT] index[/index] speed mark; flotation: diameter x width
 * R|D|B rim LT index[/index] speed mark
 * @source the order of the parts as tires print it: an owner handbook's samples (quoted)
 */
export const tireSizeText = (size: TireSize): string =>
  [dimensions(size), ...(size.service === null ? [] : [serviceText(size.service)]), size.loadMark ?? []]
    .flat()
    .join(' ')

const dimensions = (size: TireSize): string =>
  size.kind === 'metric'
    ? `${size.prefix ?? ''}${size.width}/${size.aspectPercent}${size.zr ? 'Z' : ''}${size.construction}${size.rimInches}${size.suffix ?? ''}`
    : `${size.diameterInches}x${size.widthInches}${size.construction}${size.rimInches}LT`

const serviceText = ({ loadIndex, dualLoadIndex, speed }: ServiceDescription): string => {
  const indices = dualLoadIndex === null ? `${loadIndex}` : `${loadIndex}/${dualLoadIndex}`
  return speed === '(Y)' ? `(${indices}Y)` : `${indices}${speed}`
}
