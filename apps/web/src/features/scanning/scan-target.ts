import { fitScan, type ScanWanted } from '@bayledger/reckoning/scan/fit-scan'
import { readScan } from '@bayledger/reckoning/scan/read-scan'
import { scanRefusal } from './scan-words.ts'

/** What a field takes from a scanner. */
export type ScanTarget = {
  readonly wanted: ScanWanted
  /** Part numbers of the shop's stock: none of them is taken for anything else. */
  readonly listedParts: readonly string[]
}

export type ScanTaken =
  | { readonly ok: true; readonly value: string }
  | { readonly ok: false; readonly says: string }

/** A scanned text as the value of a field, or what it is instead and what to do. */
export const scanFor = ({ wanted, listedParts }: ScanTarget, raw: string): ScanTaken => {
  const scan = readScan(raw, listedParts)
  const fit = fitScan(scan, wanted)
  return fit.ok ? fit : { ok: false, says: scanRefusal(fit.is, wanted, scan.text) }
}

/** That a text, typed or pasted where a sensor's ID belongs, is a VIN; `undefined` where it is none. */
export const mistakenVin = (target: ScanTarget | undefined, typed: string): string | undefined => {
  if (target?.wanted !== 'sensor-id') return undefined
  const scan = readScan(typed, target.listedParts)
  const fit = fitScan(scan, target.wanted)
  return !fit.ok && (fit.is.isA === 'vin' || fit.is.isA === 'misread-vin')
    ? scanRefusal(fit.is, target.wanted, scan.text)
    : undefined
}
