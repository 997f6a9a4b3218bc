import type { Entry } from '@bayledger/ledger/entry'
import type { SideKind } from '@bayledger/ledger/side-kinds'
import { sidesNamedIn } from '@bayledger/ledger/sides'
import type { Deps } from '../../../deps.ts'
import { listSides } from '../store/list-sides.ts'

/** The sides that these entries name, of the kinds that the reader may have; an erased one is missing. */
export const sidesOf = (deps: Deps, entries: readonly Entry[], given: ReadonlySet<SideKind>) =>
  listSides(
    deps.pool,
    deps.shopId,
    entries.flatMap(sidesNamedIn).filter(({ side }) => given.has(side)),
  )
