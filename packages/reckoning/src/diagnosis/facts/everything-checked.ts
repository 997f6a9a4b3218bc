import type { Facts } from './facts.ts'
import type { WheelFacts } from './wheel-facts.ts'

/**
 * Whether light, gauges, sensors, stems and the control module were all looked at, or noted as not possible to
 * look at. Only then may a diagnosis say that nothing was found.
 */
export const everythingChecked = (facts: Facts): boolean => {
  const checked = (field: string, value: unknown): boolean =>
    (value !== null && value !== undefined) || facts.notPossible(field)
  return (
    checked('light.lampCheck', facts.lampCheck) &&
    facts.wheels.every((wheel) => wheelChecked(wheel, checked)) &&
    (!facts.sensing || controlModuleChecked(facts, checked))
  )
}

type Checked = (field: string, value: unknown) => boolean

const wheelChecked = (wheel: WheelFacts, checked: Checked): boolean => {
  const at = (name: string) => `wheels.${wheel.position}.${name}`
  const { given } = wheel
  const answer = given.answer === 'not-tried' && wheel.monitored ? null : given.answer
  const told = wheel.monitored || wheel.sensor.answered
  return (
    checked(at('gauge'), given.gauge) &&
    checked(at('stem'), given.stem) &&
    checked(at('answer'), answer) &&
    (!told ||
      given.answer !== 'answered' ||
      (checked(at('id'), given.id) && checked(at('battery'), given.battery))) &&
    (given.tireDamage ?? []).length === 0
  )
}

const controlModuleChecked = (facts: Facts, checked: Checked): boolean => {
  const module = facts.evidence.controlModule
  if (!checked('controlModule.state', module?.state)) return false
  if (module?.state !== 'read') return true
  return (
    checked('controlModule.codes', module.codes) &&
    (facts.notPossible('controlModule.ids') ||
      (checked('controlModule.notation', module.notation) &&
        facts.monitored.every((wheel) =>
          checked(`controlModule.ids.${wheel.position}`, facts.stored.keys[wheel.position]),
        )))
  )
}
