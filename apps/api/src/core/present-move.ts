import type { Move as SentMove } from '@bayledger/contract/orders'
import type { Move } from '@bayledger/ledger/questions/move'
import { english } from '@bayledger/wording/en/english'
import { moveWords } from '@bayledger/wording/moves'

/** A move as a screen shows it: its words are made here, from its code and values. */
export const presentMove = (move: Move): SentMove => ({ ...move, words: moveWords(english.moves, move) })
