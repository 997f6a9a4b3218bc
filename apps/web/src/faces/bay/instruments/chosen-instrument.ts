import type { Instrument } from '@bayledger/contract/settings'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { instrumentsQuery } from '../../../features/settings/queries.ts'
import { deviceQuery } from '../session/device-query.ts'

type OfKind<K extends Instrument['kind']> = Extract<Instrument, { kind: K }>

export type InstrumentChoice<K extends Instrument['kind']> = {
  readonly chosen: OfKind<K> | null
  /** Those of this place. */
  readonly all: readonly OfKind<K>[]
  readonly choose: (instrument: OfKind<K> | null) => void
  readonly problem: unknown
}

const keptUnder = { gauge: 'bayledger.gauge', wrench: 'bayledger.wrench' } as const

/** The gauge or wrench in hand, kept on this tablet until another is taken. */
export const useInstrument = <K extends Instrument['kind']>(kind: K): InstrumentChoice<K> => {
  const register = useQuery(instrumentsQuery)
  const device = useQuery(deviceQuery)
  const [chosenId, setChosenId] = useState(() => localStorage.getItem(keptUnder[kind]))
  const here = device.data?.location.locationId
  const all = (register.data?.instruments ?? []).filter(
    (instrument): instrument is OfKind<K> => instrument.kind === kind && instrument.locationId === here,
  )
  return {
    all,
    chosen: all.find(({ instrumentId }) => instrumentId === chosenId) ?? null,
    choose: (instrument) => {
      if (instrument === null) localStorage.removeItem(keptUnder[kind])
      else localStorage.setItem(keptUnder[kind], instrument.instrumentId)
      setChosenId(instrument?.instrumentId ?? null)
    },
    problem: register.data === undefined ? register.error : null,
  }
}
