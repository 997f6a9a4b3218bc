import type { EstimateLine } from '../estimate.ts'
import type { WheelPosition } from '../wheels.ts'
import { isAdded } from './added-bundles.ts'
import { extendedCents } from './cents.ts'
import {
  type Asked,
  type ComebackCause,
  type ComebackFacts,
  type Cover,
  judgeCover,
  type LineCover,
} from './line-cover.ts'
import type { OfferedBundle } from './offer.ts'

/** The facts of a comeback with its cause, once that is recorded. */
export type JudgedComeback = ComebackFacts & { readonly cause: ComebackCause }

/** What a person decided of one line against the terms, and why; the customer reads the reason. */
export type CoverDecision = {
  readonly bundleKey: string
  readonly lineKey: string
  readonly decided: 'covered' | 'charged'
  readonly why: string
}

type Judged = Pick<OfferedBundle, 'bundleKey' | 'works'> & { readonly lines: readonly EstimateLine[] }

/**
 * What the terms say of each line of a bundle that could be covered. A job that the customer asks for and a line by hand are no
 * remedy of a comeback and are not judged; neither is what costs nothing.
 *
 * @source The shop's own terms; the rule is this program's own.
 */
export const coversOf = (bundle: Judged, comeback: JudgedComeback): LineCover[] =>
  isAdded(bundle)
    ? []
    : bundle.lines.flatMap((line): LineCover[] => {
        const judged = judgeLine(line, bundle, comeback)
        return judged === null ? [] : [{ lineKey: line.lineKey, judged, decided: null }]
      })

/**
 * Whether the customer pays nothing for a line: what a person decided, else what the terms say.
 *
 * @source This program's own rule.
 */
export const isFree = ({ judged, decided }: LineCover): boolean => (decided ?? judged.is) === 'covered'

/**
 * A bundle of a comeback with its cover: what is covered costs nothing and keeps the price that it would have. A line for several
 * wheels becomes one for each wheel where the terms say different things of them.
 *
 * @units Cents.
 * @source The shop's own terms; the rule is this program's own.
 */
export const coverBundle = (
  bundle: OfferedBundle,
  comeback: JudgedComeback,
  decisions: readonly CoverDecision[] = [],
): OfferedBundle => {
  const lines = isAdded(bundle)
    ? bundle.lines
    : bundle.lines.flatMap((line) => splitByWheel(line, bundle, comeback))
  const decisionOn = (lineKey: string) =>
    decisions.find((one) => one.bundleKey === bundle.bundleKey && one.lineKey === lineKey)
  const covers = coversOf({ ...bundle, lines }, comeback).map((cover) => {
    const decided = decisionOn(cover.lineKey)?.decided ?? null
    return { ...cover, decided: decided === cover.judged.is ? null : decided }
  })
  if (covers.length === 0) return bundle
  return {
    ...bundle,
    covers,
    lines: lines.map((line) => {
      const cover = covers.find(({ lineKey }) => lineKey === line.lineKey)
      const why = cover?.decided == null ? null : (decisionOn(line.lineKey)?.why ?? null)
      return cover === undefined ? line : withCover(line, cover, why)
    }),
  }
}

const withCover = (line: EstimateLine, cover: LineCover, why: string | null): EstimateLine => {
  if (!isFree(cover)) return why === null ? line : { ...line, cover: { listCents: line.amountCents, why } }
  return { ...line, unitCents: 0, amountCents: 0, cover: { listCents: line.amountCents, why } }
}

/**
 * What a line would cost without its cover, cents.
 *
 * @units Cents.
 * @source This program's own rule.
 */
export const listCentsOf = ({ cover, amountCents }: EstimateLine): number => cover?.listCents ?? amountCents

const judgeLine = (line: EstimateLine, bundle: Judged, comeback: JudgedComeback): Cover | null => {
  const kind = kindOf(line)
  if (kind === null || listCentsOf(line) <= 0) return null
  if (kind === 'inspection') return inspectionCover(comeback)
  const { cause } = comeback
  // What has no wheel of its own is for the wheels of its bundle: one of them that is covered brings it along.
  const own = line.wheels.length > 0 ? line.wheels : wheelsIn(bundle)
  const covers = (own.length > 0 ? own : [null]).map((wheel) => judgeCover(comeback, cause, { kind, wheel }))
  const wanted = line.wheels.length > 0 ? covers.find(isNotCovered) : covers.find(isCovered)
  return wanted ?? covers[0] ?? null
}

const isCovered = ({ is }: Cover): boolean => is === 'covered'
const isNotCovered = ({ is }: Cover): boolean => is !== 'covered'

/** Whoever comes back because of our work or our part pays for no inspection; otherwise it is charged as agreed. */
const inspectionCover = (comeback: JudgedComeback): Cover | null => {
  const { cause } = comeback
  if (cause !== 'workmanship' && cause !== 'part-failed') return null
  const judged = judgeCover(comeback, cause, { kind: 'vehicle', wheel: null })
  return judged.is === 'covered' ? judged : null
}

const kindOf = ({ kind, code, wheels }: EstimateLine): Asked['kind'] | null => {
  switch (kind) {
    case 'look':
      return 'inspection'
    case 'labor':
      return wheels.length > 0 ? 'wheel' : 'vehicle'
    case 'part':
      return code === 'sensor' ? 'sensor' : code === 'tire' ? 'wear-part' : 'wheel'
    case 'kit':
      return 'wheel'
    case 'fee':
      return code === 'sensor-disposal' ? 'sensor' : code === 'tire-disposal' ? 'wear-part' : null
    default:
      return null
  }
}

const wheelsIn = ({ works }: Judged): WheelPosition[] => [
  ...new Set(works.flatMap((work) => ('wheel' in work ? [work.wheel] : []))),
]

/** A line for several wheels as one for each, where the terms do not say the same of all. */
const splitByWheel = (line: EstimateLine, bundle: Judged, comeback: JudgedComeback): EstimateLine[] => {
  const { wheels, quantityHundredths, unitCents } = line
  const share = quantityHundredths / wheels.length
  if (wheels.length < 2 || !Number.isInteger(share)) return [line]
  const each = wheels.map(
    (wheel): EstimateLine => ({
      ...line,
      lineKey: `${line.lineKey}.${wheel}`,
      wheels: [wheel],
      quantityHundredths: share,
      amountCents: extendedCents(share, unitCents),
    }),
  )
  const said = each.map((one) => JSON.stringify(judgeLine(one, bundle, comeback)))
  return new Set(said).size > 1 ? each : [line]
}
