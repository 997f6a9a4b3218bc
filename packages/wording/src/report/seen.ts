import type { TireRecord, WheelWork } from '@bayledger/ledger/state'
import type {
  CodeClass,
  FastenerDamage,
  StemCondition,
  SurroundingsEvidence,
  TireDamage,
  ValveKind,
} from '@bayledger/reckoning/evidence/evidence-schema'
import type { FigureSource } from '@bayledger/reckoning/sheet'

type Inside = NonNullable<TireRecord['inside']>
type LeakPlace = NonNullable<NonNullable<WheelWork['leak']>['where']>

/** What was seen of a vehicle, by the code that was recorded. */
export type SeenWording = {
  readonly tires: Readonly<Record<NonNullable<SurroundingsEvidence['tires']>, string>>
  readonly valve: Readonly<Record<ValveKind, string>>
  readonly stem: Readonly<Record<StemCondition, string>>
  readonly tireDamage: Readonly<Record<TireDamage, string>>
  readonly fastenerDamage: Readonly<Record<FastenerDamage, string>>
  readonly inside: Readonly<Record<Inside, string>>
  readonly leak: Readonly<Record<LeakPlace, string>>
  readonly codes: Readonly<Record<CodeClass, string>>
  /** Where a figure of the sheet was read. */
  readonly sources: Readonly<Record<FigureSource['kind'], string>>
}
