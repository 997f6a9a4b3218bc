import './figure.css'

type FigureProps = {
  /** As it is to be read, decimals included; `null` is a figure that nobody took. */
  value: string | number | null
  unit: string
  /** `plain` in running text, `large` in a list read from afar, `step` for the one figure of a step. */
  size?: 'plain' | 'large' | 'step'
  /** What stands in place of a figure that nobody took. */
  absent?: string
}

/** A figure and its unit, which is never missing; an absent figure is said in words, never as zero or a dash. */
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
