import type { Millimeters } from '../units/measured.ts'
import type { SpeedSymbol } from './speed-symbol.ts'

/** How the cords run: radial, diagonal (bias) or bias with a belt. */
export type Construction = 'R' | 'D' | 'B'

/** The letters before a size: P passenger, HL high load, LT light truck, T temporary spare, ST trailer; none on most others. */
export type SizePrefix = 'P' | 'HL' | 'LT' | 'T' | 'ST'

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
  /** RFT at the end: made to be driven a short way without air. */
  readonly runFlat?: true
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

/** 185R14C or 7.50R16LT: a width in mm or inches, and no word of the height. */
export type HeightlessTireSize = AnySize & {
  readonly kind: 'heightless'
  readonly width: { readonly value: number; readonly unit: 'mm' | 'in' }
  readonly suffix: SizeSuffix | null
}

/** A size from which the tire's nominal diameter is known. */
export type MeasuredTireSize = MetricTireSize | FlotationTireSize

export type TireSize = MeasuredTireSize | HeightlessTireSize

/**
 * A size as this program writes it; `readTireSize` reads the same size from it again.
 *
 * @formula metric: [P|HL|LT|T|ST] width/aspect [Z]R|D|B rim [C|LT] index[/index] speed mark; flotation: diameter x width
 * R|D|B rim LT index[/index] speed mark; without a height: width R|D|B rim [C|LT] index[/index] speed mark; RFT last
 * @source the order of the parts as tires print it: an owner handbook's samples (quoted)
 */
export const tireSizeText = (size: TireSize): string =>
  [
    dimensionsText(size),
    ...(size.service === null ? [] : [serviceText(size.service)]),
    size.loadMark ?? [],
    size.runFlat ? 'RFT' : [],
  ]
    .flat()
    .join(' ')

/**
 * The part of a size that says what fits: width, height, construction, rim, and the letters that belong to them, without
 * load, speed, load mark and RFT.
 *
 * @source the order of the parts as tires print it: an owner handbook's samples (quoted)
 */
export const dimensionsText = (size: TireSize): string => {
  switch (size.kind) {
    case 'metric':
      return `${size.prefix ?? ''}${size.width}/${size.aspectPercent}${size.zr ? 'Z' : ''}${size.construction}${size.rimInches}${size.suffix ?? ''}`
    case 'flotation':
      return `${size.diameterInches}x${size.widthInches}${size.construction}${size.rimInches}LT`
    case 'heightless':
      return `${size.width.unit === 'mm' ? size.width.value : size.width.value.toFixed(2)}${size.construction}${size.rimInches}${size.suffix ?? ''}`
  }
}

const serviceText = ({ loadIndex, dualLoadIndex, speed }: ServiceDescription): string => {
  const indices = dualLoadIndex === null ? `${loadIndex}` : `${loadIndex}/${dualLoadIndex}`
  return speed === '(Y)' ? `(${indices}Y)` : `${indices}${speed}`
}
