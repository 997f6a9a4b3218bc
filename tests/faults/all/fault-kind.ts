import type { Random } from '../../../packages/reckoning/src/diagnosis/physics/random.test-support.ts'
import type { Judged } from './judge.ts'
import type { ShopFolder } from './shop-folder.ts'

/** A way in which things go wrong, done again and again to a shop that works. */
export type FaultKind = {
  readonly name: string
  /** How many rounds a whole run has. */
  readonly rounds: number
  readonly open: (from: ShopFolder) => Promise<Stage>
}

/** A running shop on a copy of the folder, to which one kind of fault is done. */
export type Stage = {
  /** One round; gives the seconds from the end of the fault until the service was ready again, where it was not in between. */
  readonly round: (random: Random) => Promise<number | null>
  /** What became of everything that was acknowledged in all rounds. */
  readonly judge: () => Promise<Judged>
  readonly close: () => Promise<void>
}
