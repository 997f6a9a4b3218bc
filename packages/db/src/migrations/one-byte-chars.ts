import { PrismaPg } from '@prisma/adapter-pg'
import { ColumnTypeEnum, type SqlMigrationAwareDriverAdapterFactory } from '@prisma/driver-adapter-utils'
import type { Pool } from 'pg'

/** PostgreSQL's one-byte type "char", in which its own catalogs keep kinds of things, and its array type. */
const OID_OF_CHAR = 18
const OID_OF_CHAR_ARRAY = 1002

type Field = { dataTypeID: number }
type Query = (...parameters: unknown[]) => Promise<{ fields: Field[] }>

/**
 * The schema engine reads catalogs with columns of type "char", and wants them as single characters; the adapter
 * (7.10.1) refuses that type, though it knows its array. So the column is passed through it as the array type,
 * which no catalog query of the engine returns, and comes out as a character.
 */
export function adapterThatKnowsOneByteChars(pool: Pool): SqlMigrationAwareDriverAdapterFactory {
  const query = pool.query.bind(pool) as unknown as Query
  const passAsArray: Query = async (...parameters) => {
    const result = await query(...parameters)
    for (const field of result.fields) {
      if (field.dataTypeID === OID_OF_CHAR) field.dataTypeID = OID_OF_CHAR_ARRAY
    }
    return result
  }
  Object.assign(pool, { query: passAsArray })

  const factory: SqlMigrationAwareDriverAdapterFactory = new PrismaPg(pool)
  const plainConnect = factory.connect.bind(factory)
  const connect = async () => {
    const adapter = await plainConnect()
    const queryRaw = adapter.queryRaw.bind(adapter)
    adapter.queryRaw = async (request) => {
      const result = await queryRaw(request)
      const columnTypes = result.columnTypes.map((type) =>
        type === ColumnTypeEnum.CharacterArray ? ColumnTypeEnum.Character : type,
      )
      return { ...result, columnTypes }
    }
    return adapter
  }
  return Object.assign(factory, { connect })
}
