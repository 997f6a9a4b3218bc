import './figure.css'

type FigureProps = {
  /** The figure as displayed, decimals included; `null`: not measured. */
  value: string | number | null
  unit: string
  /** `plain` in running text, `large` in a list read from afar, `step` for the one figure of a step. */
  size?: 'plain' | 'large' | 'step'
  /** Shown in place of a figure that was not measured. */
  absent?: string
}

/** A figure with its unit, always; an absent figure is shown in words, never as zero or a dash. */
export function Figure({ value, unit, size = 'plain', absent = 'not checked' }: FigureProps) {
  if (value === null) return <span className="figure-absent">{absent}</span>
  return (
    <span className={`figure figure-${size}`}>
      <span className="figure-value">
        {typeof value === 'number' ? String(value).replace('-', '−') : value}
      </span>
      <span className="figure-unit">
        {'\u00a0'}
        {unit}
      </span>
    </span>
  )
}
