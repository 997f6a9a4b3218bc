/** The rooms of reckoning that hold computations, in the order of the page, and what each is about. */
export const computationRooms: Readonly<Record<string, string>> = {
  units:
    'Factors are exact, by definition. An entered figure keeps its unit; a derived one never takes its place. The functions of `units/measured.ts`, which only name the unit of a number, are not listed.',
  pressure:
    'The vehicle maker’s figures govern: the label’s pressures, and the maker’s own warning point where it is known.',
  tire: 'The vehicle maker’s label and the tire maker’s load table govern which tire may be fitted and at what pressure.',
  wheel: 'The vehicle maker’s and the wheel maker’s figures govern which wheel may be fitted.',
  vehicle: 'What a VIN says by itself. Outside North America its check digit is advice.',
  sensor: 'The vehicle maker’s and the sensor maker’s figures govern which part fits.',
  scan: 'A scan only fills a field in; a person sees it before it is recorded.',
  torque:
    'The vehicle maker’s figure and sequence govern. Nothing here is a source of a torque: plausibility only warns.',
  relearn: 'The vehicle maker’s procedure governs, as the specification sheet has it.',
  rotation:
    'The vehicle maker’s pattern governs; direction and size on the sidewall forbid what they forbid.',
  money:
    'Whole cents, added and multiplied by a library made for money. Nothing here is legal or tax advice.',
  ready:
    'When a vehicle will be ready: an estimate from what the shop has taken for such steps before, and no promise by itself.',
  'job-plan':
    'The steps for what the customer authorized. The vehicle maker’s procedure and figures govern each.',
}
