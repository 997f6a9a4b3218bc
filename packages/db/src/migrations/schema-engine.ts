import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { bindMigrationAwareSqlAdapterFactory } from '@prisma/driver-adapter-utils'
import * as engine from '@prisma/schema-engine-wasm/schema_engine_bg'
import { Pool } from 'pg'
import { adapterThatKnowsOneByteChars } from './one-byte-chars.ts'
import { SCHEMA_FILE, SCHEMA_FOLDER } from './places.ts'

/** Where the engine leaves the words of a panic before it traps. */
const panic = { message: '', set_message: (message: string) => Object.assign(panic, { message }) }

let loading: Promise<void> | undefined

/**
 * Prisma's schema engine in WebAssembly, on the database at `url`: the same code as the binary that the CLI would
 * download. Runs `work` with it and closes the connections after.
 */
export async function withSchemaEngine<T>(
  url: string,
  work: (schemaEngine: engine.SchemaEngine) => Promise<T>,
): Promise<T> {
  loading ??= load()
  await loading
  const pool = new Pool({ connectionString: url, max: 2 })
  const adapter = bindMigrationAwareSqlAdapterFactory(adapterThatKnowsOneByteChars(pool))
  const schemaEngine = await engine.SchemaEngine.new({ datamodels: datamodels() }, () => undefined, adapter)
  try {
    return await work(schemaEngine)
  } catch (error) {
    if (panic.message === '') throw error
    throw new Error(`Prisma's schema engine broke down: ${panic.message}`, { cause: error })
  } finally {
    schemaEngine.free()
    await pool.end()
  }
}

/** SQL that turns an empty database into the schema's. */
export function diffFromNothing(schemaEngine: engine.SchemaEngine): Promise<string> {
  return diff(schemaEngine, { tag: 'empty' })
}

/** SQL that turns the database the engine is connected to into the schema's; empty text when it is already so. */
export function diffFromDatabase(schemaEngine: engine.SchemaEngine): Promise<string> {
  return diff(schemaEngine, { tag: 'schemaDatasource', configDir: SCHEMA_FOLDER, files: schemaFiles() })
}

async function diff(schemaEngine: engine.SchemaEngine, from: engine.DiffTarget): Promise<string> {
  const result = await schemaEngine.diff({
    from,
    to: { tag: 'schemaDatamodel', files: schemaFiles() },
    script: true,
    exitCode: true,
    filters: { externalTables: [], externalEnums: [] },
  })
  return result.exitCode === 0 ? '' : (result.stdout ?? '')
}

function schemaFiles(): { path: string; content: string }[] {
  return datamodels().map(([path, content]) => ({ path, content }))
}

function datamodels(): [string, string][] {
  return [[SCHEMA_FILE, readFileSync(SCHEMA_FILE, 'utf8')]]
}

async function load(): Promise<void> {
  Object.assign(globalThis, { PRISMA_WASM_PANIC_REGISTRY: panic })
  const glue = createRequire(import.meta.url).resolve('@prisma/schema-engine-wasm/schema_engine_bg')
  const bytes = readFileSync(glue.replace(/\.js$/, '.wasm'))
  const { instance } = await WebAssembly.instantiate(bytes, {
    './schema_engine_bg.js': engine as unknown as WebAssembly.ModuleImports,
  })
  engine.__wbg_set_wasm(instance.exports)
  const start = instance.exports.__wbindgen_start
  if (typeof start === 'function') start()
}
