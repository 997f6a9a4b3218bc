import type { SearchHit } from '@bayledger/contract/search'
import { presentMove } from '../../core/present-move.ts'
import { movesAt } from '../entries/service/moves-at.ts'
import type { FoundRow } from './store.ts'

/** A hit with the sentence of its open order, as of now. */
export const presentHit = ({ agenda, isOpen, ...row }: FoundRow, now: string): SearchHit => ({
  ...row,
  isOpen: isOpen === true,
  waitsFor:
    isOpen === true && agenda !== null ? (movesAt(agenda, now).map(presentMove)[0]?.words ?? null) : null,
})
