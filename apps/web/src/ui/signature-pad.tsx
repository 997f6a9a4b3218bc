import { useEffect, useId, useRef, useState } from 'react'
import Pad from 'signature_pad'
import { Button } from './button.tsx'
import { TextField } from './text-field.tsx'
import './signature-pad.css'

/** One stroke of the pen: points in CSS pixels from the pad's upper left, time in milliseconds since the epoch. */
export type Stroke = readonly { x: number; y: number; time: number }[]

export type Signature =
  | {
      form: 'drawn'
      strokes: readonly Stroke[]
      width: number
      height: number
      svg: string
      pngDataUrl: string
    }
  | { form: 'typed'; name: string }

type SignaturePadProps = {
  label: string
  /** `null` as long as nothing is drawn or typed. */
  onChange: (signature: Signature | null) => void
}

/** A signature drawn with finger, pen or mouse, or a name typed in its place; one is as good as the other. */
export function SignaturePad({ label, onChange }: SignaturePadProps) {
  const [form, setForm] = useState<Signature['form']>('drawn')
  const [name, setName] = useState('')
  const turn = (next: Signature['form']) => {
    setForm(next)
    setName('')
    onChange(null)
  }
  return (
    <div className="signature">
      {form === 'drawn' ? (
        <DrawnSignature label={label} onChange={onChange} />
      ) : (
        <TextField
          label={`${label}: your full name, typed`}
          autoComplete="name"
          value={name}
          onChange={(text) => {
            setName(text)
            onChange(text.trim() === '' ? null : { form: 'typed', name: text.trim() })
          }}
        />
      )}
      <Button onClick={() => turn(form === 'drawn' ? 'typed' : 'drawn')}>
        {form === 'drawn' ? 'Type your name instead' : 'Draw instead'}
      </Button>
    </div>
  )
}

function DrawnSignature({ label, onChange }: SignaturePadProps) {
  const canvas = useRef<HTMLCanvasElement>(null)
  const pad = useRef<Pad>(null)
  const report = useRef(onChange)
  report.current = onChange
  const hintId = useId()

  useEffect(() => {
    const surface = canvas.current
    if (surface === null) return
    // Dark ink whatever the look: what is drawn here is printed on paper.
    const signing = new Pad(surface, { penColor: '#000000', minWidth: 0.8, maxWidth: 2.6 })
    pad.current = signing
    const fit = () => {
      const strokes = signing.toData()
      const scale = Math.max(window.devicePixelRatio, 1)
      surface.width = surface.clientWidth * scale
      surface.height = surface.clientHeight * scale
      surface.getContext('2d')?.scale(scale, scale)
      signing.fromData(strokes)
    }
    fit()
    const resized = new ResizeObserver(fit)
    resized.observe(surface)
    const drawn = () => report.current(signatureOn(surface, signing))
    signing.addEventListener('endStroke', drawn)
    return () => {
      resized.disconnect()
      signing.removeEventListener('endStroke', drawn)
      signing.off()
    }
  }, [])

  return (
    <>
      <p id={hintId} className="field-label">
        {label}
      </p>
      <canvas ref={canvas} className="signature-surface" role="img" aria-labelledby={hintId} />
      <Button
        onClick={() => {
          pad.current?.clear()
          onChange(null)
        }}
      >
        Clear
      </Button>
    </>
  )
}

function signatureOn(surface: HTMLCanvasElement, pad: Pad): Signature | null {
  if (pad.isEmpty()) return null
  return {
    form: 'drawn',
    strokes: pad.toData().map((group) => group.points.map(({ x, y, time }) => ({ x, y, time }))),
    width: surface.clientWidth,
    height: surface.clientHeight,
    svg: pad.toSVG(),
    pngDataUrl: pad.toDataURL(),
  }
}
