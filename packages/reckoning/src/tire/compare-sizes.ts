import { isSlower } from './speed-symbol.ts'
import { dimensionsText, type TireSize } from './tire-size.ts'

/** In what a tire differs from the one that the sheet names. `null` members could not be compared: one side says nothing. */
export type SizeComparison = {
  /** Width, height, construction, rim, and the letters that belong to the size. */
  readonly isOtherSize: boolean
  /** Of the load index, in steps of the index: negative where the tire carries less than the sheet's. */
  readonly loadIndexApart: number | null
  readonly isSlower: boolean | null
}

/**
 * Compares the size on a tire with the one that the sheet names. It says what differs, and not whether the tire may stay: the
 * vehicle maker's label names the sizes that are right, and for another one the tire maker's load table decides
 * (`loadCheck`).
 *
 * @units load indices; the sizes as `tireSizeText` writes them
 * @limits a sheet that names no load index or speed symbol leaves these uncompared
 * @source a lower load index or speed symbol is refused by default: common practice, no source
 */
export const compareSizes = (bySheet: TireSize, onTire: TireSize): SizeComparison => {
  const [sheet, tire] = [bySheet.service, onTire.service]
  return {
    isOtherSize: sizeAlone(bySheet) !== sizeAlone(onTire),
    loadIndexApart: sheet && tire ? tire.loadIndex - sheet.loadIndex : null,
    isSlower: sheet && tire ? isSlower(tire.speed, sheet.speed) : null,
  }
}

/**
 * Whether nothing that could be compared differs. A higher load index or a faster speed symbol is no difference.
 *
 * @source this program's own rule
 */
export const isAsNamed = ({ isOtherSize, loadIndexApart, isSlower }: SizeComparison): boolean =>
  !isOtherSize && (loadIndexApart ?? 0) >= 0 && isSlower !== true

/** ZR says a speed: it makes no other size. */
const sizeAlone = (size: TireSize): string =>
  dimensionsText(size.kind === 'metric' ? { ...size, zr: false } : size)
