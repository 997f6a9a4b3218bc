import { pressureIn } from '@bayledger/reckoning/units/pressure-units'
import { wheelNames } from '@bayledger/reckoning/wheels'
import type { arrivalKinds } from '../kinds/arrival.ts'
import type { openingKinds } from '../kinds/opening.ts'
import type { Rules } from './rule.ts'
import { refuse } from './verdict.ts'

/** Beyond this no road tire of the shop's vehicles is filled, so a gauge cannot have shown it (common practice, no source). */
export const highestGaugePsi = 150

export const arrivalRules: Rules<keyof typeof arrivalKinds | keyof typeof openingKinds> = {
  'wheel.checked': [
    (_state, { payload }) => {
      if (!payload.gauge) return null
      const psi = pressureIn('psi', payload.gauge.pressure)
      return psi >= 0 && psi <= highestGaugePsi
        ? null
        : refuse(
            'READING_IMPOSSIBLE',
            `${payload.gauge.pressure.value} ${payload.gauge.pressure.unit} cannot be a tire's pressure. Gauge the ${wheelNames[payload.wheel]} tire again and type what the gauge shows (0 to ${highestGaugePsi} psi).`,
          )
    },
    (_state, { payload }, facts) =>
      payload.gauge && !facts.gauges.has(payload.gauge.instrument.instrumentId)
        ? refuse(
            'GAUGE_UNKNOWN',
            `The gauge ${payload.gauge.instrument.code} is not in the shop's register or is quarantined. Take another gauge and read again.`,
          )
        : null,
    (state) =>
      state.authority.look
        ? null
        : refuse(
            'AUTHORITY_MISSING',
            'The customer has not agreed to a look yet. Record the consent at the desk first.',
          ),
  ],
  'order.opened': [
    (_state, _draft, facts) =>
      facts.roles.some((role) => role !== 'technician')
        ? null
        : refuse(
            'ENTRY_KIND_NOT_ALLOWED',
            'Orders are opened at the desk by an advisor, lead, manager or the owner.',
          ),
  ],
}
