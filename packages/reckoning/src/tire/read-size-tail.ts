import { type Reading, refused, taken } from '../reading.ts'
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
}

/** The part before it, as far as it decides how the rest is read. */
export type SizeHead =
  | { readonly kind: 'metric'; readonly prefix: SizePrefix | null; readonly zr: boolean }
  | { readonly kind: 'flotation' }

/**
 * Reads what follows the rim of a size: commercial or light-truck suffix, load mark before or after the load
 * index and speed symbol. C there means a load range after LT or ST, commercial where no letter precedes the
 * size.
 *
 * @limits load index 20 to 279, a second one at most as high; SL, XL and LL on passenger sizes, load range letters on
 * light-truck, trailer, commercial and flotation sizes; with ZR a speed symbol above V
 * @source common practice, no source; the letters' meaning after LT: an owner handbook (quoted)
 */
export const readSizeTail = (typed: string, rest: string, head: SizeHead): Reading<SizeTail, TailFault> => {
  const parts = tail(takesSuffix(head)).exec(rest)
  if (!parts)
    return refused('after-the-rim', {
      found: typed,
      allowed: 'after the rim only load index, speed symbol and load mark, as 91V XL or 120/116R E',
      do: 'Leave the rest out, and read load index and speed symbol again.',
    })
  const suffix = (parts.groups?.suffix ?? null) as SizeSuffix | null
  const before = parts.groups?.before
  const after = parts.groups?.after
  const loadMark = (before ?? after ?? null) as LoadMark | null
  if (before !== undefined && after !== undefined)
    return refused('load-mark', {
      found: `${typed}: ${before} and ${after}`,
      allowed: 'one load mark',
      do: 'Read which of them the sidewall carries.',
    })
  if (head.kind === 'flotation' && suffix !== 'LT')
    return refused('after-the-rim', {
      found: typed,
      allowed: 'LT after the rim of a size in inches, as 31x10.5R15LT',
      do: 'Check that the sidewall says LT, and enter it too.',
    })
  const allowed = allowedMarks(head, suffix)
  if (loadMark !== null && !allowed.includes(loadMark))
    return refused('load-mark', {
      found: `${typed}: ${loadMark}`,
      allowed: `${allowed.join(', ')} with this kind of size`,
      do: 'Read the letters before the size and the load mark again.',
    })
  if (parts.groups?.index === undefined) return taken({ suffix, loadMark, service: null })
  const service = readService(typed, parts.groups, head)
  return service.ok ? taken({ suffix, loadMark, service: service.value }) : service
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
    return refused('load-index', {
      found: `${typed}: ${index}${dual === undefined ? '' : `/${dual}`}`,
      allowed: 'a load index of 20 to 279, and a second one no higher than the first',
      do: 'Read the figures before the speed symbol again.',
    })
  const symbol = open === undefined && close === undefined ? speed : open && close ? `(${speed})` : undefined
  if (symbol === undefined || !isSpeedSymbol(symbol))
    return refused('speed-symbol', {
      found: `${typed}: ${open ?? ''}${speed}${close ?? ''}`,
      allowed: 'A1 to A8, B to H, J to N, P to W and Y; in brackets only Y, as (101Y)',
      do: 'Read the letter after the load index again.',
    })
  if (head.kind === 'metric' && head.zr && !isSlower('V', symbol))
    return refused('speed-symbol', {
      found: `${typed}: ZR with ${symbol}`,
      allowed: 'with ZR a speed symbol above 240 km/h: W, Y or (Y)',
      do: 'Read both again: one of them was misread.',
    })
  return taken({ loadIndex, dualLoadIndex, speed: symbol })
}

/** After LT, ST, P and T a C is a load mark; elsewhere it belongs to the size. */
const takesSuffix = (head: SizeHead): string =>
  head.kind === 'flotation' ? 'LT' : head.prefix === null ? 'LT|C' : nothing

/** Matches nowhere. */
const nothing = '(?!)'

const tail = (suffixes: string): RegExp =>
  new RegExp(
    `^(?: ?(?<suffix>${suffixes}))?(?:[ /]?(?<before>${marks}))?(?: ?(?<open>\\()?(?<index>\\d{2,3})(?: ?/ ?(?<dual>\\d{2,3}))? ?(?<speed>[A-Z]\\d?)(?<close>\\))?)?(?:[ /]?(?<after>${marks}))?$`,
  )

const passengerMarks = ['SL', 'XL', 'LL'] as const
const marks = [...passengerMarks, ...loadLetters].join('|')

const allowedMarks = (head: SizeHead, suffix: SizeSuffix | null): readonly LoadMark[] =>
  head.kind === 'flotation' || suffix !== null || head.prefix === 'LT' || head.prefix === 'ST'
    ? loadLetters
    : passengerMarks
