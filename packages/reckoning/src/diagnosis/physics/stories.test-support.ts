/** What is the matter with a vehicle, in plain words and in what makes it so. A story without a word of a thing has none of it. */
export type Story = {
  readonly name: string
  /** A light truck on LT tires; else a passenger car. */
  readonly truck?: true
  readonly arrival?: 'driven' | 'indoor-warmed'
  /** Much colder than when the pressures were set. */
  readonly cold?: true
  /** The ordinary loss of many months. */
  readonly seepage?: true
  /** All four let down far, below half. */
  readonly farDown?: true
  /** Set on a mountain, now in the valley. */
  readonly descent?: true
  /** At home on a mountain, with sensors that take the air at the sea for the air there. */
  readonly mountain?: true
  /** How many tires leak; `axle`: both of one axle. */
  readonly leaking?: 1 | 2 | 'axle'
  readonly dead?: true
  readonly dragging?: true
  /** How many tires somebody filled far over the label. */
  readonly overfilled?: 2 | 3 | 4
  /** Somebody remembers how warm it was when the tires were set; else that is as it comes. */
  readonly lastSetKnown?: true
  /** Whether the light must be on or off; else it is as it comes. */
  readonly light?: 'on' | 'off'
}

/** One thing wrong, or two. */
export const plainStories: readonly Story[] = [
  { name: 'nothing wrong', light: 'off' },
  { name: 'nothing wrong, driven', arrival: 'driven', light: 'off' },
  { name: 'nothing wrong, warm bay', arrival: 'indoor-warmed', light: 'off' },
  { name: 'leak', leaking: 1, light: 'on' },
  { name: 'leak, light not on yet', leaking: 1, light: 'off' },
  { name: 'leak, driven', arrival: 'driven', leaking: 1, light: 'on' },
  { name: 'leak, warm bay', arrival: 'indoor-warmed', leaking: 1, light: 'on' },
  { name: 'cold', cold: true, light: 'on' },
  { name: 'cold, light off', cold: true, light: 'off' },
  { name: 'cold, driven', arrival: 'driven', cold: true, light: 'on' },
  { name: 'cold, warm bay', arrival: 'indoor-warmed', cold: true, light: 'on' },
  { name: 'seepage', seepage: true, light: 'on' },
  { name: 'seepage, light off', seepage: true, light: 'off' },
  { name: 'came down in altitude', descent: true, light: 'off' },
  { name: 'mountain, sensors of the sea', mountain: true, light: 'off' },
  { name: 'dead sensor', dead: true },
  { name: 'dragging brake', arrival: 'driven', dragging: true, light: 'off' },
  { name: 'leak and cold', leaking: 1, cold: true, light: 'on' },
  { name: 'leak and cold, warm bay', arrival: 'indoor-warmed', leaking: 1, cold: true, light: 'on' },
  { name: 'leak and dead sensor', leaking: 1, dead: true },
  { name: 'leak and dragging brake', arrival: 'driven', leaking: 1, dragging: true, light: 'on' },
  { name: 'leak and seepage', leaking: 1, seepage: true, light: 'on' },
  { name: 'cold and dead sensor', cold: true, dead: true },
  { name: 'dragging brake and dead sensor', arrival: 'driven', dragging: true, dead: true },
]

/** Light trucks, descents, two leaks, overfilled tires. */
export const harderStories: readonly Story[] = [
  { name: 'truck, nothing wrong', truck: true, light: 'off' },
  { name: 'truck, leak', truck: true, leaking: 1, light: 'on' },
  { name: 'truck, leak, driven', truck: true, arrival: 'driven', leaking: 1, light: 'on' },
  { name: 'truck, cold', truck: true, cold: true },
  { name: 'truck, cold, warm bay', truck: true, arrival: 'indoor-warmed', cold: true },
  { name: 'truck, leak and cold', truck: true, leaking: 1, cold: true, light: 'on' },
  { name: 'truck, dead sensor', truck: true, dead: true },
  { name: 'truck, dragging brake', truck: true, arrival: 'driven', dragging: true, light: 'off' },
  { name: 'descent and cold', descent: true, cold: true, light: 'on' },
  { name: 'descent and leak', descent: true, leaking: 1, light: 'on' },
  { name: 'descent and two leaks', descent: true, leaking: 2, light: 'on' },
  { name: 'two leaks', leaking: 2, light: 'on' },
  { name: 'two leaks of one axle', leaking: 'axle', light: 'on' },
  { name: 'two leaks, warm bay', arrival: 'indoor-warmed', leaking: 2, light: 'on' },
  // Two that are cold beside two that leak: without the temperature at which they were set nobody can tell them apart.
  { name: 'two leaks and cold', leaking: 2, cold: true, lastSetKnown: true, light: 'on' },
  { name: 'all four far down', farDown: true, light: 'on' },
  { name: 'overfilled', overfilled: 4, light: 'off' },
  { name: 'two overfilled', overfilled: 2, light: 'off' },
  { name: 'overfilled, driven', arrival: 'driven', overfilled: 4, light: 'off' },
  { name: 'overfilled and leak', leaking: 1, overfilled: 3, light: 'on' },
  { name: 'dragging brake and cold', arrival: 'driven', dragging: true, cold: true, light: 'on' },
]
