import { planCells, type Rectangle } from '@bayledger/reckoning/plan-drawing/plan-geometry'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { screens } from '@bayledger/wording/en/screens'
import type { PlanLine, PlanMark, PlanWheel } from './plan-wheel.ts'

/** The content of one cell: its position, its figure with unit, and up to two lines of words. */
export function PlanCellFace({ position, wheel }: { position: WheelPosition; wheel: PlanWheel }) {
  if (wheel.state === 'off') return <OffRing position={position} wheel={wheel} />
  const atWork = wheel.state === 'current'
  const box = atWork ? planCells[position].boxAtWork : planCells[position].box
  const figure = wheel.lines.find((line) => line.isFigure)
  const words = wheel.lines.filter((line) => line !== figure)
  const middle = box.x + box.width / 2
  const bottom = box.y + box.height
  const onBar = wheel.mark?.shape === 'bar' ? ' plan-on-bar' : ''
  return (
    <g>
      <rect {...box} className={`plan-cell${atWork ? ' plan-cell-current' : ''}${markClass(wheel)}`} />
      {wheel.mark === undefined ? null : <Mark box={box} mark={wheel.mark} />}
      <text x={box.x + 9} y={box.y + 25} className={`plan-position${onBar}`}>
        {position}
      </text>
      {figure === undefined ? (
        words.slice(0, 2).map((line, at) => (
          <text key={line.text} x={middle} y={box.y + box.height * 0.6 + at * 22} className="plan-words">
            <Words line={line} />
          </text>
        ))
      ) : (
        <>
          <text
            x={middle}
            y={bottom - (words.length > 0 ? 34 : 22)}
            className={`plan-figure${atWork ? ' plan-figure-current' : ''}${isLong(figure) ? ' plan-figure-long' : ''}`}
          >
            {figure.text}
            {figure.unit === undefined ? null : (
              <tspan dx="4" className="plan-unit">
                {figure.unit}
              </tspan>
            )}
          </text>
          {words[0] === undefined ? null : (
            <text x={middle} y={bottom - 11} className="plan-words">
              <Words line={words[0]} />
            </text>
          )}
          {words[1] === undefined || wheel.mark ? null : (
            <text x={box.x + box.width - 9} y={box.y + 24} className="plan-words plan-words-end">
              <Words line={words[1]} />
            </text>
          )}
        </>
      )}
    </g>
  )
}

/** Wider than a cell in the size of a pressure: "433.92 MHz", "126 months". */
const isLong = ({ text, unit = '' }: PlanLine): boolean => text.length > 4 || unit.length > 3

const markClass = ({ mark }: PlanWheel): string =>
  mark === undefined ? '' : mark.shape === 'dashed' ? ' plan-cell-dashed' : ' plan-cell-marked'

/** A finding's own shape on the wheel that it concerns, and its word. */
function Mark({ box, mark: { shape, word } }: { box: Rectangle; mark: PlanMark }) {
  const rule = shape === 'thick' ? 8 : 3
  return (
    <>
      {shape === 'bar' ? <rect {...box} height={34} className="plan-mark" /> : null}
      {shape === 'thick' || shape === 'thin' ? (
        <rect x={box.x - rule} y={box.y} width={rule} height={box.height} className="plan-mark" />
      ) : null}
      <text
        x={box.x + box.width - 9}
        y={box.y + 24}
        className={`plan-words plan-words-end plan-mark-word${shape === 'bar' ? ' plan-on-bar' : ''}`}
      >
        {word}
      </text>
    </>
  )
}

function OffRing({ position, wheel }: { position: WheelPosition; wheel: PlanWheel }) {
  const { center, radius, stroke } = planCells[position].ring
  const line = wheel.lines[0]
  return (
    <g>
      <circle cx={center.x} cy={center.y} r={radius} strokeWidth={stroke} className="plan-ring" />
      <text x={center.x} y={center.y - 26} className="plan-position plan-words-middle">
        {position}
      </text>
      <text x={center.x} y={center.y + 6} className="plan-off">
        {wheel.ringWord ?? screens.wheelOff.ring}
      </text>
      <text x={center.x} y={center.y + 28} className="plan-words">
        {line === undefined ? screens.wheelOff.why : <Words line={line} />}
      </text>
    </g>
  )
}

function Words({ line }: { line: PlanLine }) {
  return (
    <>
      {line.text}
      {line.unit === undefined ? null : <tspan className="plan-words-unit">{`\u00a0${line.unit}`}</tspan>}
    </>
  )
}
