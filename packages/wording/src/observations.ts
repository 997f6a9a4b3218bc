import type {
  Casing,
  CodeClass,
  ControlModuleEvidence,
  FastenerDamage,
  InsideTire,
  LightBehavior,
  LightEvidence,
  PuncturePlace,
  StemCondition,
  SurroundingsEvidence,
  TireDamage,
  ValveKind,
  VehicleEvidence,
  WheelEvidence,
} from '@bayledger/reckoning/evidence/evidence-schema'

/** Every code that an observation may have, of any field of the evidence. */
export type ObservedCode =
  | NonNullable<VehicleEvidence['system' | 'spare' | 'sensorMounting']>
  | Casing
  | LightBehavior
  | NonNullable<LightEvidence['lampCheck']>
  | NonNullable<WheelEvidence['mounted' | 'answer' | 'battery']>
  | ValveKind
  | StemCondition
  | TireDamage
  | PuncturePlace
  | InsideTire
  | FastenerDamage
  | CodeClass
  | NonNullable<ControlModuleEvidence['state' | 'notation']>
  | NonNullable<SurroundingsEvidence['tires']>

/** What was observed, by its code. */
export type ObservationsWording = Readonly<Record<ObservedCode, string>>

/** An observation in words. What is no code, such as a load class or what somebody wrote, is shown as it is. */
export const observedWords = (words: ObservationsWording, observed: string): string =>
  Object.hasOwn(words, observed) ? words[observed as ObservedCode] : observed
