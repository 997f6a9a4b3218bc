import type { Evidence } from '../../evidence/evidence-schema.ts'
import type { WheelPosition } from '../../wheels.ts'

export type Renaming = Readonly<Record<WheelPosition, WheelPosition>>

export const leftToRight: Renaming = { LF: 'RF', RF: 'LF', LR: 'RR', RR: 'LR', SP: 'SP' }
export const frontToRear: Renaming = { LF: 'LR', LR: 'LF', RF: 'RR', RR: 'RF', SP: 'SP' }

const renamed = <T>(byWheel: { readonly [P in WheelPosition]?: T } | null | undefined, names: Renaming) =>
  Object.fromEntries(
    Object.entries(byWheel ?? {}).map(([position, value]) => [names[position as WheelPosition], value]),
  )

const renamedField = (field: string, names: Renaming): string =>
  field
    .split('.')
    .map((name) => (name in names ? names[name as WheelPosition] : name))
    .join('.')

/** The same vehicle with its wheels, and all facts about them, exchanged. */
export const mirrored = (evidence: Evidence, names: Renaming): Evidence => {
  const rename = (wheel: WheelPosition | null | undefined) => (wheel ? names[wheel] : wheel)
  const { controlModule, history } = evidence
  return {
    ...evidence,
    wheels: renamed(evidence.wheels, names),
    ...(controlModule
      ? {
          controlModule: {
            ...controlModule,
            ...(controlModule.ids ? { ids: renamed(controlModule.ids, names) } : {}),
            codes: controlModule.codes?.map((code) => ({ ...code, wheel: rename(code.wheel) })),
          },
        }
      : {}),
    notPossible: evidence.notPossible?.map((noted) => ({
      ...noted,
      field: renamedField(noted.field, names),
    })),
    events: evidence.events?.map((event) => ({ ...event, wheel: rename(event.wheel) })),
    ...(history
      ? {
          history: {
            ...history,
            earlierReadings: history.earlierReadings?.map((one) => ({ ...one, wheel: names[one.wheel] })),
            ourWorkOn: history.ourWorkOn?.map((wheel) => names[wheel]),
            partsUnderWarranty: history.partsUnderWarranty?.map((wheel) => names[wheel]),
          },
        }
      : {}),
  }
}

/** The same evidence in kPa, °C and meters, converted exactly. */
export const metric = (evidence: Evidence): Evidence => {
  const kPa = (value: unknown) => (typeof value === 'number' ? value * 6.894757 : value)
  const celsius = (value: unknown) => (typeof value === 'number' ? (value - 32) / 1.8 : value)
  const meters = (value: unknown) => (typeof value === 'number' ? value * 0.3048 : value)
  const convert = (node: unknown, path: string): unknown => {
    if (Array.isArray(node)) return node.map((one) => convert(one, path))
    if (typeof node === 'object' && node !== null) {
      return Object.fromEntries(
        Object.entries(node).map(([name, value]) => [name, convert(value, `${path}.${name}`)]),
      )
    }
    if (/(gauge|sensorPressure|\.pressure|(placard|warnAt|sidewallMaximum)\.\w+)$/.test(path))
      return kPa(node)
    if (/(emperature|outdoor|overnightLow)$/.test(path)) return celsius(node)
    return /altitude$/.test(path) ? meters(node) : node
  }
  return {
    ...(convert({ ...evidence, units: null }, '') as Evidence),
    units: { pressure: 'kPa', temperature: 'C', altitude: 'm' },
  }
}
