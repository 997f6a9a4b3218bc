import { insecureWheels, wheelStatus } from '@bayledger/ledger/questions/gates'
import type { OrderState } from '@bayledger/ledger/state'
import { wheelNames } from '@bayledger/wording/en/wheels'

const words = {
  off: 'is OFF',
  untorqued: 'is on and NOT TORQUED',
  unchecked: 'is torqued and UNCHECKED',
} as const

/** A band across the whole screen while any wheel is not secured. */
export function LoudBand({ state }: { state: OrderState }) {
  const said = insecureWheels(state).map((wheel) => {
    const status = wheelStatus(state, wheel)
    return `${wheelNames[wheel]} ${status === 'off' || status === 'untorqued' || status === 'unchecked' ? words[status] : ''}`
  })
  if (said.length === 0) return null
  return (
    <p className="loud-band" role="status">
      {said.map((one) => `${one.charAt(0).toUpperCase()}${one.slice(1)}`).join(' · ')}
    </p>
  )
}
