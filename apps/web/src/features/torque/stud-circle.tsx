import './stud-circle.css'

type StudCircleProps = {
  count: number
  /** Stud numbers in the order of tightening; 1 is nearest the valve, counted clockwise. */
  order: readonly number[]
  moved: readonly number[]
  /** "nut" or "bolt". */
  fastener: string
  /** Absent: nothing is tapped in this round. */
  onTap?: ((stud: number) => void) | undefined
}

const size = 340
const middle = size / 2

/** A wheel's studs seen from outside, valve on top; the large number in each is its turn in the star sequence. */
export function StudCircle({ count, order, moved, fastener, onTap }: StudCircleProps) {
  const studs = Array.from({ length: count }, (_, index) => index + 1)
  const places = new Map(studs.map((stud) => [stud, placeOf(stud, count)]))
  const path = order.map((stud) => {
    const { x, y } = places.get(stud) ?? { x: middle, y: middle }
    return `${x},${y}`
  })
  return (
    <div className={count > 6 ? 'studs studs-many' : 'studs'}>
      <svg viewBox={`0 0 ${size} ${size}`} className="studs-svg" aria-hidden="true">
        <circle cx={middle} cy={middle} r={middle - 4} className="studs-rim" />
        <line x1={middle} y1={2} x2={middle} y2={24} className="studs-valve" />
        <polyline points={path.join(' ')} className="studs-star" />
      </svg>
      {studs.map((stud) => {
        const { x, y } = places.get(stud) ?? { x: middle, y: middle }
        const turn = order.indexOf(stud) + 1
        const hasMoved = moved.includes(stud)
        const style = { left: `${(100 * x) / size}%`, top: `${(100 * y) / size}%` }
        const face = (
          <>
            <span className="stud-turn">{turn}</span>
            <span className="stud-name">
              {fastener} {stud}
            </span>
            {hasMoved ? <span className="stud-name">moved</span> : null}
          </>
        )
        return onTap === undefined ? (
          <span key={stud} className="stud" style={style}>
            {face}
          </span>
        ) : (
          <button
            key={stud}
            type="button"
            className="stud"
            style={style}
            aria-pressed={hasMoved}
            aria-label={`${turn} ${fastener} ${stud} moved`}
            onClick={() => onTap(stud)}
          >
            {face}
          </button>
        )
      })}
    </div>
  )
}

function placeOf(stud: number, count: number): { x: number; y: number } {
  // Half a step off the valve, as the studs of most wheels sit: stud 1 is the first clockwise from it.
  const angle = ((stud - 0.5) / count) * 2 * Math.PI
  const radius = count > 6 ? 126 : 112
  return { x: middle + radius * Math.sin(angle), y: middle - radius * Math.cos(angle) }
}
