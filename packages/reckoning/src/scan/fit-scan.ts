import type { Refusal } from '../reading.ts'
import type { VinFault } from '../vehicle/vin.ts'
import type { Scan } from './read-scan.ts'

/** What a field is for. `wheels`: the IDs or readings of several wheels in one text. */
export type ScanWanted = 'vin' | 'sensor-id' | 'part' | 'wheels'

/** What a scan is where something else belongs. */
export type NotWanted =
  | { readonly isA: 'vin' | 'sensor-id' | 'part' | 'wheels' | 'product-code' | 'unknown' }
  | { readonly isA: 'misread-vin'; readonly reading: Refusal<VinFault> }

export type ScanFit =
  | { readonly ok: true; readonly value: string }
  | { readonly ok: false; readonly is: NotWanted }

/**
 * Whether a scan is what a field is for. A part that the stock list knows is never taken for a sensor's ID, and what is
 * surely a sensor's ID never for a part.
 *
 * @source this program's own rule
 */
export const fitScan = (scan: Scan, wanted: ScanWanted): ScanFit => {
  const value = valueFor(scan, wanted)
  return value === null ? { ok: false, is: whatItIs(scan) } : { ok: true, value }
}

const valueFor = (scan: Scan, wanted: ScanWanted): string | null => {
  if (wanted === 'vin') return scan.vin
  if (wanted === 'wheels') return scan.isOfSeveralWheels ? scan.text : null
  if (scan.vin !== null || scan.misreadVin !== null) return null
  const [id, ...others] = scan.sensorIds
  if (wanted === 'sensor-id')
    return id !== undefined && others.length === 0 && scan.listedPart === null ? id : null
  return scan.listedPart ?? (scan.isSurelySensor ? null : scan.otherPart)
}

const whatItIs = (scan: Scan): NotWanted => {
  if (scan.vin !== null) return { isA: 'vin' }
  if (scan.misreadVin !== null) return { isA: 'misread-vin', reading: scan.misreadVin }
  if (scan.listedPart !== null) return { isA: 'part' }
  if (scan.isOfSeveralWheels) return { isA: 'wheels' }
  if (scan.sensorIds.length > 0) return { isA: 'sensor-id' }
  return { isA: scan.isProductCode ? 'product-code' : 'unknown' }
}
