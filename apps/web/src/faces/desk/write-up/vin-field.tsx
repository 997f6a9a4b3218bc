import { useRef } from 'react'
import { ScanButton } from '../../../features/scanning/scan-button.tsx'
import { tellScan } from '../../../features/scanning/scan-notice.tsx'
import { type ScanTarget, scanFor } from '../../../features/scanning/scan-target.ts'
import { useScanTaker } from '../../../ui/scanner-keys.ts'
import { TextField } from '../../../ui/text-field.tsx'
import { vinHint } from './vin-hint.ts'

const target: ScanTarget = { wanted: 'vin', listedParts: [] }

/** The VIN: typed, by camera, or by a scanner that types, wherever the focus is. */
export function VinField({ vin, onChange }: { vin: string; onChange: (vin: string) => void }) {
  const field = useRef<HTMLInputElement>(null)
  const take = (text: string) => {
    const taken = scanFor(target, text)
    tellScan(taken.ok ? null : taken.says)
    if (taken.ok) onChange(taken.value)
  }
  useScanTaker({ fits: (text) => scanFor(target, text).ok, take, refuse: take })
  return (
    <div className="vin-field">
      <TextField ref={field} label="VIN" exact hint={vinHint(vin)} value={vin} onChange={onChange} />
      <ScanButton
        target={target}
        className="button button-plain"
        onScan={onChange}
        onTypeInstead={() => field.current?.focus()}
      />
    </div>
  )
}
