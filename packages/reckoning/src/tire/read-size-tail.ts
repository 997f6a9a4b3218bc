import { type Reading, refused, taken } from '../reading.ts'
import { tireSizeWords } from '../words/typed-tire.ts'
import { isSlower, isSpeedSymbol } from './speed-symbol.ts'
import {
  type LoadMark,
  loadLetters,
  type ServiceDescription,
  type SizePrefix,
  type SizeSuffix,
} from './tire-size.ts'

export type TailFault = 'after-the-rim' | 'load-mark' | 'load-index' | 'speed-symbol'

/** The part after the rim. */
export type SizeTail = {
  readonly suffix: SizeSuffix | null
  readonly loadMark: LoadMark | null
  readonly service: ServiceDescription | null
  readonly runFlat?: true
}

/** The part before it, as far as it decides how the rest is read. */
export type SizeHead =
  | { readonly kind: 'metric'; readonly prefix: SizePrefix | null; readonly zr: boolean }
  | { readonly kind: 'flotation' }
  | { readonly kind: 'heightless' }

/**
 * Reads what follows the rim of a size: commercial or light-truck suffix, load mark before or after the load
 * index and speed symbol. C there means a load range after LT or ST, commercial where no letter precedes the
 * size.
 *
 * @limits load index 20 to 279, a second one at most as high; SL, XL and LL on passenger sizes, load range letters on
 * light-truck, trailer, commercial and flotation sizes, none on HL sizes; with ZR a speed symbol above V; RFT last
 * @source common practice, no source; the letters' meaning after LT: an owner handbook (quoted)
 */
export const readSizeTail = (typed: string, rest: string, head: SizeHead): Reading<SizeTail, TailFault> => {
  const parts = tail(takesSuffix(head)).exec(rest)
  if (!parts) return refused('after-the-rim', typed, tireSizeWords.afterTheRim)
  const suffix = (parts.groups?.suffix ?? null) as SizeSuffix | null
  const before = parts.groups?.before
  const after = parts.groups?.after
  const loadMark = (before ?? after ?? null) as LoadMark | null
  if (before !== undefined && after !== undefined)
    return refused(
      'load-mark',
      `${typed}: ${tireSizeWords.part.marks(before, after)}`,
      tireSizeWords.oneLoadMark,
    )
  if (head.kind === 'flotation' && suffix !== 'LT')
    return refused('after-the-rim', typed, tireSizeWords.flotationSuffix)
  const allowed = allowedMarks(head, suffix)
  if (loadMark !== null && !allowed.includes(loadMark))
    return refused('load-mark', `${typed}: ${loadMark}`, tireSizeWords.loadMark(allowed))
  const runFlat = parts.groups?.runFlat === undefined ? {} : { runFlat: true as const }
  if (parts.groups?.index === undefined) return taken({ suffix, loadMark, service: null, ...runFlat })
  const service = readService(typed, parts.groups, head)
  return service.ok ? taken({ suffix, loadMark, service: service.value, ...runFlat }) : service
}

const readService = (
  typed: string,
  { open, index, dual, speed, close }: Readonly<Record<string, string | undefined>>,
  head: SizeHead,
): Reading<ServiceDescription, TailFault> => {
  const loadIndex = Number(index)
  const dualLoadIndex = dual === undefined ? null : Number(dual)
  if (
    loadIndex < 20 ||
    loadIndex > 279 ||
    (dualLoadIndex !== null && !(dualLoadIndex >= 20 && dualLoadIndex <= loadIndex))
  )
    return refused(
      'load-index',
      `${typed}: ${index}${dual === undefined ? '' : `/${dual}`}`,
      tireSizeWords.loadIndex,
    )
  const symbol = open === undefined && close === undefined ? speed : open && close ? `(${speed})` : undefined
  if (symbol === undefined || !isSpeedSymbol(symbol))
    return refused('speed-symbol', `${typed}: ${open ?? ''}${speed}${close ?? ''}`, tireSizeWords.speedSymbol)
  if (head.kind === 'metric' && head.zr && !isSlower('V', symbol))
    return refused(
      'speed-symbol',
      `${typed}: ${tireSizeWords.part.zrWith(symbol)}`,
      tireSizeWords.speedWithZr,
    )
  return taken({ loadIndex, dualLoadIndex, speed: symbol })
}

/** After LT, ST, P and T a C is a load mark; elsewhere it belongs to the size. */
const takesSuffix = (head: SizeHead): string =>
  head.kind === 'flotation' ? 'LT' : head.kind === 'heightless' || head.prefix === null ? 'LT|C' : nothing

/** Matches nowhere. */
const nothing = '(?!)'

const tail = (suffixes: string): RegExp =>
  new RegExp(
    `^(?: ?(?<suffix>${suffixes}))?(?:[ /]?(?<before>${marks}))?(?: ?(?<open>\\()?(?<index>\\d{2,3})(?: ?/ ?(?<dual>\\d{2,3}))? ?(?<speed>[A-Z]\\d?)(?<close>\\))?)?(?:[ /]?(?<after>${marks}))?(?: ?(?<runFlat>RFT))?$`,
  )

const passengerMarks = ['SL', 'XL', 'LL'] as const
const marks = [...passengerMarks, ...loadLetters].join('|')

const allowedMarks = (head: SizeHead, suffix: SizeSuffix | null): readonly LoadMark[] => {
  if (head.kind === 'flotation' || suffix !== null) return loadLetters
  const prefix = head.kind === 'metric' ? head.prefix : null
  if (prefix === 'HL') return []
  return prefix === 'LT' || prefix === 'ST' ? loadLetters : passengerMarks
}
