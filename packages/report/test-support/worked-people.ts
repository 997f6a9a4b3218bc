import type { Written } from '@bayledger/ledger/state'

export const advisor = '019bb200-0000-7000-8000-00000000000a'
export const technician = '019bb200-0000-7000-8000-00000000000b'
export const lead = '019bb200-0000-7000-8000-00000000000c'

export const digest = (letter: string): string => letter.repeat(64)

/** Who put a fact into the ledger, and at which entry. */
export const written = (seq: number, staffId = technician): Written => ({
  entryId: `019bb200-0000-7000-8000-${String(seq).padStart(12, '0')}`,
  seq,
  by: { kind: 'staff', staffId },
  deviceId: null,
  writtenAt: `2026-01-12T15:${String(seq).padStart(2, '0')}:00.000Z`,
  receivedAt: `2026-01-12T15:${String(seq).padStart(2, '0')}:01.000Z`,
})
