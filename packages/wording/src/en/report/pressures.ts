import type { TemperatureQuality } from '@bayledger/reckoning/sheet'
import type { ReportPressuresWording } from '../../report/pressures.ts'
import { listed } from './listed.ts'
import { sourceWords } from './source-words.ts'

const quality: Readonly<Record<TemperatureQuality, string>> = {
  measured: 'measured',
  estimated: 'estimated',
  assumed: 'assumed',
}

/** Tires that are alike to a tenth are named together. */
const nearest = (wheels: readonly string[], all: number): string =>
  wheels.length === all && all > 1
    ? `All ${all} road tires are alike, each`
    : `Nearest to the warning light ${wheels.length > 1 ? 'are' : 'is'} the ${listed(wheels)},`

export const reportPressures: ReportPressuresWording = {
  title: 'Pressures',
  noneSet: 'No pressure was set on this order.',
  labelFrom: (source) => `Source of the label’s figures: ${sourceWords(source)}.`,
  howDerived:
    'The target is the label’s figure carried from the outdoor temperature to the tire’s own (gas law at the shop’s altitude), rounded to a tenth, never below the label nor over the limit. The vehicle maker’s label governs.',
  set: {
    caption: 'Set',
    columns: {
      wheel: 'Wheel',
      label: 'Label',
      outdoors: 'Outdoors',
      tire: 'Tire',
      computed: 'Computed',
      target: 'Target',
      asLeft: 'As left',
      onceCold: 'Once cold',
      gauge: 'Gauge and when',
    },
  },
  asTheLabel: 'as the label',
  atItsLimit: (pressure) => `${pressure}, at its limit; set again cold`,
  coldNotKnown: 'not known',
  tireAir: ({ air, quality: how, asOthers }) =>
    air === null ? quality[how] : `${air} ${asOthers ? 'as the other tires' : quality[how]}`,
  gaugeCorrected: (code, offset) =>
    `Gauge ${code}: reads ${offset} psi against the master gauge; figures here are gauge-corrected pressures.`,
  gauge: (code, correction) =>
    `Gauge ${code}: reads ${correction} psi against the master gauge; figures here are as read.`,
  margin: {
    nearest: ({ wheels, all, psi, byMaker }) =>
      `${nearest(wheels, all)} once cold, as left, ${psi} psi over ${byMaker ? 'the maker’s warning point' : 'the warning point of the rule; the maker’s own may lie higher'}.`,
    coldLightsIt: (fahrenheit) => `With no leak, cold alone would light it at about ${fahrenheit} °F.`,
    noColdLightsIt: (fahrenheit) => `With no leak, no cold down to ${fahrenheit} °F would light it.`,
  },
}
