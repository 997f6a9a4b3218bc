import { InstrumentContent } from '@bayledger/contract/instruments'
import type { Instrument, Prisma, PrismaClient } from '@bayledger/db/generated/client'
import * as z from 'zod/mini'
import { GaugeBody, WrenchBody } from '../../core/instrument-body.ts'
import type { Kept, RecordStore } from '../../core/record-versions.ts'

const given = z.optional(z.nullable(z.string()))
/** Their whole bodies: calibration and what was set aside may be missing in what was entered before this register was edited. */
const WholeWrench = z.extend(WrenchBody, {
  accuracyPercent: z.optional(z.nullable(z.number())),
  calibratedOn: given,
  certificate: given,
  why: given,
})
const WholeGauge = z.extend(GaugeBody, { checkedOn: given, why: given })

export type KeptInstrument = Kept<InstrumentContent> & { readonly cycles: number }

const day = (date: Date | null): string | null => date?.toISOString().slice(0, 10) ?? null

const keptOf = (row: Instrument): Kept<InstrumentContent> => ({
  id: row.id,
  version: row.version,
  content: InstrumentContent.parse({
    code: row.code,
    locationId: row.locationId,
    quarantined: row.quarantined,
    dueOn: day(row.dueOn),
    ...(row.kind === 'gauge' ? gaugeOf(row.body) : wrenchOf(row.body)),
  }),
})

const wrenchOf = (body: unknown) => {
  const { rangeLow, rangeHigh, rangeUnit, accuracyPercent, calibratedOn, certificate, why } =
    WholeWrench.parse(body)
  return {
    kind: 'wrench',
    rangeLow,
    rangeHigh,
    rangeUnit,
    accuracyPercent: accuracyPercent ?? null,
    calibratedOn: calibratedOn ?? null,
    certificate: certificate ?? null,
    why: why ?? null,
  }
}

const gaugeOf = (body: unknown) => {
  const { correctionPsi, checkedOn, why } = WholeGauge.parse(body)
  return { kind: 'gauge', offsetPsi: correctionPsi, checkedOn: checkedOn ?? null, why: why ?? null }
}

/** An instrument as a row; what the kind alone has is its body. */
const columnsOf = ({ code, locationId, quarantined, dueOn, ...content }: InstrumentContent) => ({
  code,
  locationId,
  quarantined,
  dueOn: dueOn === null ? null : new Date(`${dueOn}T00:00:00Z`),
  kind: content.kind,
  body:
    content.kind === 'gauge'
      ? { correctionPsi: content.offsetPsi, checkedOn: content.checkedOn, why: content.why }
      : {
          rangeLow: content.rangeLow,
          rangeHigh: content.rangeHigh,
          rangeUnit: content.rangeUnit,
          accuracyPercent: content.accuracyPercent,
          calibratedOn: content.calibratedOn,
          certificate: content.certificate,
          why: content.why,
        },
})

export type Reader = Pick<Prisma.TransactionClient, 'instrument' | 'location'>

/** The id of each place by its name. */
export const listPlaceNames = async (prisma: Reader, shopId: string): Promise<Map<string, string>> =>
  new Map((await prisma.location.findMany({ where: { shopId } })).map(({ id, name }) => [name, id]))

const withCycles = (row: Instrument): KeptInstrument => ({ ...keptOf(row), cycles: row.cycles })

export const listInstruments = async (prisma: Reader, shopId: string): Promise<KeptInstrument[]> =>
  (
    await prisma.instrument.findMany({
      where: { shopId, kind: { in: ['wrench', 'gauge'] } },
      orderBy: { code: 'asc' },
    })
  ).map(withCycles)

export const findInstrument = async (
  prisma: Reader,
  shopId: string,
  id: string,
): Promise<KeptInstrument | null> => {
  const row = await prisma.instrument.findUnique({ where: { shopId_id: { shopId, id } } })
  return row === null || row.kind === 'reader' ? null : withCycles(row)
}

/** Whose code this is already; `null`: nobody's. */
export const idOfCode = async (prisma: Reader, shopId: string, code: string): Promise<string | null> =>
  (await prisma.instrument.findUnique({ where: { shopId_code: { shopId, code } } }))?.id ?? null

export const isPlace = async (
  prisma: Pick<PrismaClient, 'location'>,
  shopId: string,
  id: string,
): Promise<boolean> => (await prisma.location.count({ where: { shopId, id } })) > 0

export const instrumentRecords: RecordStore<InstrumentContent> = {
  subject: 'instrument',
  lock: async (tx, shopId, id) => {
    await tx.$queryRaw`select 1 from instruments where shop_id = ${shopId}::uuid and id = ${id}::uuid for update`
    const found = await findInstrument(tx, shopId, id)
    return found && { id: found.id, version: found.version, content: found.content }
  },
  insert: async (tx, shopId, { id, version, content }) => {
    await tx.instrument.create({ data: { shopId, id, version, ...columnsOf(content) } })
  },
  update: async (tx, shopId, { id, version, content }) => {
    const where = { shopId_id: { shopId, id } }
    const before = await tx.instrument.findUniqueOrThrow({ where })
    await tx.instrument.update({ where, data: { version, ...columnsOf(content) } })
    if (
      content.kind === 'wrench' &&
      content.calibratedOn !== null &&
      content.calibratedOn !== calibratedOnOf(before)
    )
      await countAgain(tx, shopId, id, content.calibratedOn)
  },
}

const calibratedOnOf = ({ body }: Instrument): string | null => WholeWrench.parse(body).calibratedOn ?? null

/** A calibrated wrench counts anew: the clicks of the day of its calibration and of those since, as the ledger has them. */
const countAgain = async (
  tx: Prisma.TransactionClient,
  shopId: string,
  id: string,
  calibratedOn: string,
): Promise<void> => {
  await tx.$executeRaw`
    update instruments i set cycles = coalesce((
      select sum(c.clicks)::int from wrench_cycles c
      join entries e on e.shop_id = c.shop_id and e.id = c.entry_id
      where c.shop_id = i.shop_id and c.instrument_id = i.id and e.written_at >= ${calibratedOn}::date), 0)
    where i.shop_id = ${shopId}::uuid and i.id = ${id}::uuid`
}
