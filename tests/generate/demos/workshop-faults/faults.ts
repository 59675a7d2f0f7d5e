interface Fault {
  readonly rule: string;
  readonly at: string;
  /** Further objects of the same fault. */
  readonly also?: readonly string[];
  readonly text: string;
}

/**
 * The deliberate faults, in the order of the notes. `at` names the object that the fault sits at; a wire or a connector
 * carries its text too.
 */
export const FAULTS: readonly Fault[] = [
  { rule: 'contact-kind', at: 'W1', text: 'a pin contact in X2:1, a housing for sockets' },
  { rule: 'contact-series', at: 'W2', text: 'a contact of series BI2 in X2:2, which takes AL3' },
  { rule: 'contact-missing', at: 'W3', text: 'no contact at X2:3' },
  { rule: 'conductor-range', at: 'W4', text: 'a 26 AWG wire in the 20 to 24 AWG contact at X2:4' },
  {
    rule: 'insulation-range',
    at: 'W5',
    text: '22 AWG with 1.6 mm insulation at X2:5, where the contact grips 0.89 to 1.53 mm',
  },
  { rule: 'conductor-solid', at: 'W6', text: 'solid wire in the contact for stranded wire at X2:6' },

  { rule: 'strip-length', at: 'W11', text: 'stripped 4 mm at X6:1, the contact wants 2.5 ± 0.3 mm' },
  {
    rule: 'double-crimp',
    at: 'W12',
    text: '24 and 26 AWG in one contact at X6:2, a pair that nobody approved',
  },
  { rule: 'cavity-shared', at: 'W14', text: 'two contacts in the cavity X6:3' },
  { rule: 'cavity-state', at: 'X6', text: 'nobody says what cavity 6 is meant to be' },

  { rule: 'net-conflict', at: 'X9', text: 'W21 joins PUMP_SUP at X9:1 with FAN_SUP at X12:1' },
  { rule: 'net-ends', at: 'W22', text: 'LEVEL ends at X12:2, which its device declares empty' },
  { rule: 'colour-repeat', at: 'W23', text: 'white in X10 like W24, and on another net' },
  { rule: 'length-missing', at: 'W25', text: 'no typed length, and no way over the formboard' },
  { rule: 'mate-plating', at: 'X10', text: 'a gold contact in X10:6 meets the tin pin of X9' },
  { rule: 'designator-unique', at: 'X10', text: 'the wires in X10:3 and X10:6 are both called W23' },

  { rule: 'mate-interface', at: 'X14', text: 'an Alder 3.0 housing on a Birch 2.0 header' },
  { rule: 'mate-body-form', at: 'X16', text: 'the body of a plug on the plug X15' },
  { rule: 'mate-keying', at: 'X18', text: 'key A on the header X17 with key B' },
  { rule: 'mate-number-map', at: 'X20', text: 'the header X19 counts from the other end: 1 meets 3' },
  {
    rule: 'mate-contact-kind',
    at: 'X21',
    text: 'sockets against the sockets of X22; counted alike, they also meet in reverse (mate-number-map)',
  },
  { rule: 'secondary-lock', at: 'X24', text: 'its secondary lock is not fitted' },

  { rule: 'panel-thickness', at: 'X31', text: 'latches on 0.8 to 1.8 mm, the panel U1 is 4 mm thick' },
  { rule: 'panel-mount', at: 'X33', text: 'a panel housing on the board A2' },
  { rule: 'solder-process', at: 'X34', text: 'a header for wave and hand soldering on a board for reflow' },
  { rule: 'tail-length', at: 'X35', text: 'tails of 3.2 mm in a board of 3.2 mm do not come through' },
  { rule: 'cavity-plug', at: 'X36', text: 'the empty cavity 3 of a sealed housing has no plug' },

  { rule: 'cavity-unknown', at: 'X42', text: 'W33 ends in cavity 4 of a housing with 3 ways' },
  { rule: 'part-unknown', at: 'XS1', text: 'nobody has chosen a splice' },
  { rule: 'mate-missing', at: 'X43', text: 'wired and plugged into nothing' },

  { rule: 'first-bend', at: 'S1', text: 'a tie 10 mm behind X6, 25 mm should be straight' },
  { rule: 'bundle-fit', at: 'S2', text: 'heat-shrink of 2.4 mm on a bundle of more than 3 mm' },
  { rule: 'bend-radius', at: 'S3', text: 'bent to 8 mm, less than five diameters of the bundle' },
  { rule: 'tie-spacing', at: 'S4', text: '340 mm from tie to tie, at most 300 mm should be bare' },
  { rule: 'length-tolerance', at: 'S5', text: 'a tolerance of sheet metal, ± 0.5 mm on 200 mm' },
  { rule: 'length-stack', at: 'W16', text: 'cut to 600 mm, its way is 640 mm long' },
  { rule: 'service-loop', at: 'X43', text: 'a loop of 10 mm where the project asks for 20 mm' },
  { rule: 'untwist', at: 'WG1', text: 'a twisted pair that lies open for 150 mm' },
  {
    rule: 'wire-too-fat',
    at: 'W34',
    text: '2.1 mm insulation where cavities take 1.85 mm; so no contact fits it either (contact-missing)',
  },
  { rule: 'pull-force', at: 'X10', text: 'the gold contact in X10:6 is specified with 25 N for 22 AWG' },
  { rule: 'board-lock', at: 'X35', text: 'its locks are made for boards to 2 mm, this one has 3.2 mm' },
  { rule: 'pitch-mix', at: 'X14', text: '3.0 mm on 2.0 mm: the last of three ways is 2 mm off' },

  {
    rule: 'contact-current',
    at: 'X52',
    also: ['X53'],
    text: '4 A out at cavity 1 and back at 2, more than a contact on 22 AWG carries',
  },
  { rule: 'wire-current', at: 'W51', also: ['W52'], text: '4 A in 22 AWG, 3 A is what the table allows' },
  { rule: 'fuse-protects-wire', at: 'F1', text: 'a fuse of 10 A before a wire for 3 A' },
  { rule: 'fuse-distance', at: 'F1', text: '300 mm of wire before the fuse' },
  { rule: 'short-circuit', at: 'F1', text: 'it lets 1200 A2s through, the wire can take 600 A2s' },
  { rule: 'voltage-drop', at: 'LAMP_SUP', text: '2.5 m of 24 AWG out and back take more than 3 % of 5 V' },
  {
    rule: 'return-path',
    at: 'X52',
    also: ['X53'],
    text: 'VENT goes out in 22 AWG and comes back in 26 AWG',
  },
  { rule: 'parallel-wires', at: 'W61', text: 'runs beside W62, which is thinner' },
  { rule: 'inrush', at: 'MOTOR_SUP', text: '20 A when the motor starts, through contacts for a few' },
  { rule: 'voltage-rating', at: 'HV_SUP', text: '325 V on parts for 250 and 300 V' },
  {
    rule: 'creepage',
    at: 'X55',
    also: ['X56', 'X57', 'X58'],
    text: '325 V between cavities 5 and 6, which lie 1.6 mm apart',
  },
  {
    rule: 'wrong-plug',
    at: 'X56',
    also: ['X57'],
    text: 'enters X5 and X7 as well, which have the same key: a supply comes onto a signal',
  },
  {
    rule: 'live-pins-exposed',
    at: 'X51',
    also: ['X55', 'X57'],
    text: 'live pins when the mate is drawn: 24 V without a limit, 325 V',
  },
  {
    rule: 'mate-under-power',
    at: 'X52',
    also: ['X53'],
    text: 'VENT is mated live, and nothing here is made to break under load',
  },
  {
    rule: 'protective-earth',
    at: 'X72',
    also: ['X73'],
    text: 'position 6 meets first, the protective earth is in 1',
  },
  { rule: 'reserved-colour', at: 'W71', text: 'a protective earth in red' },
  {
    rule: 'pair-kept',
    at: 'W74',
    text: 'DATA_N and its twin W72 are two loose wires, with another between them',
  },
  { rule: 'shield-ends', at: 'WC1', text: 'nobody says at which ends the shield of the cable is connected' },
  { rule: 'drain-wire', at: 'WC1', text: 'the cable has a drain wire that nobody drew' },
  { rule: 'noise-classes', at: 'S11', text: 'PWM is noisy and runs beside the quiet DATA for 250 mm' },
  {
    rule: 'redundant-together',
    at: 'BRAKE_B',
    text: 'the twin of BRAKE_A, through the same connectors and cable',
  },
  {
    rule: 'voltage-classes',
    at: 'X55',
    also: ['X56', 'X57', 'X58'],
    text: '325 V in cavity 5 beside the return of the motor in 4',
  },
  { rule: 'wire-class', at: 'S11', text: 'thin wall where the list of the place has cross-linked only' },
  { rule: 'mate-cycles', at: 'X24', text: 'to be plugged 60 times, rated for 30 with its tests' },
  { rule: 'mate-force', at: 'X16', also: ['X21'], text: '45 N to mate, the project allows 40 N' },
  {
    rule: 'mate-clearance',
    at: 'X42',
    text: '20 mm of room on its mating axis, too little for body and wires',
  },
  { rule: 'mate-finger-room', at: 'X18', text: '4 mm beside the latch, a finger needs 12 mm' },
  {
    rule: 'connector-through-hole',
    at: 'S2',
    text: 'runs through a hole of 8 mm that neither X6 nor X7 passes',
  },
  { rule: 'cut-out', at: 'X31', text: 'a cut-out of 14 mm, it wants 16.2 mm' },
  { rule: 'pin-one', at: 'X41', text: 'its footprint is mirrored: pad 1 is on the left' },
  {
    rule: 'crimp-spec',
    at: 'X10',
    text: 'the gold contact in X10:6 is specified with a tool of another series',
  },
  { rule: 'contact-form', at: 'AL3-P2024-02', text: 'a loose contact, and only a press on the tool list' },
  {
    rule: 'tooling',
    at: 'BI2-S2225-01',
    text: 'a series, and the hand tool for this contact is not on the tool list',
  },
  { rule: 'end-label', at: 'W11', text: 'a label at one end only' },
  { rule: 'key-plug', at: 'X24', text: 'cavity 3 is blocked as a key, and no key plug is named' },
  { rule: 'net-open', at: 'W35', text: 'ends in the air, and nobody says what for' },
  {
    rule: 'spares',
    at: 'X2',
    also: ['X3', 'X7', 'X10', 'X11', 'X42', 'X43', 'X52', 'X53', 'X56', 'X57', 'X72', 'X73'],
    text: 'no way is left for another wire, the project asks for one',
  },
  { rule: 'unit-suspect', at: 'TW-30-070', text: 'its diameter was typed in inches' },
  { rule: 'part-lifecycle', at: 'AL3-03-LS', text: 'obsolete, without an alternate' },
  { rule: 'alternate-checked', at: 'AL3-P2024-01', text: 'its alternate is gold, where it is tin' },
  { rule: 'compliance', at: 'TW-26-095', text: 'its declaration ended before the drawing was issued' },
  { rule: 'offer-missing', at: 'TW-24-105', text: 'nobody offers it, and a hundred are to be built' },
  { rule: 'fixing-fit', at: 'S4', text: 'a grommet of 13 mm in which the bundle slides' },
  { rule: 'strain-relief', at: 'X7', text: 'a strain relief for 4 mm or more on thinner wires' },
  {
    rule: 'tool-ready',
    at: 'BI2-AP-2225',
    text: 'its calibration ran out before the drawing was issued',
  },
  { rule: 'part-changed', at: 'AL3-03-LP', text: 'from revision 0 of the catalogue, which is at revision 1' },
  { rule: 'contact-temperature', at: 'TW-22-140-60', text: 'insulation for 60 degC in air of 70 degC' },
];

export const faultText = (rule: string): string => {
  const at = FAULTS.findIndex((f) => f.rule === rule);
  const fault = FAULTS[at];
  if (!fault) throw new Error(`No fault for ${rule}`);
  return `Fault ${at + 1}, ${rule}: ${fault.text}.`;
};
