import { useContext, useEffect, useId, useRef, useState } from 'react'
import Pad from 'signature_pad'
import { Button } from './button.tsx'
import { ControlsWords } from './controls-words.ts'
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
  const { signature: says } = useContext(ControlsWords)
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
          label={says.typed(label)}
          autoComplete="name"
          value={name}
          onChange={(text) => {
            setName(text)
            onChange(text.trim() === '' ? null : { form: 'typed', name: text.trim() })
          }}
        />
      )}
      <Button onClick={() => turn(form === 'drawn' ? 'typed' : 'drawn')}>
        {form === 'drawn' ? says.type : says.draw}
      </Button>
    </div>
  )
}

function DrawnSignature({ label, onChange }: SignaturePadProps) {
  const { signature: says } = useContext(ControlsWords)
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
        {says.clear}
      </Button>
    </>
  )
}

function signatureOn(surface: HTMLCanvasElement, pad: Pad): Signature | null {
  if (pad.isEmpty()) return null
  const strokes = pad.toData().map((group) => group.points.map(({ x, y, time }) => ({ x, y, time })))
  return {
    form: 'drawn',
    strokes,
    width: surface.clientWidth,
    height: surface.clientHeight,
    svg: drawing(strokes, surface.clientWidth, surface.clientHeight),
    pngDataUrl: pad.toDataURL(),
  }
}

/** One small SVG path, a tenth of a pixel fine: a long signature stays within a few kilobytes. */
function drawing(strokes: readonly Stroke[], width: number, height: number): string {
  const tenth = (length: number) => String(Math.round(length * 10) / 10)
  const path = strokes
    .map((stroke) => {
      const points = stroke.map(({ x, y }) => `${tenth(x)} ${tenth(y)}`)
      // A dot is a stroke of no length; drawn to itself, a round cap shows it.
      return `M${points.join('L')}${points.length === 1 ? `L${points[0]}` : ''}`
    })
    .join('')
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}">` +
    `<path d="${path}" fill="none" stroke="#000" stroke-width="2" stroke-linecap="round" stroke-linejoin="round"/></svg>`
  )
}
