/** The calculations by subject, as a person would look for them; each stands once. */
export const CALC_GROUPS = [
  {
    title: 'Conductor',
    ids: ['conductor-area', 'conductor-resistance', 'conductor-mass', 'wire-mass'],
  },
  { title: 'Circuit', ids: ['voltage-drop', 'circuit', 'inrush'] },
  {
    title: 'Current and heat',
    ids: ['ampacity', 'conductor-temperature', 'bundle-heat', 'contact-heating', 'contact-derating'],
  },
  { title: 'Protection', ids: ['fuse-against-wires', 'short-circuit'] },
  {
    title: 'Clearance and creepage',
    ids: ['clearance', 'creepage', 'skipped-positions', 'board-spacing'],
  },
  {
    title: 'Bundle',
    ids: [
      'bundle-diameter',
      'bend-radius',
      'first-tie',
      'tie-spacing',
      'tape-length',
      'sleeve-length',
      'harness-mass',
    ],
  },
  {
    title: 'Length',
    ids: ['cut-length', 'service-loop', 'twist-take-up', 'length-tolerance', 'length-stack'],
  },
  { title: 'Crimp', ids: ['crimp-equivalent-size', 'pull-force', 'strand-damage', 'sampling-plan'] },
  {
    title: 'Board and panel',
    ids: ['tail-protrusion', 'lead-hole', 'peg-fit', 'pitch-error', 'latched-thickness', 'reflow-peak'],
  },
  { title: 'Purchase', ids: ['purchase-quantity'] },
] as const satisfies readonly { readonly title: string; readonly ids: readonly string[] }[];

export const calcGroupOf = (id: string): string =>
  CALC_GROUPS.find((g) => (g.ids as readonly string[]).includes(id))?.title ?? '';
