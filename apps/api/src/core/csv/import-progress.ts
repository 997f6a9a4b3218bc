import type { CsvProgress } from '@bayledger/contract/csv'
import type { Deps } from '../../deps.ts'

/** Says how far an import has come. */
export type TellProgress = (progress: CsvProgress) => void

type Of = Pick<Deps, 'pool' | 'shopId'>

/** How far each import of this process has come, while it runs. */
const running = new WeakMap<object, Map<string, CsvProgress>>()

const nameOf = (shopId: string, watch: string): string => `${shopId} ${watch}`

/** Runs an import that whoever called it may watch under an id of their own; without one, nobody watches. */
export const watched = async <Result>(
  { pool, shopId }: Of,
  watch: string | undefined,
  run: (tell: TellProgress) => Promise<Result>,
): Promise<Result> => {
  if (watch === undefined) return run(() => undefined)
  const imports = running.get(pool) ?? new Map<string, CsvProgress>()
  running.set(pool, imports)
  const name = nameOf(shopId, watch)
  try {
    return await run((progress) => imports.set(name, progress))
  } finally {
    imports.delete(name)
  }
}

/** How far an import has come; `null`: it has not begun, it is over, or another process works on it. */
export const progressOf = ({ pool, shopId }: Of, watch: string): CsvProgress | null =>
  running.get(pool)?.get(nameOf(shopId, watch)) ?? null
