import type { Pressure } from '../quantity.ts'
import type { LoadClass } from '../sheet.ts'
import type { Mass } from '../units/mass-units.ts'
import { compareSizes, isAsNamed } from './compare-sizes.ts'
import { type DiameterChange, diameterChange } from './geometry.ts'
import { type LoadCheck, loadCheck } from './load-check.ts'
import { type ClassRefusal, classRefusal, isPassengerTire } from './load-class-change.ts'
import { readTireSize } from './read-tire-size.ts'
import type { TireSize } from './tire-size.ts'
import { type WarningMargin, warningMargin } from './warning-margin.ts'

export type ReplacementOf = {
  readonly vehicle: 'car' | 'truck-or-multipurpose'
  /** What the sheet names, as the label prints it, with its load index and speed symbol where it has them. */
  readonly sheet: { readonly size: string; readonly loadClass: LoadClass }
  /** What the new tire's sidewall prints. */
  readonly fitted: string
  /** Whether the vehicle maker's label names the new size and load index; `null`: not checked. */
  readonly newOnLabel: boolean | null
  readonly sidewallMaximum: Pressure | null
  readonly chosenPsi: number | null
  /** Read by a person in the load tables: the original at the label's pressure, the new one at the chosen pressure. */
  readonly tableLoads: { readonly original: Mass | null; readonly fitted: Mass | null }
  /** At what pressure the vehicle warns; `null`: not known, or it has no sensors. */
  readonly warnsAtPsi: number | null
}

/** What is said of a tire that is to take the place of the sheet's. */
export type ReplacementVerdict =
  | { readonly outcome: 'unreadable'; readonly which: 'sheet' | 'fitted' }
  | ({
      readonly outcome: 'as-sheet' | 'refused' | 'load-check'
      readonly classRefusal: ClassRefusal | null
      readonly load: LoadCheck
    } & Beside)

/** What changes beside the load; `null` where it is not known. */
type Beside = {
  readonly diameter: DiameterChange | null
  readonly warning: WarningMargin | null
}

/**
 * Whether a tire may take the place of the one that the sheet names, with every reason, and what else changes with it: the
 * diameter, and how much a tire loses before the vehicle warns. A tire of the size of the sheet, with its load index and speed
 * symbol or higher ones and of its class, is what the sheet names. For any other the load check decides, by table values that a
 * person enters. The vehicle maker's label comes first.
 *
 * @units psi, cold; kg or lb for one tire
 * @limits nothing here says whether a tire fits the wheel or clears the body
 * @source the same size, load index and speed symbol as the label: a tire maker's technical bulletin on replacement tires,
 * August 2006 (read); the rest as in `loadCheck`, `classRefusal`, `diameterChange` and `warningMargin`
 */
export const replacementVerdict = (of: ReplacementOf): ReplacementVerdict => {
  const [sheet, fitted] = [readTireSize(of.sheet.size), readTireSize(of.fitted)]
  if (!sheet.ok) return { outcome: 'unreadable', which: 'sheet' }
  if (!fitted.ok) return { outcome: 'unreadable', which: 'fitted' }
  const refusal = of.newOnLabel === true ? null : classRefusal(of.sheet.loadClass, fitted.value)
  const load = loadCheck({
    vehicle: of.vehicle,
    newOnLabel: of.newOnLabel,
    original: { ...checked(sheet.value), tableLoad: of.tableLoads.original },
    fitted: {
      ...checked(fitted.value),
      tableLoad: of.tableLoads.fitted,
      sidewallMaximum: of.sidewallMaximum,
    },
    chosen: of.chosenPsi === null ? null : { value: of.chosenPsi, unit: 'psi' },
  })
  const isCompared = sheet.value.service !== null && fitted.value.service !== null
  const isAsSheet = isCompared && isAsNamed(compareSizes(sheet.value, fitted.value))
  return {
    outcome:
      refusal !== null || load.outcome === 'refuses' ? 'refused' : isAsSheet ? 'as-sheet' : 'load-check',
    classRefusal: refusal,
    load,
    diameter:
      isMeasured(sheet.value) && isMeasured(fitted.value) ? diameterChange(sheet.value, fitted.value) : null,
    warning:
      of.chosenPsi === null || of.warnsAtPsi === null ? null : warningMargin(of.chosenPsi, of.warnsAtPsi),
  }
}

const checked = (size: TireSize) => ({
  passenger: isPassengerTire(size),
  loadIndex: size.service?.loadIndex ?? null,
  speed: size.service?.speed ?? null,
})

const isMeasured = (size: TireSize): size is Exclude<TireSize, { kind: 'heightless' }> =>
  size.kind !== 'heightless'
