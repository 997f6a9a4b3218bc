import type { InstrumentContent, InstrumentFacts } from '@bayledger/contract/instruments'
import type { Kept } from '../../core/record-versions.ts'
import type { KeptInstrument } from './store.ts'

/** An instrument as its page reads it: what is edited, and the clicks that the ledger counts. */
export const presentInstrument = ({
  cycles,
  ...record
}: KeptInstrument): { record: Kept<InstrumentContent>; facts: InstrumentFacts } => ({
  record,
  facts: { cycles: record.content.kind === 'wrench' ? cycles : null },
})
