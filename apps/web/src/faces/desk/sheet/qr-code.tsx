import { create } from 'qrcode'
import './qr-code.css'

/** A QR code (ISO/IEC 18004) as one path, with the quiet zone of four modules that readers need. */
export function QrCode({ text, label }: { text: string; label: string }) {
  const { size, data } = create(text, { errorCorrectionLevel: 'M' }).modules
  const path = Array.from(data, (dark, index) =>
    dark ? `M${(index % size) + 4} ${Math.floor(index / size) + 4}h1v1h-1z` : '',
  ).join('')
  return (
    <svg viewBox={`0 0 ${size + 8} ${size + 8}`} className="qr-code" role="img" aria-label={label}>
      <rect width={size + 8} height={size + 8} fill="#fff" />
      <path d={path} fill="#000" />
    </svg>
  )
}
