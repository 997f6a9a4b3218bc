import type { VehiclePage } from '@bayledger/contract/vehicle-page'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { type Clock, clockTime, day } from '../../../lib/format.ts'
import { type ComparedReading, chartScale, chartSize, compared } from './chart-scale.ts'

type RoadWheel = Exclude<WheelPosition, 'SP'>

const roadWheels = readingOrder.filter((wheel): wheel is RoadWheel => wheel !== 'SP')

/** Each wheel has a dash of its own: one ink, readable on paper. */
const dashes: Readonly<Record<RoadWheel, string | undefined>> = {
  LF: undefined,
  RF: '8 4',
  RR: '2 3',
  LR: '10 3 2 3',
}

type ChartProps = Pick<VehiclePage, 'readings' | 'warnAt' | 'asOf'> & { readonly clock: Clock }

/** Pressures of the tires on the road over time, each as the same air shows it at 68 °F, with the point at which the light comes on. */
export function PressureChart({ readings, warnAt, asOf, clock }: ChartProps) {
  const shown = compared(readings)
  const scale = chartScale(shown, warnAt)
  const [from, to] = endWords(shown[0]?.at ?? asOf, shown.at(-1)?.at ?? asOf, asOf, clock)
  return (
    <figure className="pressure-chart">
      {scale === null ? (
        <p className="quiet">
          No pressure can be compared yet: the temperature of the air in the tires was not recorded.
        </p>
      ) : (
        <svg viewBox={`0 0 ${chartSize.width} ${chartSize.height}`} aria-hidden="true">
          {scale.rules.map((psi) => (
            <g key={psi}>
              <line
                x1={chartSize.left}
                x2={chartSize.width - chartSize.right}
                y1={scale.y(psi)}
                y2={scale.y(psi)}
                className="chart-rule"
              />
              <text x={chartSize.left - 6} y={scale.y(psi) + 4} className="chart-words chart-words-end">
                {psi}
              </text>
            </g>
          ))}
          {warningLines(warnAt).map(({ psi, words }) => (
            <g key={words}>
              <line
                x1={chartSize.left}
                x2={chartSize.width - chartSize.right}
                y1={scale.y(psi)}
                y2={scale.y(psi)}
                className="chart-warning"
              />
              <text x={chartSize.width - chartSize.right + 6} y={scale.y(psi) + 4} className="chart-words">
                {words}
              </text>
            </g>
          ))}
          {roadWheels.map((wheel) => (
            <WheelLine key={wheel} wheel={wheel} readings={shown} scale={scale} />
          ))}
          <text x={chartSize.left} y={chartSize.height - 6} className="chart-words">
            {from}
          </text>
          <text
            x={chartSize.width - chartSize.right}
            y={chartSize.height - 6}
            className="chart-words chart-words-end"
          >
            {to}
          </text>
        </svg>
      )}
      {scale === null ? null : (
        <figcaption className="row">
          {roadWheels.map((wheel) => (
            <span key={wheel}>
              <svg viewBox="0 0 40 10" className="chart-key" aria-hidden="true">
                <line x1="0" x2="40" y1="5" y2="5" strokeDasharray={dashes[wheel]} className="chart-line" />
              </svg>{' '}
              {wheelNames[wheel]}
            </span>
          ))}
          <span>psi at 68 °F</span>
        </figcaption>
      )}
      <details>
        <summary>Every reading</summary>
        <table className="readings-table">
          <thead>
            <tr>
              <th scope="col">Day</th>
              <th scope="col">Order</th>
              <th scope="col">Wheel</th>
              <th scope="col">By gauge, psi</th>
              <th scope="col">At 68 °F, psi</th>
            </tr>
          </thead>
          <tbody>
            {readings.map(({ number, wheel, when, at, psi, comparedPsi }) => (
              <tr key={`${number} ${wheel} ${when}`}>
                <td>{day(at, asOf, clock)}</td>
                <td>
                  {number}, as {when}
                </td>
                <td>{wheelNames[wheel]}</td>
                <td className="amount">{psi.toFixed(1)}</td>
                <td className="amount">{comparedPsi === null ? 'not known' : comparedPsi.toFixed(1)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </figure>
  )
}

/** The days at both ends; within one day its times. */
const endWords = (first: string, last: string, now: string, clock: Clock): readonly [string, string] => {
  const from = day(first, now, clock)
  const to = day(last, now, clock)
  if (from !== to) return [from, to]
  return [`${from}, ${clockTime(first, clock)}`, first === last ? '' : clockTime(last, clock)]
}

const warningLines = (warnAt: VehiclePage['warnAt']) => {
  if (warnAt === null) return []
  const words = (psi: number, where: string) => ({ psi, words: `light on ${where}: ${psi.toFixed(1)}` })
  return warnAt.front === warnAt.rear
    ? [{ psi: warnAt.front, words: `light on at ${warnAt.front.toFixed(1)} psi` }]
    : [words(warnAt.front, 'front'), words(warnAt.rear, 'rear')]
}

type WheelLineProps = {
  readonly wheel: RoadWheel
  readonly readings: readonly ComparedReading[]
  readonly scale: NonNullable<ReturnType<typeof chartScale>>
}

function WheelLine({ wheel, readings, scale }: WheelLineProps) {
  const points = readings
    .filter((reading) => reading.wheel === wheel)
    .map(({ at, comparedPsi }) => ({ x: scale.x(at), y: scale.y(comparedPsi) }))
  return (
    <g>
      <polyline
        points={points.map(({ x, y }) => `${x},${y}`).join(' ')}
        strokeDasharray={dashes[wheel]}
        className="chart-line"
      />
      {points.map(({ x, y }) => (
        <circle key={`${x} ${y}`} cx={x} cy={y} r="3" className="chart-point" />
      ))}
    </g>
  )
}
