/** Choices whose ids are no words of their own. */
const WORDS: Readonly<Record<string, string>> = {
  // Ampacity.
  'ac-43-13-table-11-9': 'FAA AC 43.13-1B, table 11-9',
  'nec-310-17-free-air': 'NEC table 310.17, free air',
  'nec-310-16-raceway': 'NEC table 310.16, raceway',
  'eee-inst-002': 'EEE-INST-002',
  'mil-std-975': 'MIL-STD-975',
  'entered-free-air': 'Free-air current as entered',
  // Pull-out force.
  'iec-60352-2': 'IEC 60352-2, table 1',
  'ul-486a': 'UL 486A-486B',
  as7928: 'SAE AS7928, class 1',
  'nasa-8739-4': 'NASA-STD-8739.4',
  'contact-size-20': 'Contacts of size 20 (MIL-DTL-39029 type)',
  'sixty-percent': '60 % of the breaking force',
  // Temperature of a conductor.
  square: 'square law',
  'ac-43-13': 'FAA AC 43.13-1B',
  // Length of a circuit.
  'total-path': 'the whole path, out and back',
  'one-way-two-wire': 'one way, two wires',
  'one-way-three-phase': 'one way, three phases',
  // Damage, ties, bends.
  a620: 'IPC/WHMA-A-620',
  'ac-43-13-1b': 'FAA AC 43.13-1B',
  'nasa-coaxial': 'NASA: coaxial',
  'nasa-multiconductor': 'NASA: several conductors',
  'nasa-polyimide': 'NASA: polyimide insulation',
  'nasa-flat': 'NASA: flat',
  'nasa-coaxial-ribbon': 'NASA: coaxial ribbon',
  'as50881-unsupported': 'SAE AS50881: not supported',
  'as50881-supported': 'SAE AS50881: supported',
  'a620-single-wire': 'IPC/WHMA-A-620: single wire',
  'a620-unshielded-large': 'IPC/WHMA-A-620: not shielded, larger',
  'a620-unshielded-small': 'IPC/WHMA-A-620: not shielded, small',
  'a620-shielded': 'IPC/WHMA-A-620: shielded',
  'a620-coaxial-flexed': 'IPC/WHMA-A-620: coaxial, flexed',
  'a620-coaxial-fixed': 'IPC/WHMA-A-620: coaxial, fixed',
  'ac-43-bundle': 'FAA AC 43.13-1B: bundle',
};

/** A choice of an input, for people. */
export const choiceWords = (choice: string): string => WORDS[choice] ?? choice.replaceAll('-', ' ');
