import * as z from 'zod/mini'

/** Where what was read is kept: any values by name, as JSON holds them. */
export type ReadStore = {
  readonly load: () => Promise<ReadonlyMap<string, unknown>>
  readonly keep: (name: string, value: unknown) => Promise<void>
  readonly drop: (name: string) => Promise<void>
}

/** A reply of the server under the key that screens ask for it by, and when it came, in milliseconds since 1970. */
export type KeptRead = { readonly key: readonly unknown[]; readonly data: unknown; readonly readAt: number }

export type KeptReads = {
  /** What can still be read. What another program wrote in another shape is dropped. Rejects where the store cannot be read. */
  readonly load: () => Promise<readonly KeptRead[]>
  /** Keeps the newest reply of its key. It may be lost: the server has it. */
  readonly keep: (read: KeptRead) => void
  readonly drop: (key: readonly unknown[]) => void
  /** Resolves when the store has all that it was given. */
  readonly settled: () => Promise<void>
}

const Envelope = z.strictObject({
  key: z.array(z.unknown()),
  data: z.unknown(),
  readAt: z.number(),
  ledger: z.string(),
})

/**
 * The server's replies as this tablet keeps them. `schemaOf` gives what the data under a key must look like, or null for
 * what is not kept; `ledger` names the versions of the kinds of entry that this program folds.
 */
export const keepReads = (
  store: ReadStore,
  schemaOf: (key: readonly unknown[]) => z.ZodMiniType | null,
  ledger: string,
): KeptReads => {
  /** What is to be done for a name, the newest alone: `null` drops it. */
  const waiting = new Map<string, z.infer<typeof Envelope> | null>()
  let running: Promise<void> | null = null

  const run = async () => {
    for (const [name, envelope] of waiting) {
      waiting.delete(name)
      // A tablet without room opens later with what it has.
      await (envelope === null ? store.drop(name) : store.keep(name, envelope)).catch(() => undefined)
    }
    running = null
  }
  const put = (key: readonly unknown[], envelope: z.infer<typeof Envelope> | null) => {
    const name = JSON.stringify(key)
    // At the end of the map, so that a run that is under way comes to it.
    waiting.delete(name)
    waiting.set(name, envelope)
    running ??= Promise.resolve().then(run)
  }
  const readable = (value: unknown): KeptRead | null => {
    const envelope = z.safeParse(Envelope, value)
    if (!envelope.success || envelope.data.ledger !== ledger) return null
    const { key, data, readAt } = envelope.data
    const schema = schemaOf(key)
    return schema !== null && z.safeParse(schema, data).success ? { key, data, readAt } : null
  }

  return {
    load: async () => {
      const reads: KeptRead[] = []
      for (const [name, value] of await store.load()) {
        const read = readable(value)
        if (read === null) await store.drop(name)
        else reads.push(read)
      }
      return reads
    },
    keep: ({ key, data, readAt }) => {
      if (schemaOf(key) !== null) put(key, { key: [...key], data, readAt, ledger })
    },
    drop: (key) => {
      if (schemaOf(key) !== null) put(key, null)
    },
    settled: async () => {
      while (running !== null) await running
    },
  }
}
