import { codesByGroup, type FindingCode } from '../finding-codes.ts'

/** As-received facts with legal weight, listed before what is judged from them. */
const asReceived = ['telltale-dark', 'no-sensor-on-arrival'] as const satisfies readonly FindingCode[]

/** Safety, what to check first, as-received facts, kind of system, pressure, sensors, identity, vehicle, place, history, advice. */
export const precedence: readonly FindingCode[] = [
  ...new Set<FindingCode>([
    ...codesByGroup.stop,
    ...codesByGroup.ask,
    ...asReceived,
    ...codesByGroup.system,
    ...codesByGroup.pressure,
    ...codesByGroup.sensor,
    ...codesByGroup.identity,
    ...codesByGroup.vehicle,
    ...codesByGroup.surroundings,
    ...codesByGroup.history,
    ...codesByGroup.advice,
  ]),
]

const ranks = new Map(precedence.map((code, index) => [code, index]))

export const rankOf = (code: FindingCode): number => ranks.get(code) ?? precedence.length
